import { describe, expect, test } from 'vitest';
import { type Case, type Inside, newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { pinWarnings } from '../../../src/trade/shelves/pin-problems';
import { sameRows } from '../../../src/trade/shelves/same-rows';
import { l } from '../../length/write-figures';

const sheet = { id: 'a', name: 'A', thickness: l('23/32'), measured: true };
const pins = (own: Partial<Inside> = {}): Inside => ({
  id: 's',
  kind: 'loose',
  bay: 1,
  heldBy: 'pins',
  first: l('4'),
  pitch: l('2'),
  depth: l('1/4'),
  ...own,
});
const strips = (own: Partial<Inside> = {}): Inside => ({
  ...pins(),
  heldBy: 'strips',
  width: l('5/8'),
  stripThick: l('3/16'),
  depth: l('3/16'),
  ...own,
});
const made = (...inside: readonly Inside[]) => {
  const c: Case = {
    ...newCase('c'),
    hold: 'openings',
    opening: l('20'),
    clear: l('40'),
    depth: l('18'),
    partitions: 1,
    stocks: { side: 'a' },
    inside,
  };
  const found = partsOf(c, { stuff: [sheet], tape: '1/32' });
  if (!found.ok) throw new Error(found.error.map((e) => e.code).join());
  return found.value;
};
/** Rows of holes and grooves of the left side. */
const cutIn = (...inside: readonly Inside[]) => {
  const side = made(...inside).parts.find(({ id }) => id === 'c~left');
  return [...(side?.bores ?? []), ...(side?.along ?? [])].map(({ id }) => id);
};
const second = { id: 't' };
const warned = (...inside: readonly Inside[]) =>
  pinWarnings(made(...inside).sizes).map((x) =>
    x.code === 'sets-meet' ? `${x.in} ${x.with} ${x.by.toFraction()}` : x.code,
  );

describe('two sets of loose shelves in a bay', () => {
  test('with the same figures share their holes, or their strips, and those are cut once', () => {
    expect(cutIn(pins(), pins(second))).toEqual(['s~front', 's~rear']);
    expect(cutIn(strips(), strips(second))).toEqual(['s~front', 's~rear']);
    expect(warned(pins(), pins({ ...second, count: 4, play: l('1/16') }))).toEqual([]);
  });

  test('of another bay, or with one figure another, have their own', () => {
    const { sizes } = made(pins(), pins({ ...second, bay: 2 }));
    expect(sizes.case.inside.map((i) => sameRows(sizes, i)?.id)).toEqual([undefined, undefined]);
    expect(cutIn(pins(), pins({ ...second, front: l('4'), behind: l('4') }))).toHaveLength(4);
  });

  test('that run into each other are told with how far aside clears them', () => {
    // holes of 1/4 an eighth of an inch aside: 1/4 − 1/8
    expect(warned(pins(), pins({ ...second, front: l('2 1/8'), behind: l('4') }))).toEqual(['t s 1/8']);
    // half a pitch up they stand clear: 1 between the middles
    expect(warned(pins(), pins({ ...second, first: l('5') }))).toEqual([]);
    // a groove from 2 to 2 21/32, holes from 2 3/8: 2 21/32 − 2 3/8
    expect(warned(strips(), pins({ ...second, front: l('2 1/2'), behind: l('5') }))).toEqual(['t s 9/32']);
  });

  test('none where no holes are laid out', () => {
    const { heldBy: _, ...free } = pins(second);
    const { sizes } = made(pins(), free);
    expect(sameRows(sizes, free)).toBeUndefined();
  });
});
