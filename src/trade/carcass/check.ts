import { add, equals, isZero, type Length, sum, times, zero } from '../../length/length';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import { beyondTerms, overSides, tonguesTerm } from './ends';
import { pastTop, reachOf } from './meetings';
import type { Worked } from './parts';
import { setBy } from './sizes';

/** Where parts are added back: across at the bottom, by the bays, at the top; up a side, up a partition. */
export type Way = 'bottom' | 'bays' | 'top' | 'side' | 'partition';

/** A line that adds parts back to an outside size. */
type CheckLine = {
  readonly way: Way;
  readonly sum: Sum;
  readonly wanted: Length;
  readonly meets: boolean;
};

const line = (way: Way, added: Sum, wanted: Length): CheckLine => ({
  way,
  sum: added,
  wanted,
  meets: equals(added.value, wanted),
});

/**
 * Adds the parts back up, across and up, from the parts' own sizes, one that sets the case from its mark: each line
 * must meet the outside size that follows from the marks exactly.
 *
 * @example checkOf(worked).every((line) => line.meets) // Example 3 of carcass
 */
export function checkOf(worked: Worked): readonly CheckLine[] {
  const { width, height, plinth, case: c } = worked.sizes;
  const size = (role: string, way: 'across' | 'up') => {
    const long = worked.parts.find((p) => p.id === `${c.id}~${role}`)?.length.sum.value;
    const { exact, mark } = setBy(worked.sizes, way);
    return long && equals(long, exact) ? mark : long;
  };
  const top = size('top', 'across');
  const partition = size('partition1', 'up');
  const up = (way: Way, added: Sum) =>
    line(way, sumOf(...added.terms, plus('plinth', plinth)), add(height.value, plinth));
  return [
    line('bottom', acrossBottom(worked, size('bottom', 'across') ?? zero), width.value),
    line('bays', byBays(worked), width.value),
    ...(top ? [line('top', acrossTop(worked, top), width.value)] : []),
    up('side', upSide(worked, size('left', 'up') ?? zero)),
    ...(partition ? [up('partition', upPartition(worked, partition))] : []),
  ];
}

const acrossBottom = ({ sizes }: Worked, bottom: Length): Sum =>
  sumOf(plus('bottom', bottom), ...beyondTerms(sizes, 'bottom'));

function byBays({ sizes: { bays, thick, case: c } }: Worked): Sum {
  const count = c.partitions;
  return sumOf(
    plus('bays', sum(bays.map((b) => b.value))),
    plus({ code: 'partitions', count }, times(thick('partition'), BigInt(count))),
    plus('two-sides', times(thick('side'), 2n)),
  );
}

const acrossTop = ({ sizes }: Worked, top: Length): Sum =>
  sumOf(plus('top', top), ...beyondTerms(sizes, 'top'));

/** With something over it a side is added to that. */
function upSide({ sizes }: Worked, side: Length): Sum {
  const { thick, case: c } = sizes;
  const over = { top: overSides(sizes, 'top'), bottom: overSides(sizes, 'bottom') };
  if (!isZero(over.top) || !isZero(over.bottom))
    return sumOf(plus('side', side), plus('top', over.top), plus('bottom', over.bottom));
  return sumOf(
    plus('floor-to-case', c.feet ?? zero),
    plus('bottom', thick('bottom')),
    plus('clear-height', sizes.clearHeight.value),
    plus('top', c.hasTop ? thick('top') : zero),
    plus('sides-past-top', pastTop(c)),
  );
}

function upPartition({ sizes }: Worked, partition: Length): Sum {
  const { thick, case: c } = sizes;
  const seats = times(reachOf(sizes, 'partition'), c.hasTop ? 2n : 1n);
  return sumOf(
    plus('floor-to-case', c.feet ?? zero),
    plus('bottom', thick('bottom')),
    plus('partition', partition),
    minus(tonguesTerm(c) ?? 'own-dado-depths', seats),
    plus('top', c.hasTop ? thick('top') : zero),
    plus('sides-past-top', pastTop(c)),
  );
}
