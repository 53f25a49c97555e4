import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { mayBeShare, shareAddress, sharedFile } from './sw-share';

declare const self: ServiceWorkerGlobalScope & {
  readonly __WB_MANIFEST: (string | { url: string; revision: string | null })[];
};

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
clientsClaim();

/** A job file shared to the app waits here until the page has read it. Same name in src/app/incoming.ts. */
const incoming = 'knifeline-incoming';

/** Sets a shared file aside under a name that only the page opened next is told; undefined when it is no share. */
async function keepShared(request: Request): Promise<string | undefined> {
  const { url, mode, destination, referrer, headers } = request;
  const from = { origin: headers.get('origin'), contentType: headers.get('content-type') };
  if (!mayBeShare({ url, mode, destination, referrer, ...from }, self.registration.scope)) return undefined;
  const file = sharedFile(await request.formData());
  if (!file) return undefined;
  await caches.delete(incoming); // one waits at most
  const name = crypto.randomUUID();
  await (await caches.open(incoming)).put(`./${name}`, new Response(file));
  return name;
}

registerRoute(
  ({ url }) => `${url.origin}${url.pathname}` === shareAddress(self.registration.scope),
  async ({ request }) => {
    const name = await keepShared(request).catch(() => undefined);
    return Response.redirect(name === undefined ? './' : `./?shared=${name}`, 303);
  },
  'POST',
);

registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// The page asks for this only when no setting is standing on the screen.
self.addEventListener('message', (event) => {
  if (event.data && event.data.type === 'SKIP_WAITING') void self.skipWaiting();
});
