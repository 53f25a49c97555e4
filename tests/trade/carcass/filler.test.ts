import { describe, expect, test } from 'vitest';
import { newCase } from '../../../src/trade/carcass/case';
import { fillerId, fillerOf, isFiller } from '../../../src/trade/carcass/filler';
import { partsOf } from '../../../src/trade/carcass/parts';
import { given, plus, sumOf } from '../../../src/trade/sums/sum';
import { l, value, w } from '../room/sample';

const stuff = [
  { id: 'ply', name: 'Ply', thickness: l('23/32'), measured: true },
  { id: 'oak', name: 'Oak', thickness: l('3/4'), measured: true },
];
const plain = {
  ...newCase('c'),
  width: l('30'),
  height: l('40'),
  depth: l('12'),
  stocks: { side: 'ply', frame: 'oak' },
};
const made = (c = plain) => value(partsOf(c, { stuff, tape: '1/16' }));
const strip = {
  side: 'left',
  width: sumOf(plus('widest-gap', l('17/32')), plus('left-to-scribe', l('1/8'))),
  length: given('case-stands-high', l('40')),
  solid: true,
} as const;

describe('a filler strip', () => {
  test('goes up to the mark, and its length to the nearest', () => {
    // 17/32 + 4/32 = 21/32, at a sixteenth 11/16, a thirty-second over
    const part = fillerOf(made(), strip, '1/16');
    expect([
      part?.id,
      w(part?.width.mark.value),
      w(part?.width.mark.rest),
      w(part?.length.mark.value),
    ]).toEqual(['c~fillerleft', '11/16', '-1/32', '40']);
    expect([part?.copies, part?.stage, part?.strip, part?.inFrame]).toEqual([1, 'any-time', true, false]);
  });

  test('is of what the sides are of; of the face frame where there is one; of its own where that is said', () => {
    const of = (c: typeof plain) => {
      const part = fillerOf(made(c), strip, '1/16');
      return [part?.stuff, w(part?.thickness)];
    };
    expect(of(plain)).toEqual(['ply', '23/32']);
    expect(of({ ...plain, hasFrame: true })).toEqual(['oak', '3/4']);
    const own = { ...plain, hasFrame: true, stocks: { ...plain.stocks, filler: 'ply' } };
    expect(of(own)).toEqual(['ply', '23/32']);
  });

  test('is none while what it is of is not measured', () => {
    const own = { ...plain, stocks: { ...plain.stocks, filler: 'not yet' } };
    expect(fillerOf(made(own), strip, '1/16')).toBeUndefined();
  });

  test('is told from the other parts of its case', () => {
    const right = fillerOf(made(), { ...strip, side: 'right' }, '1/16');
    expect(right?.id).toBe(fillerId('c', 'right'));
    expect([...made().parts, ...(right ? [right] : [])].filter(isFiller).map(({ name }) => name)).toEqual([
      { role: 'fillerright' },
    ]);
  });
});
