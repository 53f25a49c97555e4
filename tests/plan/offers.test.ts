import { describe, expect, test } from 'vitest';
import { editJob, editWork, letAheadOf, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import { offersOf } from '../../src/plan/offers';
import { l } from '../length/write-figures';
import { boards } from './big-job';
import { groovedSides } from './grooved-sides';
import { worked } from './job-of';

const groove = (hand: string) => `cut/side/r~1~only/${hand}`;

function at(...more: readonly Change[]) {
  const { plan, folded } = worked([...groovedSides(2), ...more]);
  const list = checklistOf(plan, folded);
  return { list, offers: offersOf(list) };
}

const card = at().list.cards.find(({ operations }) => operations.some((op) => op.groove));
if (!card) throw new Error('a card for the grooves is wanted');
const [test1] = card.operations;
const set: readonly Change[] = [...editJob({ standing: card.id }), ...tickOf(test1?.id ?? '', l('3/4'))];
const done = (op: string) => tickOf(op, l('30'));

describe('what is offered of a groove', () => {
  test('nothing before its stack is set, whatever else is done', () => {
    const { offers } = at(...done('cut/side/rip/left'), ...done('cut/side/len/left'));
    const found = offers(groove('left'));
    expect(!found.ok && found.error.by).toBe('change');
    expect(!found.ok && found.error.by === 'change' && found.error.to.setup.build).toBe(test1?.setup.build);
  });

  test('with the stack set, each side once it is cut to length: one may be offered and the other not', () => {
    const { offers, list } = at(...set, ...done('cut/side/len/left'));
    const [left, right] = [offers(groove('left')), offers(groove('right'))];
    expect(left).toEqual({
      ok: true,
      value: { op: list.plan.byId.get(groove('left')), card: list.cards.find((c) => c.id === card.id) },
    });
    expect(right).toEqual({
      ok: false,
      error: { by: 'what-comes-first', op: list.plan.byId.get(groove('right')) },
    });
  });

  test('a side that was let go ahead is offered too, but not past another stack', () => {
    const ahead = letAheadOf(groove('right'), 'measured another way');
    expect(at(...set, ...ahead).offers(groove('right')).ok).toBe(true);
    expect(at(...ahead).offers(groove('right')).ok).toBe(false);
  });
});

test('where the cuts wait for one another in a ring, none is offered', () => {
  const ring = [
    ...editWork('one', { part: 'side', name: 'Sand', after: 'two' }),
    ...editWork('two', { part: 'side', name: 'Oil', after: 'one' }),
  ];
  const { list, offers } = at(...set, ...done('cut/side/len/right'), ...ring);
  expect(list.plan.order.ok).toBe(false);
  expect(offers(groove('right'))).toEqual({ ok: false, error: { by: 'ring' } });
});

test('where there are too many cuts to be worked out, none is offered', () => {
  // 60 boards, ten of each, with 100 grooves: 60 * 10 * 101 cuts at least, of the 10,000 that are worked out
  const { list, offers } = at(...boards(60, 10, 100));
  expect(list.plan.over).toBeGreaterThanOrEqual(60 * 10 * 101);
  expect(offers(groove('left'))).toEqual({ ok: false, error: { by: 'too-many' } });
});
