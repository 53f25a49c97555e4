import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asInches, inches, less, ratio } from '../../../src/length/length';
import { boardFeet, type SolidPiece, solidOf, solidPiecesOf } from '../../../src/trade/buying/solid';
import { given } from '../../../src/trade/sums/sum';
import { runs } from '../../runs';
import { l } from '../grooves/sample';
import { n, oak, part } from './sample';

const piece = (long: string, wide: string, count = 1): SolidPiece => ({
  long: l(long),
  wide: l(wide),
  count,
});

/** The frame of Example 1 of buying. */
const frame = [
  piece('60 1/8', '1 11/16', 2),
  piece('56 1/2', '1 3/8'),
  piece('35 3/8', '2'),
  piece('35 3/8', '1 5/8'),
  piece('17', '1 3/4'),
];

describe('boardFeet', () => {
  test('Example 1 of buying: length × width × thickness / 144, a foot square and an inch thick is one', () => {
    expect(n(boardFeet([piece('12', '12')], l('1')))).toBe('1');
    expect(n(boardFeet([piece('96', '6')], l('1')))).toBe('4');
    expect(n(boardFeet([piece('96', '6', 3)], l('1 1/4')))).toBe('15');
  });

  test('Example 1 of buying: the frame by hand, 438 19/32 square inches, an inch thick 3 211/4608', () => {
    // 2 × 60 1/8 × 1 11/16 + 56 1/2 × 1 3/8 + 35 3/8 × 2 + 35 3/8 × 1 5/8 + 17 × 1 3/4
    expect(n(boardFeet(frame, l('1')))).toBe('3 211/4608');
  });

  test('no pieces hold nothing', () => expect(n(boardFeet([], l('1')))).toBe('0'));
});

describe('solidOf', () => {
  test('Example 1 of buying: the frame, rough an inch, bought with a fifth over: 3.655 up to 3.7; with 15 % 3.503 up to 3.6', () => {
    const rough = { ...oak, rough: l('1') };
    expect(n(solidOf(frame, rough)?.buy)).toBe('3 7/10');
    expect(n(solidOf(frame, rough, ratio(3n, 20n))?.buy)).toBe('3 3/5');
  });

  test('with no rough thickness the measured one stands in, and says so', () => {
    const measured = solidOf(frame, oak);
    expect([measured?.as, n(measured?.buy)]).toEqual(['measured', '2 4/5']);
    expect(solidOf(frame, { ...oak, measured: false })?.as).toBe('planned');
    expect(solidOf(frame, { ...oak, rough: l('1') })?.as).toBe('rough');
  });

  test('no waste buys what the parts hold, and a whole tenth stays what it is', () => {
    const bare = solidOf([piece('96', '6')], { ...oak, rough: l('1') }, ratio(0n));
    expect([n(bare?.net), n(bare?.buy)]).toEqual(['4', '4']);
    expect(n(solidOf([piece('96', '6 1/64')], { ...oak, rough: l('1') }, ratio(0n))?.buy)).toBe('4 1/10');
  });

  test('nothing to cut, nothing to buy', () => {
    expect(solidOf([], oak)).toBeUndefined();
    expect(solidOf([piece('96', '6', 0)], oak)).toBeUndefined();
  });

  test('a waste below nothing is a mistake in the program', () => {
    expect(() => solidOf(frame, oak, ratio(-1n, 10n))).toThrow(RangeError);
  });

  const size = fc.bigInt({ min: 1n, max: 6400n }).map((k) => inches(k, 64n));
  const pieces = fc.array(fc.record({ long: size, wide: size, count: fc.integer({ min: 1, max: 9 }) }), {
    minLength: 1,
    maxLength: 8,
  });
  const share = fc.bigInt({ min: 0n, max: 40n }).map((k) => ratio(k, 100n));

  test('never less than the parts hold with their waste, and less than a tenth over', () => {
    fc.assert(
      fc.property(pieces, size, share, (all, rough, waste) => {
        const found = solidOf(all, { ...oak, rough }, waste);
        if (!found) throw new Error('nothing');
        const want = asInches(found.net).mul(asInches(waste).add(1n));
        const over = asInches(found.buy).sub(want);
        expect(over.gte(0n) && over.lt(inches(1n, 10n))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('more waste, or thicker stuff, never buys less', () => {
    fc.assert(
      fc.property(pieces, size, share, (all, rough, waste) => {
        const buy = (thick: typeof rough, more: typeof waste) =>
          asInches(solidOf(all, { ...oak, rough: thick }, more)?.buy ?? ratio(0n));
        const first = buy(rough, waste);
        expect(less(buy(rough, ratio(waste.n + waste.d, waste.d)), first)).toBe(false);
        expect(less(buy(inches(rough.n + rough.d, rough.d), waste), first)).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('piecesOf', () => {
  test('takes the parts of one stock, every copy', () => {
    const parts = [part({ long: '17', wide: '2', copies: 3 }), part({ long: '18', wide: '2', stuff: 'ply' })];
    expect(solidPiecesOf(parts, 'oak').map((p) => [n(p.long), p.count])).toEqual([['17', 3]]);
  });

  test('a mitred piece is as long as its long points', () => {
    const edge = part({ long: '38', wide: '1', longPoint: given('edge', l('39 1/2')) });
    expect(solidPiecesOf([edge], 'oak').map((p) => n(p.long))).toEqual(['39 1/2']);
  });

  test('fronts off one blank are in the blank, and not counted twice; those off none are', () => {
    const parts = [
      part({ id: 'b~c1blank', long: '17', wide: '30' }),
      part({ id: 'b~c1d1front', long: '17', wide: '14' }),
      part({ id: 'b~c1d12front', long: '17', wide: '15' }),
      part({ id: 'b~c2d1front', long: '17', wide: '16' }),
    ];
    expect(solidPiecesOf(parts, 'oak').map((p) => n(p.wide))).toEqual(['30', '16']);
  });
});
