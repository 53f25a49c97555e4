import { describe, expect, test } from 'vitest';
import { editJob, letAheadOf, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import { allOfCard } from '../../src/plan/tick-in';
import { l } from '../length/write-figures';
import { groovedSides } from './grooved-sides';
import { worked } from './job-of';

function grooves(...more: readonly Change[]) {
  const { plan, folded } = worked([...groovedSides(2), ...more]);
  const list = checklistOf(plan, folded);
  const card = list.cards.find(({ operations }) => operations.some((op) => op.groove));
  if (!card) throw new Error('a card for the grooves is wanted');
  return { list, card };
}
const done = (op: string) => tickOf(op, l('30'));
const lengths = [...done('cut/side/len/left'), ...done('cut/side/len/right')];
const whats = (ops: readonly { readonly what: string }[]) => ops.map(({ what }) => what);

describe('all of a page', () => {
  test('is the test cut and then the grooves that wait for it', () => {
    const { list, card } = grooves(...lengths);
    const { ops, held } = allOfCard(list, card);
    expect(whats(ops)[0]).toBe('test');
    expect(ops.length).toBe(card.operations.length);
    expect(held).toEqual([]);
  });

  test('without a piece whose length is not cut: that one is held back', () => {
    const { list, card } = grooves(...done('cut/side/len/left'));
    const { ops, held } = allOfCard(list, card);
    expect(held.map(({ copy }) => copy)).toEqual(['right']);
    expect(ops.map(({ copy }) => copy)).toContain('left');
    const ahead = grooves(
      ...done('cut/side/len/left'),
      ...letAheadOf(held[0]?.id ?? '', 'measured another way'),
    );
    expect(allOfCard(ahead.list, ahead.card).held).toEqual([]);
  });

  test('is nothing once all is ticked', () => {
    const before = grooves(...lengths, ...editJob({ name: 'Sides' }));
    const all = before.card.operations.flatMap((op) => tickOf(op.id, op.figure));
    const { list, card } = grooves(...lengths, ...all);
    expect(allOfCard(list, card)).toEqual({ ops: [], held: [] });
  });
});
