import { describe, expect, test } from 'vitest';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { notchDeep, setBackOf, toeWarnings } from '../../../src/trade/carcass/toe-notch';
import { operationsOf } from '../../../src/trade/setups/operations';
import { placingOf } from '../../../src/trade/setups/placing';
import { l, w } from '../grooves/sample';
import { part, sheet, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4, 4 off the floor, a frame of 3/4 before its sides, its toe board of 1/2. */
const notched: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  hasFrame: true,
  hasToe: true,
  toeHow: 'notch',
  toeBack: l('3'),
  toeClear: l('1/8'),
  stocks: { side: 'a', frame: 'f', toe: 'half' },
};
const stuff = [...sheets(), sheet('half', '1/2')];
const made = (c: Case) => work(c, stuff);
const problems = (c: Case) => {
  const found = partsOf(c, { stuff, tape: '1/32' });
  return found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code));
};

describe('a toe board in notches of the sides', () => {
  // 3 − 3/4 + 1/2 = 2 3/4 deep; 4 high; the board 4 − 1/8 = 3 7/8; the side stands on 18 3/4 − 2 3/4 = 16
  test('the recess counts from the foremost face', () => {
    const of = made(notched);
    expect(w(notchDeep(of.sizes).value)).toBe('2 3/4');
    for (const hand of ['left', 'right']) {
      const { corner } = part(of, hand);
      expect(corner && [w(corner.deep), w(corner.high)]).toEqual(['2 3/4', '4']);
    }
    expect(w(part(of, 'toe').width.sum.value)).toBe('3 7/8');
  });

  test('the board lies over both sides: as long as the case is wide', () =>
    expect(w(part(made(notched), 'toe').length.sum.value)).toBe('43 5/8'));

  // fronts of 1 said before the sides: 3 − 1 + 1/2
  test('fronts said to stand before the sides are counted in place of the frame', () =>
    expect(w(notchDeep(made({ ...notched, frontOver: l('1') }).sizes).value)).toBe('2 1/2'));

  // the board hangs clear of the floor: the sides stand 3 + 1/2 behind the foremost face
  test('it tips over the front of its sides', () => {
    expect(w(setBackOf(made(notched).sizes))).toBe('3 1/2');
    expect(w(setBackOf(made({ ...notched, toeHow: 'between' }).sizes))).toBe('3');
    expect(w(setBackOf(made({ ...notched, hasToe: false }).sizes))).toBe('0');
  });

  test('while nothing is said it stands between the sides, and they are not notched', () => {
    const of = made({ ...notched, toeHow: undefined });
    expect(part(of, 'left').corner).toBeUndefined();
    // 43 5/8 − 2 × 23/32
    expect(w(part(of, 'toe').length.sum.value)).toBe('42 3/16');
    expect(w(part(of, 'toe').width.sum.value)).toBe('4');
  });

  test('both sides are sawn to the same two lines, the outside down, after their rabbets', () => {
    const ops = operationsOf(
      { parts: made(notched).parts, cases: [{ id: 'c1', name: '' }], hand: [], recuts: () => ({}) },
      { shop: {}, tape: '1/32' },
    );
    const cuts = ops.filter(({ what }) => what === 'corner');
    expect(cuts.map(({ id }) => id)).toEqual(['cut/c1~left/corner~toe/1', 'cut/c1~right/corner~toe/1']);
    expect(new Set(cuts.map(({ setup }) => setup.key)).size).toBe(1);
    expect(cuts.map((op) => [w(op.figure), placingOf(op).face?.lies])).toEqual([
      ['2 3/4', 'down'],
      ['2 3/4', 'down'],
    ]);
    expect(cuts[0]?.after.length).toBeGreaterThan(0);
    const [higher] = operationsOf(
      { parts: made({ ...notched, feet: l('5') }).parts, cases: [], hand: [], recuts: () => ({}) },
      { shop: {}, tape: '1/32' },
    ).filter(({ what }) => what === 'corner');
    expect(higher?.setup.key).not.toBe(cuts[0]?.setup.key);
  });
});

describe('what cannot be says by how much', () => {
  test.each([
    // 1/8 − 3/4 + 1/2 = −1/8
    ['a board before the sides', { toeBack: l('1/8') }, 'board-proud 1/8'],
    // 19 1/4 − 3/4 + 1/2 = 19 against 18 3/4
    ['a notch as deep as the side', { toeBack: l('19 1/4') }, 'no-foot 1/4'],
    ['a board clear of the floor by more than there is', { toeClear: l('5') }, 'too-much 1'],
  ] as const)('%s', (_, wrong, said) => expect(problems({ ...notched, ...wrong })).toEqual([said]));
});

// common practice, no source: a third of 18 3/4 is 6 1/4; 3 high; 2 1/2 back
test.each([
  ['no more than a third, 3 high, 2 1/2 back', { toeBack: l('6 1/2') }, []],
  ['over a third: 6 17/32 − 3/4 + 1/2 = 6 9/32', { toeBack: l('6 17/32') }, ['small-foot']],
  ['under 3 high', { feet: l('2 31/32') }, ['low-toe']],
  ['under 2 1/2 back', { toeBack: l('2 15/32') }, ['shallow-toe']],
] as const)('%s', (_, own, said) =>
  expect(toeWarnings(made({ ...notched, ...own }).sizes).map(({ code }) => code)).toEqual(said),
);
