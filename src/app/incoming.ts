/** Same name in src/sw.ts: a job file shared to the app waits there. */
const incoming = 'knifeline-incoming';

type Launch = { readonly files?: readonly FileSystemFileHandle[] };
type LaunchQueue = { setConsumer(consumer: (launch: Launch) => void): void };

/** The text of a file shared to the app, once; undefined when there is none. */
export async function takeShared(): Promise<string | undefined> {
  if (!('caches' in self)) return undefined;
  const cache = await caches.open(incoming);
  const found = await cache.match('./incoming');
  if (!found) return undefined;
  await cache.delete('./incoming');
  return found.text();
}

/** Calls back with the text of each file the phone or desk opens with the app. */
export function onOpenedFile(take: (text: string) => void): void {
  const queue = (self as { launchQueue?: LaunchQueue }).launchQueue;
  queue?.setConsumer(async ({ files }) => {
    for (const handle of files ?? []) take(await (await handle.getFile()).text());
  });
}
