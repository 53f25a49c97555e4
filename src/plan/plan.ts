import type { Job } from '../job/job';
import type { Result } from '../length/result';
import { layOut } from '../trade/grooves/lay-out';
import type { Problem } from '../trade/grooves/layout';
import type { Shop } from '../trade/machines/shop';
import { leastOperations, mostOperations } from '../trade/setups/most';
import type { Operation } from '../trade/setups/operation';
import { operationsOf } from '../trade/setups/operations';
import { type Order, type OrderError, orderSetups } from '../trade/setups/order/order';
import { stopsOf } from '../trade/setups/stops';
import { cleatOnOf } from './cleat-on';
import { closingOf } from './closing-plan';
import { type Made, partsOfJob } from './parts-of-job';
import { recutsOf } from './recuts';
import { type Thinner, thinnerIn } from './thinner';

/** Everything worked out from a job: its parts, their operations, and the order that spares re-setting. */
export type Plan = Made & {
  readonly job: Job;
  /** None where there are too many. */
  readonly operations: readonly Operation[];
  /** So many operations, at least, are more than are worked out. */
  readonly over?: number;
  readonly byId: ReadonlyMap<string, Operation>;
  readonly order: Result<Order, OrderError>;
  /** By operation: the stuffs its figure or its stack takes for thinner than they were read. */
  readonly thinner: ReadonlyMap<string, readonly Thinner[]>;
};

type Work = Made & Pick<Plan, 'operations' | 'over'>;

/** Fewer operations no case comes to. */
const leastOfCase = 10;

/** The job's parts and their operations, where they are not too many to be worked out. */
function workOf(job: Job, shop: Shop): Work {
  const things = job.cases.length * leastOfCase + job.banks.length + job.boards.length;
  if (things > mostOperations) return { ...partsOfJob({ ...job, ...nothing }, shop), ...tooMany(things) };
  const made = partsOfJob(job, shop);
  const least = made.parts.reduce((n, part) => n + leastOperations(part), 0);
  return { ...made, ...(least > mostOperations ? tooMany(least) : operationsIn(job, shop, made)) };
}

const nothing = { cases: [], banks: [], boards: [] };
const tooMany = (over: number) => ({ operations: [], over });

const nothingSaid = {};

function operationsIn(job: Job, shop: Shop, made: Made): Pick<Plan, 'operations' | 'over'> {
  const operations = operationsOf(
    {
      parts: made.parts,
      cases: job.cases,
      banks: [...made.banks.values()].flatMap((bank) => bank.work ?? []),
      hand: job.work,
      recuts: (part) => recutsOf(job, part),
      closing: closingOf(job, made.worked),
      cleat: (id) => cleatOnOf(job, id),
    },
    { shop, tape: job.tape, chosen: (part) => job.parts[part] ?? nothingSaid },
  );
  return operations.length > mostOperations ? tooMany(operations.length) : { operations };
}

/** The whole chain: job and readings to parts, operations, setups. */
export function planOf(job: Job, shop: Shop): Plan {
  const work = workOf(job, shop);
  const { operations } = work;
  const stops = stopsOf(operations);
  const steps = operations.map(({ id, setup: { build, key }, after }, k) => ({
    id,
    build,
    setup: stops[k] ?? key,
    after,
  }));
  return {
    job,
    ...work,
    byId: new Map(operations.map((op) => [op.id, op])),
    order: orderSetups(steps),
    thinner: thinnerIn(job, work, (as) => workOf(as, shop).operations),
  };
}

/** Why a job is not taken in: more cuts than one layout takes, or more operations than a job. */
export type TooMuch =
  | { readonly code: 'too-many-cuts'; readonly board: string; readonly problem: TooMany }
  | { readonly code: 'too-many-operations'; readonly operations: number; readonly most: number };

type TooMany = Problem & { readonly code: 'too-many' };

/** What of a job is too much to be worked out, where something is. */
export function tooMuchOf(job: Job, shop: Shop): TooMuch | undefined {
  for (const board of job.boards) {
    const problem = layOut(board).problems.find((found) => found.code === 'too-many');
    if (problem) return { code: 'too-many-cuts', board: board.name, problem };
  }
  const { over } = workOf(job, shop);
  return over === undefined
    ? undefined
    : { code: 'too-many-operations', operations: over, most: mostOperations };
}
