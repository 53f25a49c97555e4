import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  atMost,
  equals,
  inches,
  type Length,
  less,
  subtract,
  sum,
  zero,
} from '../../../src/length/length';
import { partsOf } from '../../../src/trade/carcass/parts';
import { type Bank, type Column, type Fitted, newBank } from '../../../src/trade/fronts/bank';
import { openingOf } from '../../../src/trade/fronts/opening';
import { planedLast } from '../../../src/trade/fronts/skew';
import { skewIn } from '../../../src/trade/fronts/stands';
import { frontsOf } from '../../../src/trade/fronts/worked';
import { runs } from '../../runs';
import { framedCase, plainCase, sheets } from '../carcass/sample-case';
import { l, w } from '../grooves/sample';

const own = (more: Partial<Bank> = {}): Bank => ({
  ...newBank('b'),
  width: l('18'),
  height: l('24'),
  depth: l('20'),
  ...more,
});
const worked = (bank: Bank) => {
  const made = frontsOf(bank, { worked: undefined, tape: '1/32' });
  if (!made.ok) throw new Error(made.error.map((e) => e.code).join());
  return made.value;
};
const column = (more: Partial<Column>): Column => ({ fitted: {}, ...more });
const at = (x: Length | undefined) => w(x);

describe('openingOf', () => {
  const framed = partsOf(
    {
      ...framedCase,
      inside: [{ id: 'midrail', kind: 'rail', bay: 2, at: l('29 5/16'), wide: l('1 3/4') }],
    },
    { stuff: sheets(), tape: '1/32' },
  );
  const bare = partsOf(
    { ...plainCase, inside: [{ id: 'shelf', kind: 'fixed', bay: 2, at: l('30') }] },
    { stuff: sheets(), tape: '1/32' },
  );
  if (!framed.ok || !bare.ok) throw new Error('the cases do not work out');
  const opening = (more: Partial<Bank>, of = framed) => {
    const found = openingOf({ ...newBank('b'), of: 'case', bay: 2, ...more }, 1, of.value);
    if (!found.ok) throw new Error(found.error.map((e) => e.code).join());
    return found.value;
  };

  test('in a frame it runs from the bottom rail to the middle rail, over the sill', () => {
    const found = opening({});
    expect([at(found.wide.value), at(found.high.value), at(found.sill.value)]).toEqual([
      '17',
      '29 5/16',
      '29/32',
    ]);
  });

  test('over the middle rail it runs to the top rail: step 1 of the carried cabinet’s upper bay', () => {
    const found = opening({ over: 'midrail' });
    expect([at(found.high.value), at(found.sill.value)]).toEqual(['25 7/16', '31 31/32']);
  });

  // the lower edge is 29/32 over the bottom, the upper 30 7/32; a shelf is 23/32
  test.each([
    ['15', { from: '14 3/32', to: '14 13/16' }],
    ['1/4', { behind: { edge: 'lower', by: '1/16' } }],
    ['30', { behind: { edge: 'upper', by: '7/32' } }],
    ['29 1/2', { behind: { edge: 'upper', by: '23/32' } }],
  ])('a fixed shelf %s over the bottom stands in the opening of a frame', (low, found) => {
    expect(shelvesAt(low)).toMatchObject([found]);
  });

  test.each(['3/16', '30 7/32'])('one %s over the bottom lies all behind a rail', (low) => {
    expect(shelvesAt(low)).toEqual([]);
  });

  const shelvesAt = (low: string) => {
    const { inside } = framed.value.sizes.case;
    const made = partsOf(
      { ...framedCase, inside: [...inside, { id: 'shelf', kind: 'fixed', bay: 2, at: l(low) }] },
      { stuff: sheets(), tape: '1/32' },
    );
    if (!made.ok) throw new Error(made.error.map((e) => e.code).join());
    return (opening({}, made).shelves ?? []).map(({ from, to, behind }) => ({
      from: at(from),
      to: at(to),
      ...(behind ? { behind: { ...behind, by: at(behind.by) } } : {}),
    }));
  };

  test('with no frame it is the bay itself, to the shelf or over it, and sticks stand under the box', () => {
    const under = opening({}, bare);
    expect([at(under.wide.value), at(under.high.value), at(under.sill.value)]).toEqual([
      '18 7/64',
      '30',
      '0',
    ]);
    const over = opening({ over: 'shelf' }, bare);
    expect(at(over.high.value)).toBe(at(l('58 11/16').sub(l('30 23/32')) as Length));
  });

  test('columns side by side stand on rails of one height; sticks stand on a shelf below, where there is one', () => {
    const both = partsOf(
      {
        ...framedCase,
        inside: [
          { id: 'one', kind: 'rail', bay: 1, at: l('29 5/16'), wide: l('1 3/4') },
          { id: 'two', kind: 'rail', bay: 2, at: l('29 5/16'), wide: l('1 3/4') },
          { id: 'shelf', kind: 'fixed', bay: 2, at: l('30') },
        ],
      },
      { stuff: sheets(), tape: '1/32' },
    );
    if (!both.ok) throw new Error('the case does not work out');
    const bank = { ...newBank('b'), of: 'case', bay: 1, across: 2, over: 'one' };
    const [left, right] = [1, 2].map((no) => openingOf(bank, no, both.value));
    if (!left?.ok || !right?.ok) throw new Error('no opening');
    expect([at(left.value.high.value), at(right.value.high.value)]).toEqual(['25 7/16', '25 7/16']);
    expect([left.value.stand, at(left.value.sill.value)]).toEqual(['bottom', '31 31/32']);
    // the shelf's upper face stands 30 23/32 over the bottom
    expect([right.value.stand, at(right.value.sill.value)]).toEqual(['shelf', '1 1/4']);
  });

  test('a bay that is not there, or a rail of another bay, is said', () => {
    expect(openingOf({ ...newBank('b'), of: 'case', bay: 3 }, 1, framed.value)).toMatchObject({
      error: [{ code: 'no-bay', bays: 2 }],
    });
    expect(
      openingOf({ ...newBank('b'), of: 'case', bay: 1, over: 'midrail' }, 1, framed.value),
    ).toMatchObject({ error: [{ code: 'no-floor' }] });
    expect(openingOf({ ...newBank('b'), of: 'case' }, 1, undefined)).toMatchObject({
      error: [{ code: 'no-case' }],
    });
    expect(openingOf(newBank('b'), 1, undefined)).toMatchObject({
      error: [{ code: 'missing' }, { code: 'missing' }, { code: 'missing' }],
    });
  });
});

