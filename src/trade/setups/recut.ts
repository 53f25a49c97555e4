import { asNumber, atMost, compare, type Length, times } from '../../length/length';
import type { Part } from '../carcass/part';
import { copyOf } from '../grooves/copies';
import type { Lies } from '../sheets/pieces';
import { type RoughAt, roughOf } from '../sheets/rough';
import type { Rect } from '../sheets/tree';
import type { Operation } from './operation';

/** A piece left over, its length along the face grain. Inches. */
export type Leftover = {
  readonly id: string;
  readonly stock: string;
  readonly length?: Length | undefined;
  readonly width?: Length | undefined;
};

/** What making a spoiled piece again comes to. */
export type Recut = {
  /** Its own operations again, in order. */
  readonly operations: readonly Operation[];
  /** Builds they want, each once with how many places; the one that stands need not be built again. */
  readonly builds: readonly { readonly op: Operation; readonly places: number; readonly stands: boolean }[];
  /** Leftovers of the same stock that hold the rough size, the smallest first. */
  readonly offcuts: readonly Leftover[];
  /** Parts mirrored by it, or cut with it: to be checked against. */
  readonly mates: readonly string[];
  /** What it is cut out at, as a plan of the sheets has it. */
  readonly rough: Rect;
};

/**
 * What to repeat when a piece is spoiled: its own operations in their order, the setups they want, an offcut that is
 * big enough with its allowance, and the parts it must agree with.
 *
 * @param copy of the part; @param done ticks: only what was already done has a setup to build again
 * @example recutOf(side, '1', { operations, offcuts, done }) // rip, length, dado, trays: Example 3 of setups
 */
export function recutOf(
  part: Part,
  copy: string,
  at: {
    readonly operations: readonly Operation[];
    readonly offcuts: readonly Leftover[];
    readonly done: (op: string) => boolean;
    /** Allowances of the job; what a plan of its sheets reckons with. */
    readonly rough: RoughAt;
    /** How it may lie on an offcut; its length along the grain when not said. */
    readonly lies?: Lies | undefined;
    /** Key of the setup that stands on its machine, or its build. */
    readonly standing?: string | undefined;
  },
): Recut {
  const face = (id: string) => (part.board?.made === 'partition' ? '1' : copyOf(id));
  const operations = at.operations.filter(
    (op) => op.part === part.id && face(op.copy) === copyOf(copy) && at.done(op.id),
  );
  const rough = roughOf(part, at.rough);
  return {
    operations,
    builds: buildsOf(operations, at.standing),
    offcuts: bigEnough(
      at.offcuts.filter((o) => o.stock === part.stuff),
      waysOf(rough, at.lies ?? 'along'),
    ),
    mates: part.mates,
    rough,
  };
}

const waysOf = ({ long, wide }: Rect, lies: Lies): readonly Rect[] => [
  ...(lies === 'across' ? [] : [{ long, wide }]),
  ...(lies === 'along' ? [] : [{ long: wide, wide: long }]),
];

/** Those that hold a rectangle one of the ways it may lie, by area, exact. */
function bigEnough(offcuts: readonly Leftover[], ways: readonly Rect[]): readonly Leftover[] {
  return offcuts
    .flatMap((offcut) => {
      const { length, width } = offcut;
      if (!length || !width) return [];
      const holds = ways.some(({ long, wide }) => atMost(long, length) && atMost(wide, width));
      return holds ? [{ offcut, area: times(length, asNumber(width)) }] : [];
    })
    .sort((a, b) => compare(a.area, b.area))
    .map(({ offcut }) => offcut);
}

/** What is to be set up for them, each once, with how many places it is set to. */
function buildsOf(operations: readonly Operation[], standing: string | undefined): Recut['builds'] {
  const keys = new Map<string, Set<string>>();
  for (const { setup } of operations)
    keys.set(setup.build, (keys.get(setup.build) ?? new Set()).add(setup.key));
  return [...keys].flatMap(([build, own]) => {
    const op = operations.find((x) => x.setup.build === build);
    // after a whole build comes its figure, never another cutter or height
    const stands =
      standing === build ||
      (standing?.startsWith(`${build}~`) === true && !/^[ch]/.test(standing.slice(build.length + 1)));
    return op ? [{ op, places: own.size, stands }] : [];
  });
}
