import type { Job } from '../job/job';
import { keeper } from '../length/keeper';
import { type Plan, planOf as worked } from '../plan/plan';
import type { Shop } from '../trade/machines/shop';

export { shopTools } from '../job/shop-tools';
export { undoable, undoOf } from '../job/undo';
export { newCaseIn } from '../screens/job/new-case';
export { layOutBoard } from '../screens/shared/new-board';
export { fileOf, makeJob, putAway, stockOf } from './job-acts';
export { lookAt } from './looking';
export { wholeSample } from './sample-file';
export { refit, searchesInto } from './searches';
export { bringFigures, takeIn } from './taking-in';

const kept = keeper<Job['tree'], Plan>();

/**
 * The whole chain from a job to its cuts. It comes in a file of its own, asked for as the page starts: a sum, the
 * marks of a board by hand or the figures of its settings never wait for it; the boxes of those settings, a case and
 * the machine do. What a tap sets off is in the same file: what looks at files that come in needs the chain too.
 *
 * @param job as `jobOf` read it: read the same once more, as what was on its way is when it is kept, its plan stands
 */
export const planOf = (job: Job, shop: Shop): Plan =>
  kept(job.tree, [job.id, shop, job.unread.join()], () => worked(job, shop));
