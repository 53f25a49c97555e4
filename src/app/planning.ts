import type { Job } from '../job/job';
import { keeper } from '../length/keeper';
import { type Plan, planOf as worked } from '../plan/plan';
import type { Shop } from '../trade/machines/shop';

export { figuresFor, lookAt, nowHanded } from './looking';

const kept = keeper<Job['tree'], Plan>();

/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, the
 * marks of a board by hand or the figures of its settings never wait for it; the boxes of those settings, a case and
 * the machine do. What looks at files that come in needs the chain too, and is in the same file.
 *
 * @param job as `jobOf` read it: read the same once more, as what was on its way is when it is kept, its plan stands
 */
export const planOf = (job: Job, shop: Shop): Plan =>
  kept(job.tree, [job.id, shop, job.unread.join()], () => worked(job, shop));
