import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tickOf } from '../../src/job/edits';
import { fold } from '../../src/job/log';
import { blocks, checklistOf, standingCard } from '../../src/plan/checklist';
import { runs } from '../runs';
import { anyCase } from './any-case';
import { logOf, worked } from './job-of';

test('worked card by card in the order of the list, no cut is ever blocked', () => {
  fc.assert(
    fc.property(anyCase, (changes) => {
      const { plan, folded } = worked(changes);
      expect(plan.order.ok).toBe(true);
      const done = new Set<string>();
      const list = checklistOf(plan, folded);
      for (const { operations } of list.cards) {
        for (const op of operations) {
          const doing = { ...list.doing, done: (id: string) => done.has(id) };
          expect([op.id, blocks({ ...list, doing }, op)]).toEqual([op.id, []]);
          done.add(op.id);
        }
      }
      expect(done.size).toBe(plan.operations.length);
    }),
    { numRuns: runs(25) },
  );
});

test('whatever has been cut so far, the card to stand at has something to cut, as long as anything has', () => {
  fc.assert(
    fc.property(anyCase, fc.array(fc.nat(), { maxLength: 30 }), (changes, picks) => {
      const { plan } = worked(changes);
      const ops = plan.operations;
      const cut = picks.flatMap((n) => ops[n % ops.length] ?? []);
      const ticked = cut.flatMap((op) => tickOf(op.id, op.figure));
      const list = checklistOf(plan, fold(logOf([...changes, ...ticked])));
      const ready = (op: (typeof ops)[number]) => !list.doing.done(op.id) && blocks(list, op).length === 0;
      expect(standingCard(list)?.operations.some(ready) ?? false).toBe(ops.some(ready));
    }),
    { numRuns: runs(25) },
  );
});
