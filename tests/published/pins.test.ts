import { describe, expect, test } from 'vitest';
import { fromMillimetres, type Length, subtract, toMillimetres } from '../../src/length/length';
import { type Case, type Inside, newCase } from '../../src/trade/carcass/case';
import { sizesOf } from '../../src/trade/carcass/sizes';
import { boresIn } from '../../src/trade/shelves/bores';
import { l, w } from '../trade/grooves/sample';

const sheet = { id: 'a', name: 'A', thickness: l('3/4'), measured: true };

/** Rows in the left wall of a case with one bay, as it stands where nothing more is said. */
function rowsIn(own: Partial<Inside>, high = '48', deep = '12') {
  const inside: Inside = { id: 's', kind: 'loose', bay: 1, ...own };
  const c: Case = {
    ...newCase('c'),
    hold: 'openings',
    opening: l('30'),
    clear: l(high),
    depth: l(deep),
    stocks: { side: 'a' },
    inside: [inside],
  };
  const found = sizesOf(c, [sheet]);
  if (!found.ok) throw new Error(found.error.map(({ code }) => code).join());
  return boresIn(found.value, 1, { face: 'A', datum: l('0') });
}

const mm = (x: Length) => toMillimetres(x).toFraction();

// Source: Better Homes & Gardens, How to Build an Adjustable-Shelf Bookcase, 26 January 2019
// (bhg.com/home-improvement/remodeling/carpentry/how-to-build-an-adjustable-shelf-bookcase), step 2: seen. "With sides
// on a bench, drill 1/4-inch holes 3/8 inch deep". Where the rows stand it leaves to a drawing: ours are our own.
test('holes of a bookcase with adjustable shelves', () => {
  const rows = rowsIn({ heldBy: 'pins', first: l('6'), pitch: l('1') });
  expect(rows.map(({ dia, deep }) => [w(dia), w(deep)])).toEqual([
    ['1/4', '3/8'],
    ['1/4', '3/8'],
  ]);
});

// Source: 32mm Cabinetmaking (bellinghambaywoodcraft.com/32mm; date not read), what all such systems have in common:
// seen. "System holes are 32mm apart and 5mm in diameter"; "at least two vertical rows (full or partial) of system
// holes that are some multiple of 32mm apart"; "The front system row is 37mm from the front of the panel". The sizes
// of the cases are ours.
describe('holes 32 mm apart', () => {
  test.each([
    ['48', '12'],
    ['61 1/16', '18'],
    ['1560 mm', '476 mm'],
    ['700 mm', '300 mm'],
  ] as const)('in a wall %s high and %s deep', (high, deep) => {
    const [front, rear] = rowsIn({ heldBy: 'lines' }, high, deep);
    if (!front || !rear) throw new Error('no rows');
    expect([mm(front.off), mm(front.dia), mm(rear.dia)]).toEqual(['37', '5', '5']);
    // whole steps
    expect(subtract(rear.off, front.off).div(fromMillimetres(32n)).d).toBe(1n);
    expect(rear.off.compare(front.off)).toBe(1);
    for (const { holes } of [front, rear]) {
      expect(holes.length).toBeGreaterThan(10);
      const steps = holes.slice(1).map(({ at }, k) => mm(subtract(at, holes[k]?.at ?? at)));
      expect(new Set(steps)).toEqual(new Set(['32']));
    }
  });

  // The same, at dalrun.com/32mm (date not read): seen. "When the faces are inset flush to the panel, the front row is
  // 37mm plus face thickness (FT) from the front". The thickness, 19 mm, is ours: 37 + 19
  test('behind an inset front, the front line said, the rear line is whole steps behind it', () => {
    const [front, rear] = rowsIn({ heldBy: 'lines', front: fromMillimetres(56n) }, '1560 mm', '476 mm');
    expect(front && mm(front.off)).toBe('56');
    // 476 − 56 − 30 = 390: 12 steps, 384
    expect(front && rear && mm(subtract(rear.off, front.off))).toBe('384');
  });
});
