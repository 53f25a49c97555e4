import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold, inOrder, merge } from '../../src/job/log';
import { footId, standIn } from '../../src/job/room';
import { editFoot } from '../../src/job/room-edits';
import { inches } from '../../src/length/length';
import { feetStandOf, footStep } from '../../src/plan/feet-set';
import { footFigures, levelPlanOf } from '../../src/plan/level-plan';
import { type Log, takenBack, tap } from '../job/phones';
import { runs } from '../runs';

const feet = ['front1', 'front2', 'back1', 'back2'] as const;

/** A drop in sixteenths over 34. */
const drop = (foot: string, k: number): readonly Change[] =>
  editFoot('case', foot, { drop: inches(34n * 16n + BigInt(k), 16n) });
const start = tap(
  [],
  'shop',
  feet.flatMap((foot) => drop(foot, 4)),
);

const jobAt = (log: Log) => jobOf('j', fold(log).values);

/** A foot is ticked as its screen writes it: at the figure this phone sees. */
const tickHere = (log: Log, foot: string): readonly Change[] => {
  const figure = footFigures(levelPlanOf(jobAt(log), 'case')).get(foot);
  return figure ? tickOf(footStep('case', foot), figure) : [];
};

const step = fc.record({
  who: fc.constantFrom('anna', 'ben'),
  foot: fc.constantFrom(...feet),
  does: fc.oneof(
    fc.integer({ min: 0, max: 8 }),
    fc.constantFrom('tick' as const, 'undo' as const, 'merge' as const),
  ),
});

/** What the two phones hold after these steps, and then taken together. */
function together(steps: readonly (typeof step extends fc.Arbitrary<infer S> ? S : never)[]): Log {
  const logs: Record<string, Log> = { anna: start, ben: start };
  for (const { who, foot, does } of steps) {
    const log = logs[who] ?? start;
    const both = () => merge(logs.anna ?? start, logs.ben ?? start);
    if (does === 'merge') logs[who] = both();
    else if (does === 'undo') logs[who] = takenBack(log, who);
    else logs[who] = tap(log, who, does === 'tick' ? tickHere(log, foot) : drop(foot, does));
  }
  return [...merge(logs.anna ?? start, logs.ben ?? start)].sort(inOrder);
}

test('whatever two phones read and tick, a foot is set only at the figure that follows from the drops that stand', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 14 }), (steps) => {
      const log = together(steps);
      const job = jobAt(log);
      const { ticks } = fold(log);
      // by hand, in sixteenths: the least drop is the high point, and every other foot wants what it is lower
      const sixteenths = new Map(
        standIn(job, 'case').feet.map((foot) => [footId(foot), Math.round(foot.drop.valueOf() * 16)]),
      );
      const high = Math.min(...sixteenths.values());
      const set = feet.filter((foot) => {
        const [n, d = '1'] = (ticks.get(footStep('case', foot))?.figure ?? '').split('/');
        return n !== '' && (Number(n) * 16) / Number(d) === (sixteenths.get(foot) ?? 0) - high;
      });
      expect(feetStandOf(job, 'case', ticks)).toEqual({ set: set.length, of: 4 });
    }),
    { numRuns: runs(150) },
  );
});
