import fc from 'fast-check';
import { expect, test } from 'vitest';
import { absolute, add, inches, type Length, less, subtract } from '../../../src/length/length';
import { tapes } from '../../../src/length/tape';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { lengthMark } from '../../../src/trade/grooves/marks';
import { spoilsFit } from '../../../src/trade/grooves/second-mark';
import { type Setting, settingsFor } from '../../../src/trade/grooves/settings';
import { runs } from '../../runs';
import { board, l, run } from './sample';

const places = fc.tuple(fc.integer({ min: 8, max: 40 }), fc.bigInt({ min: 0n, max: 126n }));
const wides = fc.integer({ min: 560, max: 990 }).map((k) => inches(BigInt(k), 1000n));

const cases = fc.record({
  near: places.map(([whole, k]) => add(inches(BigInt(whole)), inches(k, 127n))),
  width: wides,
  tape: fc.constantFrom(...tapes),
  machine: fc.constantFrom('stop', 'fence', 'sliding', 'index' as const),
  against: fc.constantFrom('reference', 'other' as const),
  grows: fc.constantFrom('toward', 'away' as const),
});

const cutter = inches(1n, 2n);
const single = inches(1n, 8n);

type At = { readonly long: Length; readonly grows: 'toward' | 'away' };

/** Near teeth of a pass whose machine stands at its bare figure, by what each machine is. */
function teethAt({ measures, figure: { value } }: Setting, { long, grows }: At): Length {
  switch (measures) {
    case 'stop-to-near-teeth':
    case 'fence-mark':
      return value;
    case 'other-stop-to-teeth':
      return subtract(subtract(long, value), cutter);
    case 'fence-scale':
      return grows === 'toward' ? subtract(value, subtract(cutter, single)) : value;
    default:
      throw new Error(`not cut here: ${measures}`);
  }
}

test('cut at both bare marks a groove comes out by as much too wide as is said, with the spacer as wide as wanted', () => {
  let spoiled = 0;
  fc.assert(
    fc.property(cases, ({ near, width, tape, ...own }) => {
      const runs = [run({ spacing: 'given', at: [near], width })];
      const b = board({ length: l('64 1/4'), runs, cutter, ...own });
      const { settings } = settingsFor(layOut(b), { board: b, shop: { single }, tape });
      const wall = (which: Setting['wall']) => {
        const found = settings.find((s) => s.wall === which);
        if (!found) throw new Error(`no ${which} wall`);
        return found;
      };
      const at = { long: lengthMark(b, tape).value, grows: own.grows };
      const first = teethAt(wall('near'), at);
      const { second } = wall('far');
      if (!second) throw new Error('no second mark');
      const cut = (far: Length) => subtract(add(far, cutter), first);
      const bare = subtract(cut(teethAt(wall('far'), at)), width);
      expect(bare.toFraction()).toBe(second.off.toFraction());
      expect(cut(add(first, second.spacer)).toFraction()).toBe(width.toFraction());
      expect(spoilsFit(second)).toBe(less(inches(3n, 1000n), absolute(bare)));
      if (spoilsFit(second)) spoiled += 1;
    }),
    { numRuns: runs(300) },
  );
  expect(spoiled).toBeGreaterThan(50);
});
