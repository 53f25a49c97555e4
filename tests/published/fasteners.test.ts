import { describe, expect, test } from 'vitest';
import { add, half, inches, over, subtract } from '../../src/length/length';
import { type BiscuitNo, biscuitsFor } from '../../src/trade/fasteners/biscuits';
import { dowelsFor } from '../../src/trade/fasteners/dowels';
import { l, w } from '../trade/grooves/sample';

type Plan = Parameters<typeof dowelsFor>[0];

/** Ends of our own between the dowels that are printed; lengths are ours. */
const plan: Plan = {
  part: l('3/4'),
  mate: l('3/4'),
  run: l('18'),
  end: l('1'),
  most: l('6'),
  sizes: ['3/16', '1/4', '5/16', '3/8', '7/16'].map((thick) => ({ thick: l(thick), long: l('1 1/2') })),
};

const dowels = (own: Partial<Plan> = {}) => {
  const found = dowelsFor({ ...plan, ...own });
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

const told = (own: Partial<Plan>) => dowels(own).warnings.map(({ code }) => code);

// Source: Wood Magazine, Tips for Dowel Joinery (woodmagazine.com/woodworking-how-to/joinery/tips-for-dowel-joinery;
// date not read). Seen: "use dowels half the thickness of the stock you're joining. For example, use 3⁄8" dowels for
// 3⁄4" stock, and 1⁄4" dowels for 1⁄2" stock. Drill each dowel hole 1⁄16" longer than half the dowel's length". Two
// holes 1/16 over half make 1/8 over the whole: how a dowel is shared by them is of another source, below.
describe('dowels half as thick as the stock', () => {
  test.each([
    ['3/4', '3/8'],
    ['1/2', '1/4'],
  ])('in %s of all on the shelf %s is taken', (stock, dowel) =>
    expect(w(dowels({ part: l(stock), mate: l(stock) }).size.thick)).toBe(dowel),
  );

  test.each(['1 1/2', '2'])('the holes for one %s long are 1/8 longer together', (long) => {
    const { inFace, inEdge } = dowels({ sizes: [{ thick: l('3/8'), long: l(long) }] });
    expect(w(subtract(add(inFace, inEdge), l(long)))).toBe('1/8');
  });
});

// Source: The rule of thirds and half (jorbins.com/note-dowel-size-and-the-rule-of-thirds-and-half; date not read).
// Seen: "no smaller than one-third (1/3) the actual thickness of the smallest board being joined"; "no larger than
// one-half (1/2) the actual thickness of the smallest board being joined". 1/4 and 3/8 are worked from 3/4.
describe('a third to a half of the thinner board', () => {
  const one = (thick: string, own: Partial<Plan> = {}) =>
    dowelsFor({ ...plan, ...own, sizes: [{ thick: l(thick), long: l('1 1/2') }] });

  test.each(['1/4', '5/16', '3/8'])('in 3/4 one of %s goes', (thick) => expect(one(thick).ok).toBe(true));

  test.each(['15/64', '25/64'])('one of %s does not, and both limits are said', (thick) =>
    expect(one(thick)).toEqual({
      ok: false,
      error: { code: 'no-dowel', least: over(l('3/4'), 3n), most: half(l('3/4')) },
    }),
  );

  test('of two boards the thinner counts, whichever it is', () => {
    expect([one('3/8', { mate: l('1/2') }).ok, one('3/8', { part: l('1/2') }).ok]).toEqual([false, false]);
  });
});

// Source: Woodweb, Dowel case joinery guidelines, 25 April 2001 (woodweb.com/knowledge_base/
// Dowel_case_joinery_guidelines.html). Seen: "one dowel connection front to back for every 6" of panel plus the first
// dowel"; "the first (nearest the front of the case) dowel to be centered not less than 1" from the front"; "no
// distance from the edge of the dowel is less than the radius of the dowel away"; "dowels should have 2/3 of their
// length inside the shelf or horizontal component and 1/3 of the dowel should be extended to be fitted into vertical
// members". The counts are worked from the first: 12 / 6 + 1 = 3.
describe('dowels of a case', () => {
  test.each([
    ['12', 3],
    ['18', 4],
    ['24', 5],
  ] as const)('a panel %s deep has %d', (run, count) => {
    const { marks } = dowels({ run: l(run) }).row;
    expect([marks.length, w(marks[0])]).toEqual([count, '1']);
  });

  test('nearer than 1 from the front is told', () => {
    expect(told({ end: l('15/16') })).toEqual(['near-end']);
    expect(told({ end: l('1') })).toEqual([]);
  });

  // 3/8 from the face less 3/16 leaves the radius, 3/16; 11/32 leaves 5/32
  test('less wood beside one than its radius is told', () => {
    expect(told({ from: l('3/8') })).toEqual([]);
    expect(told({ from: l('11/32') })).toEqual(['thin-wall']);
  });

  // of 1 1/2: 1/2 and 1, each hole 1/16 deeper than what is in it
  test('a third is in the upright, two thirds in the shelf', () => {
    const { inFace, inEdge } = dowels();
    expect([inFace, inEdge].map((hole) => w(subtract(hole, l('1/16'))))).toEqual(['1/2', '1']);
  });
});

// Source: The Spruce Crafts, Proper Spacing for Plate Joinery Biscuits (thesprucecrafts.com/
// how-far-apart-to-space-biscuits-3536526; date not read). Seen: "Joinery biscuits are all 5/32 inch thick"; "#0: 5/8
// x 1 7/8 inches", "#10: 3/4 x 2 1/8 inches", "#20: 15/16 x 2 1/4 inches". Others print #20 larger: it is measured. A
// slot 1/32 deeper than half of one, the wood round it and a joint half an inch longer are not of this page, and ours.
describe('biscuits as they are sold', () => {
  const leave = l('3/16');
  const deeper = l('1/32');
  const sold = [
    ['0', '5/8', '1 7/8'],
    ['10', '3/4', '2 1/8'],
    ['20', '15/16', '2 1/4'],
  ] as const;
  const least = inches(1n, 64n);
  const taken = (own: Partial<Parameters<typeof biscuitsFor>[0]>): BiscuitNo | undefined => {
    const found = biscuitsFor({ part: l('3/4'), mate: l('3/4'), run: l('18'), most: l('6'), leave, ...own });
    return found.ok ? found.value.no : undefined;
  };
  const smaller = { '20': '10', '10': '0', '0': undefined } as const;

  test.each(sold)('#%s is %s wide: half of it and no less goes into the face', (no, wide) => {
    const mate = add(add(half(l(wide)), deeper), leave);
    expect([taken({ mate }), taken({ mate: subtract(mate, least) })]).toEqual([no, smaller[no]]);
  });

  test.each(sold)('#%s is %s × %s long: a joint that much longer than it takes it', (no, _, long) => {
    const run = add(l(long), l('1/2'));
    expect([taken({ run }), taken({ run: subtract(run, least) })]).toEqual([no, smaller[no]]);
  });

  test('all are 5/32 thick: an edge of that and wood at both sides takes one', () => {
    const part = add(l('5/32'), add(leave, leave));
    expect([taken({ part }), taken({ part: subtract(part, least) })]).toEqual(['20', undefined]);
  });
});
