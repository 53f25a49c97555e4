import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { type Lift, liftSays } from '../../../src/trade/loads/lift';
import { liftCures } from '../../../src/trade/loads/lift-cures';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const hands = (out: string, up: string, turn = 0n) => ({ out: l(out), up: l(up), turn: ratio(turn) });
const drawer: Lift = {
  start: hands('15', '12'),
  end: hands('15', '42'),
  careful: false,
  grip: 'fair',
  load: ratio(30n),
  most: ratio(50n),
};
const cures = (more: Partial<Lift> = {}) => liftCures({ ...drawer, ...more });
const goes = (lift: Lift) => {
  const found = liftSays(lift);
  return found.ok && !found.value.over;
};

describe('liftCures', () => {
  // At 15 out the limit is 24.853, 5.147 under 30. Closer: 51 × .87 × .88 × .95 = 37.093 × the multiplier: .77 at 13
  // is 28.6, .83 at 12 is 30.8. Higher, 42 being the end: at 30 up 51 × .67 × 1 × .97 (.82 + 1.8/12) × 1.00 = 33.1;
  // at 25 .96 (.9625) × .93 (.82 + 1.8/17 = .926) × .95: 28.98; at 26 .97 × .93 × .95 (.82 + 1.8/16 = .9325, to .93):
  // 29.28; 27: .98 (.9775) × .94 (.82 + 1.8/15) × .95: 29.90; 28: .985, half up .99 × .95 (.82 + 1.8/14 = .9486) ×
  // .95: 30.53.
  test('Example 4 of loads: closer, higher, less in it, two trips, a hoist', () => {
    const found = cures();
    expect(found.map((x) => x.code)).toEqual(['closer', 'start-at', 'take-out', 'trips', 'hoist']);
    const [closer, up, out, trips] = found;
    expect(closer?.code === 'closer' && w(closer.out)).toBe('12');
    expect(up?.code === 'start-at' && w(up.up)).toBe('28');
    expect(out?.code === 'take-out' && out.pounds.valueOf().toFixed(1)).toBe('5.1');
    expect(trips?.code === 'trips' && trips.count).toBe(2n);
  });

  test('what does not help is not offered: 40 lb so low is too much however close', () => {
    // at 10 out 37.1; at 30 up 33.1
    expect(cures({ load: ratio(40n) }).map((x) => x.code)).toEqual(['take-out', 'trips', 'hoist']);
  });

  test('faced instead of turned to', () => {
    // 90 degrees: 1 - .288 = .71; 24.853 × .71 = 17.6, under 20; faced 24.9 is enough
    const turned = { start: hands('15', '12', 90n), load: ratio(20n) };
    expect(cures(turned).map((x) => x.code)).toContain('no-turn');
    expect(cures({ ...turned, load: ratio(25n) }).map((x) => x.code)).not.toContain('no-turn');
  });

  test('nothing is offered where nothing is over, and only a hoist where nothing may be lifted', () => {
    expect(cures({ load: ratio(24n) })).toEqual([]);
    expect(cures({ end: hands('15', '90') }).map((x) => x.code)).not.toContain('take-out');
    expect(cures({ end: hands('15', '90') }).at(-1)?.code).toBe('hoist');
  });

  test('every place named does what it says', () => {
    const inch = (max: number) => fc.integer({ min: 0, max: max * 4 }).map((n) => inches(BigInt(n), 4n));
    const some = fc.record({
      out: inch(27),
      up: inch(70),
      turn: fc.constantFrom(ratio(0n), ratio(45n), ratio(90n)),
    });
    fc.assert(
      fc.property(some, some, fc.integer({ min: 5, max: 50 }), (start, end, pounds) => {
        const lift: Lift = { ...drawer, start, end, careful: true, load: ratio(BigInt(pounds)) };
        for (const cure of liftCures(lift)) {
          const at = (h: Lift['start'], out: typeof h.out) => ({ ...h, out: out.lt(h.out) ? out : h.out });
          if (cure.code === 'closer')
            expect(goes({ ...lift, start: at(start, cure.out), end: at(end, cure.out) })).toBe(true);
          if (cure.code === 'start-at')
            expect(goes({ ...lift, start: { ...start, up: cure.up } })).toBe(true);
          if (cure.code === 'take-out')
            expect(goes({ ...lift, load: lift.load.sub(cure.pounds) as typeof lift.load })).toBe(true);
          if (cure.code === 'trips')
            expect(goes({ ...lift, load: lift.load.div(cure.count) as typeof lift.load })).toBe(true);
        }
      }),
      { numRuns: runs(100) },
    );
  });
});
