import { writeBackup } from '../job/backup';
import { byJob } from '../job/by-job';
import { readShop } from '../job/shop-rows';
import type { Journal } from '../store/journal/journal';
import { keptOf } from '../store/journal/kept-rows';
import { pairsIn } from '../store/values';
import { likesOf } from './backup-preferences';

export { shareFile } from './share';

/** `lost`: what is known of lines that could not be read. */
type Rescued = { readonly text: string; readonly lost: readonly string[] };

/**
 * Everything the second copy holds as one text, for when the database does not open; undefined when it holds nothing,
 * or does not answer either.
 */
export async function rescue(journal: Journal): Promise<Rescued | undefined> {
  const { log, settings, shop, aside } = keptOf((await journal.rows()) ?? []);
  if (log.size === 0) return undefined;
  const written = await writeBackup({
    jobs: [...byJob(log.values())].map(([job, entries]) => ({ job, entries })),
    shop: readShop(pairsIn(shop)),
    likes: likesOf(Object.fromEntries(pairsIn(settings))),
  });
  const lost = [...aside.values()].filter(({ from }) => from === 'the journal').map(({ why }) => why);
  return written.ok ? { text: written.value, lost } : undefined;
}
