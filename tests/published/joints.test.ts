import { describe, expect, test } from 'vitest';
import { add, half, subtract } from '../../src/length/length';
import { flushLaps, lapPair, lappedFrame } from '../../src/trade/joints/laps';
import { rabbetFor } from '../../src/trade/joints/rabbets';
import { l, w } from '../trade/grooves/sample';

const value = <T>(found: { ok: true; value: T } | { ok: false; error: { code: string } }): T => {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

// Source: Hull Maintenance Technician, US Navy training text NAVEDTRA 14119, figure 3-24 and its text
// (enginemechanics.tpub.com/14119/Figure-3-24-Gross-Half-Lap-Joint-71.html; date not read). Seen, in a text of two
// columns whose lines stand mixed: "Lay off one-half the width of a member on either side of the center lines",
// "gauge one-half the thickness of a member", "set the table saw blade above the table a distance equal to one-half
// the thickness of a member". It prints no sizes: those below are ours.
describe('half-laps after the Navy text', () => {
  test.each(['3/4', '23/32', '1 17/32', '18 mm'])(
    '%s set to half its thickness closes without a step',
    (t) => {
      const pair = value(lapPair(l(t), half(l(t))));
      expect([w(pair.step), pair.warn]).toEqual(['0', false]);
      const member = { thickness: l(t), width: l('2 5/8') };
      const laps = value(flushLaps({ under: member, over: member }));
      expect([laps.depthUnder, laps.depthOver].every((d) => d.equals(half(l(t))))).toBe(true);
      expect(w(laps.backStep)).toBe('0');
    },
  );

  test.each(['2 5/8', '3 1/2', '67 mm'])(
    'a cross member %s wide, in the middle, has its shoulders half of that each side',
    (cross) => {
      const long = l('38 3/8');
      const { nears } = value(lappedFrame({ long, deep: l('17 1/2'), cross: l(cross), count: 3 }));
      const near = nears[1] ?? l('0');
      expect(near.equals(subtract(half(long), half(l(cross))))).toBe(true);
      expect(add(near, l(cross)).equals(add(half(long), half(l(cross))))).toBe(true);
    },
  );
});

// Source: Ira S. Griffith, Essentials of Woodworking, Peoria, The Manual Arts Press, copyright 1908 (title page),
// section 103 (bitlit.ru/page/en/ira-samuel-griffith/essentials-of-woodworking/78). Seen: "Line across the face side
// of the drawer front at a distance from the end equal to the thickness of the drawer sides". The sizes are ours.
describe("Griffith's drawer rabbet", () => {
  test.each(['1/2', '15/32', '12 mm'])('a side of %s lies in a rabbet as wide', (side) => {
    const plan = { thickness: l('3/4'), lying: l(side), depth: l('3/8'), stack: l('13/16') };
    expect(value(rabbetFor(plan)).width.equals(l(side))).toBe(true);
  });
});

// Source: Carpenters' Guide, Cases And Cupboards, p. 53
// (chestofbooks.com/home-improvement/woodworking/Carpenters-Guide/ Cases-And-Cupboards.html; author and date not
// read). Seen: 'Make the draw fronts of 13/16" boards, rabbet the end 3/8" deep'. The 7/16 left is worked from the
// two, side and stack are ours.
describe("the drawer front of the Carpenters' Guide", () => {
  test('13/16 with a rabbet 3/8 deep keeps 7/16, more than the third it must', () => {
    const plan = { thickness: l('13/16'), lying: l('1/2'), depth: l('3/8'), stack: l('3/4') };
    const { tongue, warnings } = value(rabbetFor(plan));
    expect([w(tongue), warnings]).toEqual(['7/16', []]);
  });
});
