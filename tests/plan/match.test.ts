import { describe, expect, test } from 'vitest';
import {
  editBoard,
  editCase,
  editInside,
  editPart,
  editPiece,
  editStock,
  spoilPiece,
  tickOf,
} from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf, misfits } from '../../src/plan/checklist';
import { jobWith } from '../../src/plan/job-with';
import { keepMark } from '../../src/plan/kept-mark';
import { matchedBy, matchOf } from '../../src/plan/match';
import { planOf } from '../../src/plan/plan';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

/**
 * A shell cabinet 43 5/8 wide of sheet that reads 23/32: clear 43 5/8 − 1 7/16 = 42 3/16, so bottom and full shelf are
 * 42 11/16, the top 42 3/16 + 2 × 11/32 = 42 7/8, the back 42 3/16 + 3/4 − 1/16 = 42 7/8 wide, the toe board 42 3/16,
 * the rails of a frame that ends with the case 43 5/8 − 2 × 1 1/2 = 40 5/8.
 */
const cabinet: readonly Change[] = [
  ...editStock('a', { name: 'Birch', kind: 'sheet', used: l('23/32') }),
  ...editStock('k', { name: 'Thin', kind: 'sheet', used: l('1/4') }),
  ...editStock('oak', { name: 'Oak', kind: 'stick', used: l('3/4') }),
  ...editCase('c', {
    width: l('43 5/8'),
    height: l('66 1/2'),
    depth: l('18 3/4'),
    feet: l('4'),
    hasBack: true,
    hasToe: true,
    hasFrame: true,
    overhang: l('0'),
    stile: l('1 1/2'),
    sideStock: 'a',
    backStock: 'k',
    frameStock: 'oak',
    dado: l('1/4'),
    topRabbet: l('11/32'),
    backDeep: l('3/8'),
    backWide: l('1/4'),
    ease: l('1/16'),
  }),
  ...editInside('c', 's', { kind: 'fixed', bay: 1, at: l('30') }),
];

