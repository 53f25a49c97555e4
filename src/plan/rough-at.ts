import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import type { Part } from '../trade/carcass/part';
import type { Lies } from '../trade/sheets/pieces';
import type { RoughAt } from '../trade/sheets/rough';
import { usualSheets } from '../trade/sheets/stock';

/** What the job cuts over the finished size; the usual until it is said. */
export const roughAt = (job: Job): RoughAt => ({
  tape: job.tape,
  over: job.over ?? usualSheets(usualIn(job)).over,
  overStick: job.overStick ?? usualSheets(usualIn(job)).overStick,
  stick: (stock) => job.stock.some((s) => s.id === stock && s.kind === 'stick'),
});

/** How a part may lie on an offcut: as said of it, either way on a sheet without a grain, along a stick. */
export function liesIn(job: Job, part: Part): Lies {
  const stock = job.stock.find((s) => s.id === part.stuff);
  if (stock?.kind === 'stick') return 'along';
  return stock?.grain === 'none' ? 'free' : (job.parts[part.id]?.lies ?? 'along');
}
