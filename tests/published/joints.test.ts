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
// (enginemechanics.tpub.com/14119/Figure-3-24-Gross-Half-Lap-Joint-71.html; the page carries no date). Noted from it, not
// word for word: blade or gauge at half the thickness; shoulder lines of a cross half-lap half a member's width each side
// of the centre. It prints no sizes: those below are ours.
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

// Source: Ira S. Griffith, Essentials of Woodworking, section 103 (bitlit.ru/page/en/ira-samuel-griffith/
// essentials-of-woodworking/78; no date on the page), noted from it: the rabbet is as wide as the side is thick. The
// sizes are ours.
describe("Griffith's drawer rabbet", () => {
  test.each(['1/2', '15/32', '12 mm'])('a side of %s lies in a rabbet as wide', (side) => {
    const plan = { thickness: l('3/4'), lying: l(side), depth: l('3/8'), stack: l('13/16') };
    expect(value(rabbetFor(plan)).width.equals(l(side))).toBe(true);
  });
});

// Source: Carpenters' Guide, Cases and Cupboards (chestofbooks.com/home-improvement/woodworking/Carpenters-Guide/
// Cases-And-Cupboards.html; no date on the page): front 13/16, rabbet 3/8 deep. The 7/16 left is worked from the two,
// side and stack are ours.
describe("the drawer front of the Carpenters' Guide", () => {
  test('13/16 with a rabbet 3/8 deep keeps 7/16, more than the third it must', () => {
    const plan = { thickness: l('13/16'), lying: l('1/2'), depth: l('3/8'), stack: l('3/4') };
    const { tongue, warnings } = value(rabbetFor(plan));
    expect([w(tongue), warnings]).toEqual(['7/16', []]);
  });
});
