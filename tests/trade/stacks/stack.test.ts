import { describe, expect, test } from 'vitest';
import type { Length } from '../../../src/length/length';
import type { Result } from '../../../src/length/result';
import {
  finestStep,
  largerFirst,
  type Piece,
  type StackStock,
  setIn,
  usualMargin,
  withCount,
} from '../../../src/trade/stacks/pieces';
import { type Stack, stackFor } from '../../../src/trade/stacks/stack';
import { l, w } from '../grooves/sample';
import { testSet } from './test-set';

const margin = (under: string, over: string) => ({ under: l(under), over: l(over) });
const piece = (size: string, count: number, kind: Piece['kind'] = 'shim'): Piece => ({
  size: l(size),
  count,
  kind,
});
const box = (...pieces: readonly Piece[]): StackStock => ({ outer: l('1/8'), pieces });

const made = (stack: Stack | undefined): string =>
  stack?.chosen.map((p) => `${p.count} × ${p.size.toString()}`).join(', ') ?? 'none';
const said = (x: Length): string => x.toString();
const value = <T>(found: Result<T, { readonly code: string }>): T => {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

describe('stackFor', () => {
  test.each([
    [
      'Example 1 of stacks',
      '.7145',
      '3 × 0.125, 1 × 0.0625, 1 × 0.012, 1 × 0.01, 1 × 0.005',
      '.7145',
      '0',
      7,
    ],
    ['Example 2 of stacks', '.7265', '3 × 0.125, 1 × 0.0625, 2 × 0.02', '.7275', '.001', 6],
    ['Example 3 of stacks', '.3585', '1 × 0.0625, 2 × 0.02, 1 × 0.005', '.3575', '-.001', 4],
  ])('%s: %s is the outers and %s', (_, want, chosen, width, error, pieces) => {
    const { fewest, note } = value(stackFor(testSet, l(want)));
    expect(made(fewest)).toBe(chosen);
    expect(fewest.width.equals(l(width))).toBe(true);
    expect(fewest.error.equals(l(error))).toBe(true);
    expect(fewest.pieces).toBe(pieces);
    expect(note).toBeUndefined();
  });

  test('Example 2 of stacks: shows the closest beside the fewest only when it is nearer', () => {
    expect(value(stackFor(testSet, l('.7145'))).closest).toBeUndefined();
    // .7265 - .6875 = .039, which takes four shims: .020 + .010 + .005 + .004.
    const { closest } = value(stackFor(testSet, l('.7265')));
    expect([made(closest), closest && said(closest.error), closest?.pieces]).toEqual([
      '3 × 0.125, 1 × 0.0625, 1 × 0.02, 1 × 0.01, 1 × 0.005, 1 × 0.004',
      '0',
      8,
    ]);
  });

  test('Example 9 of stacks: a stack of two pieces is found where taking the largest first needs three', () => {
    const stock = box(piece('.010', 1), piece('.008', 2), piece('.006', 1));
    expect(made(value(stackFor(stock, l('.266'), margin('0', '0'))).fewest)).toBe('1 × 0.01, 1 × 0.006');
    const greedyMisses = box(piece('.010', 1), piece('.008', 2), piece('.003', 2));
    expect(made(value(stackFor(greedyMisses, l('.266'), margin('0', '0'))).fewest)).toBe('2 × 0.008');
  });

  test('both ends of the margin are in it, and a hair beyond is not', () => {
    const stock = box(piece('.020', 1));
    const ask = (want: string) => {
      const found = stackFor(stock, l(want));
      return found.ok ? said(found.value.fewest.error) : found.error.code;
    };
    expect(['.271', '.2711', '.268', '.2679'].map(ask)).toEqual([
      '-0.001',
      'none-fits',
      '0.002',
      'none-fits',
    ]);
  });

  test('a set that cuts .002 over its sum is built .002 thinner', () => {
    const { fewest } = value(stackFor({ ...testSet, correction: l('.002') }, l('.7165')));
    expect(fewest.nominal.equals(l('.7145'))).toBe(true);
    expect([said(fewest.width), said(fewest.error), fewest.pieces]).toEqual(['0.7165', '0', 7]);
  });

  test('two outers alone make a quarter', () => {
    const { fewest } = value(stackFor(testSet, l('1/4')));
    expect([made(fewest), fewest.pieces, said(fewest.error)]).toEqual(['', 0, '0']);
  });

  test('millimetre pieces and inch pieces add exactly', () => {
    const stock = box(piece('3 mm', 4, 'chipper'), piece('.1 mm', 2), piece('.005', 2));
    const want = l('1/4').add(l('6 mm')).add(l('.1 mm')).add(l('.005')) as Length;
    const { fewest } = value(stackFor(stock, want, margin('0', '0')));
    expect([said(fewest.error), fewest.pieces]).toEqual(['0', 4]);
  });
});

describe('ties between stacks', () => {
  const exact = margin('.002', '.002');
  const fewest = (stock: StackStock, want: string) => made(value(stackFor(stock, l(want), exact)).fewest);

  test('as many pieces: the lesser error, either way of the margin', () => {
    expect(fewest(box(piece('.010', 1), piece('.012', 1)), '.2605')).toBe('1 × 0.01');
    expect(fewest(box(piece('.010', 1), piece('.012', 1)), '.2615')).toBe('1 × 0.012');
  });

  test('as many pieces and one error: fewer shims, and then the wider', () => {
    // .010 and .012 both miss .011 by .001.
    expect(fewest(box(piece('.010', 1, 'chipper'), piece('.012', 1)), '.261')).toBe('1 × 0.01');
    expect(fewest(box(piece('.010', 1), piece('.012', 1)), '.261')).toBe('1 × 0.012');
  });

  test('all else equal: larger pieces first', () => {
    expect(fewest(box(piece('.007', 1), piece('.003', 1), piece('.005', 2)), '.260')).toBe(
      '1 × 0.007, 1 × 0.003',
    );
  });

  test('fewer pieces go before a lesser error', () => {
    expect(fewest(box(piece('.009', 1), piece('.006', 1), piece('.004', 1)), '.260')).toBe('1 × 0.009');
  });

  test('with none in the margin the lesser error goes before fewer pieces', () => {
    const found = stackFor(
      box(piece('.010', 1), piece('.008', 1), piece('.005', 1)),
      l('.264'),
      margin('0', '0'),
    );
    if (found.ok || found.error.code !== 'none-fits') throw new Error('expected none-fits');
    expect(made(found.error.nearest)).toBe('1 × 0.01, 1 × 0.005');
    expect(said(found.error.by)).toBe('0.001');
  });
});

describe('where there is no stack', () => {
  const refused = (stock: StackStock, want: string, within = usualMargin) => {
    const found = stackFor(stock, l(want), within);
    if (found.ok) throw new Error('expected a refusal');
    return found.error;
  };

  test('nothing to choose from, nothing wanted and figures that cannot be are named', () => {
    expect(refused(box(), '.7').code).toBe('no-pieces');
    expect(refused(box(piece('1/8', 0)), '.7').code).toBe('no-pieces');
    expect(refused(testSet, '0')).toEqual({ code: 'not-positive', what: 'want' });
    expect(refused({ ...testSet, outer: l('0') }, '.7')).toEqual({ code: 'not-positive', what: 'outer' });
    expect(refused(box(piece('1/8', 1), piece('0', 1)), '.7')).toEqual({ code: 'piece-not-positive', at: 1 });
    expect(refused(box(piece('1/8', 1.5)), '.7')).toEqual({ code: 'not-a-count', at: 0 });
    expect(refused(box(piece('1/8', -1)), '.7')).toEqual({ code: 'not-a-count', at: 0 });
    expect(refused(testSet, '.7', margin('-.001', '0')).code).toBe('margin-negative');
  });

  test('narrower than the two outers is for a single blade; they are shown when they are near enough', () => {
    const narrow = refused(testSet, '.2');
    expect(narrow.code === 'single-blade' && [w(narrow.least), narrow.bare]).toEqual(['1/4', undefined]);
    const near = refused(testSet, '.2485');
    expect(near.code === 'single-blade' && near.bare?.error.equals(l('.0015'))).toBe(true);
  });

  test('a set that cuts under its sum reaches below a quarter', () => {
    const stock = { ...box(piece('.005', 1)), correction: l('-.010') };
    expect(value(stackFor(stock, l('.245'))).fewest.error.equals(l('0'))).toBe(true);
    expect(refused(stock, '.239').code).toBe('single-blade');
  });

  test('Example 10 of stacks: the nearest below is short by so much, and one piece of that size puts it right', () => {
    const stock = box(piece('1/8', 1, 'chipper'), piece('.020', 1));
    const found = refused(stock, '.4');
    if (found.code !== 'none-fits') throw new Error(found.code);
    expect([made(found.nearest), said(found.by), said(found.fix.piece)]).toEqual([
      '1 × 0.125, 1 × 0.02',
      '-0.005',
      '0.005',
    ]);
    const more = { ...stock, pieces: [...stock.pieces, piece('.005', 1)] };
    expect(value(stackFor(more, l('.4'))).fewest.error.equals(l('0'))).toBe(true);
  });

  test('the nearest above is over by so much, and the piece goes in the widest stack below', () => {
    const stock = box(piece('1/8', 1, 'chipper'), piece('.020', 1));
    const found = refused(stock, '.391');
    if (found.code !== 'none-fits') throw new Error(found.code);
    expect([made(found.nearest), said(found.by)]).toEqual(['1 × 0.125, 1 × 0.02', '0.004']);
    expect([made(found.fix.to), said(found.fix.piece)]).toEqual(['1 × 0.125', '0.016']);
  });

  test('Example 11 of stacks: what the arbor carries is the limit, to the thousandth', () => {
    const stock = { ...testSet, pieces: [piece('1/8', 6, 'chipper'), piece('1/16', 2, 'chipper')] };
    expect(value(stackFor(stock, l('13/16'))).fewest.pieces).toBe(5);
    const over = refused(stock, '7/8');
    expect(over.code === 'over-arbor' && [w(over.capacity), said(over.over)]).toEqual(['13/16', '0.0615']);
  });

  test('a stack in the margin that is too long for the arbor is not offered', () => {
    const stock = { ...box(piece('.030', 1), piece('.010', 2)), arbor: l('.279') };
    // .280 is wanted: .278 … .282 would do, the box makes .280, the arbor carries .279.
    const found = refused(stock, '.280', margin('.002', '.002'));
    expect(found.code === 'over-arbor' && said(found.over)).toBe('0.001');
    // .278 would still go on, but the box does not make it.
    const none = refused({ ...box(piece('.010', 1)), arbor: l('.279') }, '.280', margin('.002', '.002'));
    if (none.code !== 'none-fits') throw new Error(none.code);
    expect([said(none.by), said(none.fix.piece)]).toEqual(['-0.02', '0.019']);
  });

  test('two outers that the arbor does not carry are over it', () => {
    expect(refused({ ...testSet, arbor: l('3/16') }, '1/4').code).toBe('over-arbor');
  });

  test('a margin narrower than the least change of a shim is said beside the answer and beside none', () => {
    const coarse = box(piece('.010', 2), piece('.020', 1));
    const found = stackFor(coarse, l('.260'));
    expect(found.ok && found.value.note && said(found.value.note.step)).toBe('0.01');
    const none = refused(coarse, '.265');
    expect(none.code === 'none-fits' && none.note && said(none.note.step)).toBe('0.01');
    expect(value(stackFor(coarse, l('.260'), margin('.005', '.005'))).note).toBeUndefined();
  });

  test('a box of sizes that hardly ever sum alike is refused rather than half searched', () => {
    const odd = Array.from({ length: 20 }, (_, k) => piece(`1/${1009 + 2 * k}`, 3));
    expect(refused(box(...odd), '.28', margin('.01', '.01')).code).toBe('too-many-ways');
  });
});

describe('finestStep and largerFirst', () => {
  test.each([
    ['a shim changed for another', testSet.pieces, '.001'],
    ['the thinnest shim put in', [piece('.004', 1), piece('.010', 1)], '.004'],
    ['without shims, a chipper', [piece('1/8', 4, 'chipper'), piece('1/16', 1, 'chipper')], '1/16'],
    ['only of what is at hand', [piece('.004', 0), piece('.010', 1)], '.01'],
  ])('the least change is %s', (_, pieces, want) => expect(finestStep(pieces)?.equals(l(want))).toBe(true));

  test('like pieces come under one count, chippers before shims of their size', () => {
    const list = largerFirst([
      piece('.005', 2),
      piece('1/16', 1),
      piece('1/16', 1, 'chipper'),
      piece('.005', 1),
    ]);
    expect(list.map((p) => `${p.count} ${p.kind} ${w(p.size)}`)).toEqual([
      '1 chipper 1/16',
      '1 shim 1/16',
      '3 shim 1/200',
    ]);
  });
});

describe('setIn', () => {
  test('is no set until the outers are given and a piece is at hand', () => {
    expect(setIn({ pieces: [] })).toBeUndefined();
    expect(setIn({ outer: l('1/8'), pieces: [piece('1/8', 0, 'chipper')] })).toBeUndefined();
    expect(setIn({ pieces: testSet.pieces })).toBeUndefined();
    expect(setIn({ outer: l('1/8'), pieces: [piece('1/8', 1, 'chipper')] })).toEqual(
      box(piece('1/8', 1, 'chipper')),
    );
  });
});

describe('withCount', () => {
  const [four, one, shim] = [piece('1/8', 4, 'chipper'), piece('1/16', 1, 'chipper'), piece('1/8', 2)];

  test('puts a new size last, changes one in its place and takes one off at nothing', () => {
    expect(withCount([four], one)).toEqual([four, one]);
    expect(withCount([four, one], { ...four, count: 2 })).toEqual([piece('1/8', 2, 'chipper'), one]);
    expect(withCount([four, one], { ...four, count: 0 })).toEqual([one]);
    expect(withCount([], { ...four, count: 0 })).toEqual([]);
  });

  test('leaves a shim of the same size alone, and makes one of a size written down twice', () => {
    expect(withCount([four, shim], { ...four, count: 0 })).toEqual([shim]);
    expect(withCount([four, one, four], { ...four, count: 6 })).toEqual([piece('1/8', 6, 'chipper'), one]);
  });
});