describe('frontsOf', () => {
  test('overlay fronts cover the case all round; their gaps are between them alone', () => {
    const made = worked(own({ fit: 'overlay', count: 3, top: l('1/2'), bottom: l('1/4'), side: l('3/8') }));
    expect(at(made.total.value)).toBe('24 1/2');
    const [one] = made.columns;
    expect(at(one?.width.mark.value)).toBe('18 3/4');
    expect(at(one?.left[0]?.top)).toBe('-1/2');
    expect(at(one?.left[2]?.bottom)).toBe('24 1/4');
  });

  test('columns side by side keep one line: heights come out of the lesser opening', () => {
    const columns = {
      1: column({ usedLeft: l('24'), usedRight: l('24') }),
      2: column({ usedLeft: l('23 7/8'), usedRight: l('23 7/8') }),
    };
    const made = worked(own({ across: 2, columns }));
    expect(made.columns.map((c) => c.heights.map(at))).toEqual([made.heights.map(at), made.heights.map(at)]);
    expect(at(made.total.value)).toBe(at(l('23 7/8').sub(l('15/32')) as Length));
  });

  test('cut alike, what is left over goes into all the gaps', () => {
    const made = worked(own({ count: 5, alike: true, between: l('5/64'), height: l('29 5/16') }));
    expect([at(made.heights[0]), at(made.left)]).toEqual(['5 3/4', '3/32']);
    const [one] = made.columns;
    const gaps = one?.left.map((s, k) => subtract(s.top, one.left[k - 1]?.bottom ?? l('0'))) ?? [];
    for (const gap of gaps) expect(at(gap)).toBe('3/32');
  });

  test('cut alike, the story stick carries the same gaps as the fronts drawn', () => {
    for (const fit of ['inset', 'overlay'] as const) {
      const made = worked(own({ fit, count: 5, alike: true, between: l('5/64'), height: l('29 5/16') }));
      expect(made.marks.map((m) => at(m.top))).toEqual(made.columns[0]?.left.map((s) => at(s.top)));
    }
  });

  test('one front measured is enough: those before it are on, where they were planned', () => {
    const heights = ['4 3/8', '5 1/16', '5 3/4', '6 13/32', '7 3/32'].map(l);
    const fronts = Object.fromEntries(heights.map((high, k) => [k + 1, { high }]));
    const fitted = { 3: { usedLeft: l('15 9/16'), usedRight: l('15 9/16') } };
    const made = worked(
      own({
        height: l('29 5/16'),
        between: l('5/64'),
        count: 5,
        fronts,
        columns: { 1: column({ fitted }) },
      }),
    );
    const [one] = made.columns;
    expect([one?.fitted, at(one?.ahead?.left?.each), at(one?.left[0]?.top)]).toEqual([3, '1/12', '5/64']);
  });

  test('what comes off a front to keep the gaps leaves the line of its box and stick', () => {
    const fitted = { 4: { held: l('5 13/16'), trim: l('1/32') } };
    const [one] = worked(own({ columns: { 1: column({ fitted }) } })).columns;
    expect([at(one?.heights[3]), at(one?.untrimmed[3])]).toEqual(['5 25/32', '5 13/16']);
  });

  test('one front has no gap between; reveals that fill the opening are refused by how much', () => {
    expect(at(worked(own({ count: 1, between: l('1/8') })).heights[0])).toBe('23 3/4');
    const none = frontsOf(own({ count: 4, between: l('5') }), { worked: undefined, tape: '1/32' });
    expect(!none.ok && none.error).toMatchObject([{ code: 'nothing-left' }]);
  });

  test.each([2.5, 0, -1, 25, Number.NaN])('%s fronts are refused', (count) => {
    const none = frontsOf(own({ count }), { worked: undefined, tape: '1/32' });
    expect(!none.ok && none.error).toEqual([{ code: 'count-not-whole' }]);
  });

  test('a gap under nothing is refused: fronts would stand in each other', () => {
    const none = frontsOf(own({ between: l('-1/64') }), { worked: undefined, tape: '1/32' });
    expect(!none.ok && none.error).toMatchObject([{ code: 'gap-negative' }]);
    expect(worked(own({ between: l('0'), top: l('0'), bottom: l('0') })).columns).toHaveLength(1);
  });

  test.each([
    'top',
    'bottom',
    'side',
    'gap',
    'trim',
    'band',
    'slideLong',
    'slideHigh',
    'centre',
    'boxUp',
    'play',
  ] as const)('%s under nothing is refused by how much, nothing is not', (field) => {
    const none = frontsOf(own({ [field]: l('-1/64') }), { worked: undefined, tape: '1/32' });
    expect(!none.ok && none.error).toEqual([{ code: 'bank-negative', field, by: l('1/64') }]);
    expect(frontsOf(own({ [field]: l('0') }), { worked: undefined, tape: '1/32' }).ok).toBe(true);
  });

  const reading = fc.bigInt({ min: -32n, max: 32n }).map((n) => inches(n, 128n));
  test('what is fitted never moves, whatever is measured or chosen after', () => {
    const goes = fc.constantFrom<Bank['goes']>('gaps', 'last', 'fronts');
    const order = fc.constantFrom<Bank['order']>('down', 'up');
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.array(reading, { minLength: 4, maxLength: 4 }),
        fc.tuple(goes, goes),
        order,
        reading,
        (on, offs, [first, second], way, more) => {
          const plain = worked(own({ order: way }));
          const stands = plain.columns[0]?.left ?? [];
          const fitted: Record<number, Fitted> = {};
          for (let k = 0; k < on; k += 1) {
            const no = way === 'down' ? k + 1 : 4 - k;
            const s = stands[no - 1];
            const far = way === 'down' ? s?.bottom : subtract(l('24'), s?.top ?? l('0'));
            const used = sum([far ?? l('0'), offs[k] ?? l('0')]);
            fitted[no] = { usedLeft: used, usedRight: used, held: plain.heights[no - 1] };
          }
          const used = (high: Length, how: Bank['goes']) =>
            worked(
              own({
                order: way,
                goes: how,
                columns: { 1: column({ fitted, usedLeft: high, usedRight: high }) },
              }),
            ).columns[0];
          const a = used(l('24'), first);
          const b = used(sum([l('24'), more]), second);
          expect([a?.fitted, b?.fitted]).toEqual([on, on]);
          for (const no of Object.keys(fitted).map(Number)) {
            const [x, y] = [a?.left[no - 1], b?.left[no - 1]];
            if (!x || !y) throw new Error('no front');
            expect(equals(subtract(x.bottom, x.top), subtract(y.bottom, y.top))).toBe(true);
            // from where the fitting began
            const from = (s: typeof x, high: Length) => (way === 'down' ? s.bottom : subtract(high, s.top));
            expect(equals(from(x, l('24')), from(y, sum([l('24'), more])))).toBe(true);
          }
        },
      ),
      { numRuns: runs(200) },
    );
  });
});

