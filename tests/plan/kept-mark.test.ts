import { describe, expect, test } from 'vitest';
import { editCase, editInside, editStock, spoilPiece, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf, misfits } from '../../src/plan/checklist';
import { keepMark } from '../../src/plan/kept-mark';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

/** A bookcase of sheet that reads .708: bottom and shelf 29.084 long, both marked 29 3/32. */
const bookcase: readonly Change[] = [
  ...editStock('a', { name: 'Birch', kind: 'sheet', used: l('.708') }),
  ...editCase('c', { width: l('30'), height: l('48'), depth: l('11 1/4'), feet: l('3'), sideStock: 'a' }),
  ...editInside('c', 's', { kind: 'fixed', bay: 1, at: l('20') }),
];
const bottomCut = tickOf('cut/c~bottom/len/1', l('29 3/32'));
const shelfCut = tickOf('cut/c~s/len/1', l('29 3/32'));
/** By this the bottom would be 29.072, marked 29 1/16. */
const thicker = editStock('a', { used: l('.714') });

const spoiledBottom = (before: readonly Change[]) => {
  const { plan, folded } = worked(before);
  const list = checklistOf(plan, folded);
  const part = plan.parts.find((p) => p.id === 'c~bottom');
  if (!part) throw new Error('no bottom');
  return worked([...before, ...keepMark(list, part, '1'), ...spoilPiece('c~bottom', '1', 1)]);
};
const long = ({ plan }: ReturnType<typeof worked>, role: string) =>
  w(plan.parts.find((p) => p.id === `c~${role}`)?.length.mark.value ?? l('0'));

describe('keepMark', () => {
  test('a bottom spoiled once its shelf is cut keeps the old mark, whatever the sheet reads since', () => {
    const made = spoiledBottom([...bookcase, ...bottomCut, ...shelfCut, ...thicker]);
    expect([long(made, 'bottom'), long(made, 's')]).toEqual(['29 3/32', '29 3/32']);
    expect(misfits(checklistOf(made.plan, made.folded))).toEqual([]);
  });

  test('a reading taken up after it was spoiled does not move the mark either', () => {
    const { folded } = spoiledBottom([...bookcase, ...bottomCut, ...shelfCut]);
    expect(folded.values.get('parts/c~bottom/mark')).toBe('931/32');
  });

  test('before anything stands on it, it is made again to the mark that is right now', () => {
    expect(long(spoiledBottom([...bookcase, ...bottomCut, ...thicker]), 'bottom')).toBe('29 1/16');
  });

  test('a case that is made another size since forgets the mark', () => {
    const made = spoiledBottom([...bookcase, ...bottomCut, ...shelfCut]);
    const { plan } = worked([
      ...bookcase,
      ...[...made.folded.values].flatMap(([path, value]): readonly Change[] =>
        path === 'parts/c~bottom/mark' ? [{ kind: 'edit', path, value }] : [],
      ),
      ...editCase('c', { width: l('36') }),
    ]);
    expect(w(plan.parts.find((p) => p.id === 'c~bottom')?.length.mark.value ?? l('0'))).toBe('35 3/32');
  });
});
