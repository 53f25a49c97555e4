import { mostInBackup } from '../job/backup';
import type { Bench, Incoming } from '../screens/bench';
import { onItsOwn } from './home-screen';

/** Same name in src/sw.ts: a job file shared to the app waits there. */
const waitingRoom = 'knifeline-incoming';

type Launch = { readonly files?: readonly FileSystemFileHandle[] };
type LaunchQueue = { setConsumer(consumer: (launch: Launch) => void): void };

/** The text of a file, or as much of it as shows that it is too long. */
const textOf = (file: Blob): Promise<string> => file.slice(0, mostInBackup + 1).text();

type At = Pick<Bench, 'go'> & { readonly incoming: Pick<Incoming, 'offer'> };

/** Looks at what the phone hands to the app: files opened with it, and a file shared to it. */
export async function takeIncoming({ go, incoming: { offer } }: At): Promise<void> {
  const queue = (self as { launchQueue?: LaunchQueue }).launchQueue;
  queue?.setConsumer(async ({ files }) => {
    for (const handle of files ?? []) {
      await offer(await textOf(await handle.getFile()), 'opened');
      go({ at: 'import' });
    }
  });
  const shared = await takeShared();
  if (shared === undefined) return;
  await offer(shared, 'shared');
  go({ at: 'import' });
}

/**
 * The text of the file this page was opened for, once. Undefined in a tab of the browser: the phone opens a share in a
 * window of the installed app, a page elsewhere that posts a form opens a tab. What waits for another page is thrown
 * away.
 */
export async function takeShared(): Promise<string | undefined> {
  const name = new URLSearchParams(location.search).get('shared');
  if (name !== null) history.replaceState(history.state, '', location.pathname + location.hash);
  if (!('caches' in self)) return undefined;
  const found =
    name !== null && onItsOwn() ? await (await caches.open(waitingRoom)).match(`./${name}`) : undefined;
  const text = found && (await textOf(await found.blob()));
  await caches.delete(waitingRoom);
  return text;
}