describe('the last front of an opening out of square, heights shared out of the lesser side', () => {
  const sixtyFourths = (min: bigint, max: bigint) => fc.bigInt({ min, max }).map((n) => inches(n, 64n));
  const skewed = fc.record({
    left: sixtyFourths(1200n, 1800n),
    by: sixtyFourths(-24n, 24n),
    count: fc.integer({ min: 1, max: 6 }),
    order: fc.constantFrom('down' as const, 'up' as const),
    fit: fc.constantFrom('inset' as const, 'overlay' as const),
  });

  test('planed to fit it leaves the lesser side as planned, within a mark, and the other higher by what is out', () => {
    fc.assert(
      fc.property(skewed, ({ left, by, ...of }) => {
        const right = add(left, by);
        const used = { left, right, usedLeft: left, usedRight: right };
        const bank = worked(own({ ...of, columns: { 1: column(used) } }));
        const [only] = bank.columns;
        if (!only) throw new Error('no column');
        const last = only.heights[of.order === 'down' ? of.count - 1 : 0] ?? zero;
        const at = { wanted: bank.reveals.between, cut: false };
        const planed = planedLast(skewIn(bank, only), at);
        const [low, high] = less(left, right) ? [planed.left, planed.right] : [planed.right, planed.left];
        expect(equals(subtract(high, low), absolute(by))).toBe(true);
        // what rounding together left, under a mark, is in its end gap as planned: to fit, it is on the front
        expect(atMost(last, low)).toBe(true);
        expect(less(subtract(low, last), inches(1n, 32n))).toBe(true);
      }),
      { numRuns: runs(150) },
    );
  });
});
