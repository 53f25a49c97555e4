import { expect, test } from 'vitest';
import { editJob, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { rowsOf, viewOf } from '../../../src/plan/board-layout';
import { checklistOf } from '../../../src/plan/checklist';
import { stopOffers } from '../../../src/screens/marks/stop-offers';
import { l } from '../../length/write-figures';
import { groovedSides } from '../../plan/grooved-sides';
import { worked } from '../../plan/job-of';

function at(...more: readonly Change[]) {
  const { plan, folded, job } = worked([...groovedSides(1), ...more]);
  const [board] = job.boards;
  const [row] = board ? rowsOf(viewOf(board, {}, job.tape), folded.ticks) : [];
  const offer = stopOffers({ plan: { value: plan }, folded: { value: folded } } as never);
  if (!row || !offer) throw new Error('a setting is wanted');
  return { ...offer(row), list: checklistOf(plan, folded) };
}

const card = at().list.cards.find(({ operations }) => operations.some((op) => op.groove));
if (!card) throw new Error('a card for the groove is wanted');
const set: readonly Change[] = [
  ...editJob({ standing: card.id }),
  ...card.operations.filter((op) => op.what === 'test').flatMap((op) => tickOf(op.id, op.figure)),
];
const [left, right] = ['left', 'right'].map((hand) => tickOf(`cut/side/len/${hand}`, l('30')));
const groove = (hand: string) => tickOf(`cut/side/r~1~only/${hand}`, l('3'), { depth: l('1/4') });

test('before the stack is set nothing is ticked, and it is said what is done first', () => {
  const { ticks, held, box } = at();
  expect([ticks, held, box]).toEqual([
    [],
    'Blocked: change the stack first',
    'Cut at 1, blocked: see it at the machine',
  ]);
});

test('one side cut to length: its groove alone is ticked, and what the other waits for stays said', () => {
  const { ticks, held, box } = at(...set, ...(left ?? []));
  expect(ticks).toEqual(groove('left'));
  expect(held).toBe('Blocked: Side right, length, comes first');
  expect(box).toBe('Cut at 1, all that is not blocked');
});

test('both cut to length: one tap ticks both, to the figure of the setting', () => {
  const { ticks, held, box } = at(...set, ...(left ?? []), ...(right ?? []));
  expect(ticks).toEqual([...groove('left'), ...groove('right')]);
  expect([held, box]).toEqual(['', 'Cut at 1']);
});

test('without a plan nothing can be said', () => {
  expect(stopOffers({ plan: { value: undefined }, folded: { value: { ticks: new Map() } } } as never)).toBe(
    undefined,
  );
});
