import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & {
  readonly __WB_MANIFEST: (string | { url: string; revision: string | null })[];
};

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
clientsClaim();

/** A job file shared to the app waits here until the page has read it. Same name in src/app/incoming.ts. */
const incoming = 'knifeline-incoming';

registerRoute(
  ({ url }) => url.pathname.endsWith('/share'),
  async ({ request }) => {
    const form = await request.formData();
    const file = form.get('job');
    if (file instanceof File) {
      const cache = await caches.open(incoming);
      await cache.put('./incoming', new Response(file));
    }
    return Response.redirect('./#/import', 303);
  },
  'POST',
);

registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// The page asks for this only when no setting is standing on the screen.
self.addEventListener('message', (event) => {
  if (event.data && event.data.type === 'SKIP_WAITING') void self.skipWaiting();
});
