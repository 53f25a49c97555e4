import { equals, type Length, sum, times, zero } from '../../length/length';
import type { Worked } from './parts';
import { minus, plus, type Sum, sumOf } from './sum';

/** A line that adds parts back to an outside size. */
export type CheckLine = {
  readonly words: string;
  readonly sum: Sum;
  readonly wanted: Length;
  readonly meets: boolean;
};

const line = (words: string, added: Sum, wanted: Length): CheckLine => ({
  words,
  sum: added,
  wanted,
  meets: equals(added.value, wanted),
});

/**
 * Adds the parts back up, across and up, from the parts' own sizes: each line must meet its outside size exactly.
 *
 * @example checkOf(worked).every((line) => line.meets) // Example 3 of carcass
 */
export function checkOf(worked: Worked): readonly CheckLine[] {
  const { sizes } = worked;
  const { thick, joints, width, height } = sizes;
  const size = (role: string) =>
    worked.parts.find((p) => p.id === `${sizes.case.id}~${role}`)?.length.sum.value;
  const bottom = size('bottom') ?? zero;
  const top = size('top');
  const partition = size('partition1');
  const side = thick('side');
  const across = sumOf(
    plus('bottom', bottom),
    plus('two sides', times(side, 2n)),
    minus('two dado depths', times(joints.dado, 2n)),
  );
  const bays = sumOf(
    plus('bays', sum(sizes.bays.map((b) => b.value))),
    plus('partitions', times(thick('partition'), BigInt(sizes.case.partitions))),
    plus('two sides', times(side, 2n)),
  );
  return [
    line('Across at the bottom', across, width.value),
    line('Across by the bays', bays, width.value),
    ...(top
      ? [
          line(
            'Across at the top',
            sumOf(
              plus('top', top),
              plus('two sides', times(side, 2n)),
              minus('two rabbet depths', times(joints.topRabbet, 2n)),
            ),
            width.value,
          ),
        ]
      : []),
    line('Up a side', upSide(worked), height.value),
    ...(partition ? [line('Up a partition', upPartition(worked, partition), height.value)] : []),
  ];
}

function upSide({ sizes }: Worked): Sum {
  const { thick, case: c } = sizes;
  return sumOf(
    plus('floor to the case', c.feet ?? zero),
    plus('bottom', thick('bottom')),
    plus('clear height', sizes.clearHeight.value),
    plus('top', c.hasTop ? thick('top') : zero),
  );
}

function upPartition({ sizes }: Worked, partition: Length): Sum {
  const { thick, joints, case: c } = sizes;
  const seats = times(joints.partitionDado, c.hasTop ? 2n : 1n);
  return sumOf(
    plus('floor to the case', c.feet ?? zero),
    plus('bottom', thick('bottom')),
    plus('partition', partition),
    minus('its dado depths', seats),
    plus('top', c.hasTop ? thick('top') : zero),
  );
}
