import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, less } from '../../../src/length/length';
import { type ScrewPlan, screwFor } from '../../../src/trade/install/screw';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const shelf = ['3/4', '1', '1 1/4', '1 1/2', '2', '2 1/2', '3'].map(l);
const plan = (more: Partial<ScrewPlan>): ScrewPlan => ({
  through: l('23/32'),
  into: l('1 1/2'),
  sunk: l('1/16'),
  leastBite: l('3/4'),
  margin: l('1/8'),
  lengths: shelf,
  ...more,
});

describe('screwFor', () => {
  test('EX 10b: through 23/32 into 1 1/2, sunk 1/16: between 1 13/32 and 2 1/32, take 2, bite 1 11/32', () => {
    const found = screwFor(plan({}));
    expect([w(found.least), w(found.most), w(found.pick), w(found.bite)]).toEqual([
      '1 13/32',
      '2 1/32',
      '2',
      '1 11/32',
    ]);
  });

  test('EX 10b: a washer of 1/16 over a 7/32 back into 23/32: 3/4; countersunk instead it reaches 1/8 deeper', () => {
    const thin = plan({ through: l('7/32'), into: l('23/32'), leastBite: l('3/8'), sunk: l('-1/16') });
    expect(w(screwFor(thin).pick)).toBe('3/4');
    const sunk = screwFor({ ...thin, sunk: l('1/16') });
    expect(w(screwFor(thin).bite?.sub(sunk.bite ?? 0) as never)).toBe('-1/8');
  });

  test('H.9: box front 5/8 into a front of 23/32, flush: 1 to 1 7/32, take 1', () => {
    const found = screwFor(plan({ through: l('5/8'), into: l('23/32'), sunk: l('0'), leastBite: l('3/8') }));
    expect([w(found.least), w(found.most), w(found.pick)]).toEqual(['1', '1 7/32', '1']);
  });

  test('into a wall the shortest that holds; none on the shelf says which limit fails', () => {
    expect(w(screwFor(plan({ pick: 'shortest' })).pick)).toBe('1 1/2');
    expect(screwFor(plan({ lengths: [l('1')] })).fails).toBe('too-short');
    expect(screwFor(plan({ lengths: [l('3')] })).fails).toBe('too-long');
    expect(screwFor(plan({ lengths: [l('1'), l('3')] })).fails).toBe('none-between');
    expect(screwFor(plan({ into: l('3/4') })).fails).toBe('no-room');
  });

  test('a chosen screw bites enough and never comes nearer than the margin', () => {
    const x = fc.bigInt({ min: 1n, max: 160n }).map((n) => inches(n, 64n));
    fc.assert(
      fc.property(x, x, x, (through, into, leastBite) => {
        const at = plan({ through, into, leastBite });
        const { pick, bite } = screwFor(at);
        if (!pick || !bite) return;
        expect(less(bite, leastBite)).toBe(false);
        expect(less(into.sub(at.margin) as typeof into, bite)).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });
});
