import type { Job } from '../job/job';
import { keeper } from '../length/keeper';
import type { Shop } from '../trade/machines/shop';
import { type Plan, planOf } from './plan';

const kept = keeper<Job['tree'], Plan>();

/**
 * The plan of a job as its log has it, worked out once: what a reading would change is looked at before it is used, and
 * used, its plan stands. For a job as `jobOf` read it, nothing in it set otherwise since.
 */
export const planOnce = (job: Job, shop: Shop): Plan =>
  kept(job.tree, [job.id, shop, job.unread.join()], () => planOf(job, shop));
