/** What a request tells of where it came from, as a service worker sees it. Headers that are not there are null. */
export type Arrival = {
  readonly url: string;
  readonly mode: string;
  readonly destination: string;
  readonly referrer: string;
  readonly origin: string | null;
  readonly contentType: string | null;
};

/** Where the manifest sends what is shared, and the one field it names. Same in src/app/manifest.ts. */
const action = 'share';
const field = 'job';

/** The address of the share target below the app's own. */
export const shareAddress = (scope: string): string => new URL(action, scope).href;

/**
 * Whether a POST can be the launch of the app by a share. Such a launch is the navigation of a whole window that no
 * page started: it has no referrer (or that of a phone app), and its origin is absent, opaque or, in older browsers,
 * the app's own. Sec-Fetch headers are added after the worker, so they say nothing here.
 *
 * A page elsewhere that hides its referrer looks the same. That one lands in a browser tab, not in a window of the
 * installed app; src/app/incoming.ts looks at that.
 */
export function mayBeShare(arrival: Arrival, scope: string): boolean {
  const { url, mode, destination, referrer, origin, contentType } = arrival;
  return (
    url === shareAddress(scope) &&
    mode === 'navigate' &&
    destination === 'document' &&
    (referrer === '' || referrer === 'about:client' || referrer.startsWith('android-app:')) &&
    (origin === null || origin === 'null' || origin === new URL(scope).origin) &&
    /^multipart\/form-data;/i.test(contentType ?? '')
  );
}

/** The file of a share: the first under the name in the manifest, where there is no other name beside it. */
export function sharedFile(form: FormData): File | undefined {
  let others = 0;
  form.forEach((_, name) => {
    if (name !== field) others += 1;
  });
  const file = form.get(field);
  return others === 0 && file instanceof File ? file : undefined;
}