const partIn = ({ plan }: Pick<ReturnType<typeof worked>, 'plan'>, id: string) => {
  const found = plan.parts.find((p) => p.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const long = (made: Pick<ReturnType<typeof worked>, 'plan'>, id: string) =>
  w(partIn(made, id).length.mark.value);
const wide = (made: Pick<ReturnType<typeof worked>, 'plan'>, id: string) =>
  w(partIn(made, id).width.mark.value);

/** A piece found to be another size, and its mates made to match it. */
function matched(before: readonly Change[], id: string, size: string, way: 'length' | 'width' = 'length') {
  const noted = [
    ...before,
    ...editPiece(id, '1', way === 'length' ? { asLength: l(size) } : { asWidth: l(size) }),
  ];
  const made = worked(noted);
  const found = matchOf(made.plan, { part: partIn(made, id), way, size: l(size) });
  if (!found.ok) throw new Error(found.error.code);
  const after = planOf(jobWith(made.folded, 'j', found.value), {});
  return {
    ...matchedBy(checklistOf(made.plan, made.folded), after.operations),
    after: worked([...noted, ...found.value]),
  };
}

const cut = (id: string, figure: string, what = 'len') => tickOf(`cut/${id}/${what}/1`, l(figure));

describe('a bottom that came out 1/32 short', () => {
  const short = () => matched([...cabinet, ...cut('c~bottom', '42 11/16')], 'c~bottom', '42 21/32');

  test('top, shelf, back, toe board and frame follow by 1/32', () => {
    const { after } = short();
    expect(['bottom', 's', 'top', 'toe', 'railtop'].map((role) => long(after, `c~${role}`))).toEqual([
      '42 21/32',
      '42 21/32',
      '42 27/32',
      '42 5/32',
      '40 19/32',
    ]);
    expect(wide(after, 'c~back')).toBe('42 27/32');
    const sizes = after.plan.worked.get('c');
    expect(sizes?.ok && w(sizes.value.sizes.width.value)).toBe('43 19/32');
  });

  test('the piece itself is right then, and nothing that is not cut is left out of the list', () => {
    const { after, moved, off } = short();
    expect(misfits(checklistOf(after.plan, after.folded))).toEqual([]);
    expect(off).toEqual([]);
    const lengths = moved.filter(({ op }) => op.what === 'length').map(({ op }) => op.part);
    for (const role of ['s', 'top', 'toe', 'railtop', 'railbottom']) expect(lengths).toContain(`c~${role}`);
    expect(lengths).not.toContain('c~bottom');
    expect(lengths).not.toContain('c~left');
  });

  test('a top cut already stays, and is told to be 1/32 long', () => {
    const before = [...cabinet, ...cut('c~bottom', '42 11/16'), ...cut('c~top', '42 7/8')];
    const { off, moved } = matched(before, 'c~bottom', '42 21/32');
    expect(off.map(({ op, was, now }) => `${op.part} ${w(was)} ${w(now)}`)).toEqual([
      'c~top 42 7/8 42 27/32',
    ]);
    expect(moved.map(({ op }) => op.id)).not.toContain('cut/c~top/len/1');
  });

  test('before its mates match, it is named beside what it was to be', () => {
    const made = worked([
      ...cabinet,
      ...cut('c~bottom', '42 11/16'),
      ...editPiece('c~bottom', '1', { asLength: l('42 21/32') }),
    ]);
    const [one] = misfits(checklistOf(made.plan, made.folded));
    expect(one && [one.op.id, w(one.was), w(one.now)]).toEqual([
      'cut/c~bottom/len/1',
      '42 21/32',
      '42 11/16',
    ]);
  });

  test('spoiled later, it is made again to the mark its mates were cut to', () => {
    const remade = (before: readonly Change[]) => {
      const made = worked(before);
      const kept = keepMark(checklistOf(made.plan, made.folded), partIn(made, 'c~bottom'), '1');
      return long(worked([...before, ...kept, ...spoilPiece('c~bottom', '1', 1)]), 'c~bottom');
    };
    const noted = editPiece('c~bottom', '1', { asLength: l('42 21/32') });
    const off = [...cabinet, ...cut('c~bottom', '42 11/16'), ...cut('c~s', '42 11/16'), ...noted];
    // the shelf was cut to the mark, not to the piece
    expect(remade(off)).toBe('42 11/16');
    const to = [
      ...cabinet,
      ...cut('c~bottom', '42 11/16'),
      ...noted,
      ...editPart('c~bottom', { mark: l('42 21/32') }),
    ];
    expect(remade([...to, ...cut('c~s', '42 21/32')])).toBe('42 21/32');
  });
});

describe('other pieces that set a case', () => {
  test('a top 1/32 long moves the bottom, which is not cut, by as much', () => {
    const { after } = matched([...cabinet, ...cut('c~top', '42 7/8')], 'c~top', '42 29/32');
    expect([long(after, 'c~top'), long(after, 'c~bottom'), long(after, 'c~s')]).toEqual([
      '42 29/32',
      '42 23/32',
      '42 23/32',
    ]);
  });

  test('a right side 1/16 short: the left is to match it, and the back is 1/16 lower', () => {
    // the back: 66 1/2 − 4 − 1/16 = 62 7/16
    const { after } = matched([...cabinet, ...cut('c~right', '66 1/2')], 'c~right', '66 7/16');
    expect([long(after, 'c~left'), long(after, 'c~right'), long(after, 'c~back')]).toEqual([
      '66 7/16',
      '66 7/16',
      '62 3/8',
    ]);
  });

  test('a left side that was matched before gives way to the right one', () => {
    const before = [...cabinet, ...editPart('c~left', { mark: l('66 15/32') })];
    const { after } = matched([...before, ...cut('c~right', '66 15/32')], 'c~right', '66 7/16');
    expect([long(after, 'c~left'), long(after, 'c~right')]).toEqual(['66 7/16', '66 7/16']);
  });

  test('a side 1/32 narrow: all that lies in front of the back is 1/32 narrower', () => {
    // 18 3/4 − 1/4 = 18 1/2 by the drawing
    const { after } = matched([...cabinet, ...cut('c~left', '18 3/4', 'rip')], 'c~left', '18 23/32', 'width');
    expect(['left', 'right', 'bottom', 'top', 's'].map((role) => wide(after, `c~${role}`))).toEqual([
      '18 23/32',
      '18 23/32',
      '18 15/32',
      '18 15/32',
      '18 15/32',
    ]);
  });

  test('a size off the marks of the tape is kept as it was measured', () => {
    const { after } = matched([...cabinet, ...cut('c~top', '42 7/8')], 'c~top', '42 55/64');
    expect(long(after, 'c~top')).toBe('42 55/64');
    expect(misfits(checklistOf(after.plan, after.folded))).toEqual([]);
  });
});

describe('pieces that set no case', () => {
  test('a rail of the frame moves the other, and nothing else', () => {
    const { after } = matched([...cabinet, ...cut('c~railtop', '40 5/8')], 'c~railtop', '40 9/16');
    expect([long(after, 'c~railtop'), long(after, 'c~railbottom'), long(after, 'c~bottom')]).toEqual([
      '40 9/16',
      '40 9/16',
      '42 11/16',
    ]);
  });

  // half-lapped, rails 43 5/8 long: what stands between the stiles is as much shorter, 43 5/8 − 3 − 1/16 = 40 9/16
  test('a half-lapped rail moves the other and what stands between the stiles, with its lap at that end', () => {
    const lapped = [
      ...cabinet,
      ...editCase('c', { frameMeets: 'lap' }),
      ...editInside('c', 'r', { kind: 'rail', bay: 1, at: l('30') }),
    ];
    const { after } = matched([...lapped, ...cut('c~railtop', '43 5/8')], 'c~railtop', '43 9/16');
    expect(['railtop', 'railbottom', 'r', 'bottom'].map((role) => long(after, `c~${role}`))).toEqual([
      '43 9/16',
      '43 9/16',
      '40 9/16',
      '42 11/16',
    ]);
    // stiles of 1 1/2: 43 9/16 − 1 1/2
    const near = partIn(after, 'c~railbottom').laps.find(({ id }) => id === 'lapright')?.near;
    expect(near && w(near)).toBe('42 1/16');
  });

  test('a stile moves the other: both are one part, 66 1/2 − 4 long', () => {
    const { after } = matched([...cabinet, ...cut('c~stile', '62 1/2')], 'c~stile', '62 15/32');
    expect(long(after, 'c~stile')).toBe('62 15/32');
  });

  test('of a pair by hand the right one matches the left', () => {
    const pair = editBoard('ends', {
      name: 'Ends',
      made: 'pair',
      copies: 2,
      length: l('30'),
      across: l('8'),
    });
    const { after } = matched([...cabinet, ...pair], 'ends', '29 15/16');
    expect(long(after, 'ends')).toBe('29 15/16');
  });

  test('a shelf in its dadoes, a back and a toe board have nothing that is cut by them', () => {
    const made = worked(cabinet);
    for (const [id, size] of [
      ['c~s', '42 21/32'],
      ['c~back', '62 3/8'],
      ['c~toe', '42 1/8'],
    ] as const)
      expect(matchOf(made.plan, { part: partIn(made, id), way: 'length', size: l(size) })).toEqual({
        ok: false,
        error: { code: 'alone' },
      });
  });
});

test('mates follow by 1/8 at most: a bottom 5/32 short is refused by how much', () => {
  const made = worked(cabinet);
  const part = partIn(made, 'c~bottom');
  const at = (size: string) => matchOf(made.plan, { part, way: 'length', size: l(size) });
  expect(at('42 9/16').ok).toBe(true);
  const far = at('42 17/32');
  expect(!far.ok && far.error.code === 'too-far' && [w(far.error.by), w(far.error.most)]).toEqual([
    '5/32',
    '1/8',
  ]);
});
