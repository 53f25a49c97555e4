import { atMost, forDrawing, type Length } from '../../length/length';
import type { Part } from '../carcass/part';
import { copyOf } from '../grooves/copies';
import type { Operation } from './operation';
import { roughOf } from './part-operations';

/** A piece left over. Inches. */
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
  readonly rough: { readonly length: Length; readonly width: Length };
};

/**
 * What to repeat when a piece is spoiled: its own operations in their order, the setups they want, an offcut that is
 * big enough with its allowance, and the parts it must agree with.
 *
 * @param copy of the part; @param done ticks: only what was already done has a setup to build again
 * @example recutOf(side, '1', { operations, offcuts, done }) // EX 9b: rip, length, dado, trays
 */
export function recutOf(
  part: Part,
  copy: string,
  at: {
    readonly operations: readonly Operation[];
    readonly offcuts: readonly Leftover[];
    readonly done: (op: string) => boolean;
    /** Key of the setup that stands on its machine, or its build. */
    readonly standing?: string | undefined;
  },
): Recut {
  const face = (id: string) => (part.board?.made === 'partition' ? '1' : copyOf(id));
  const operations = at.operations.filter(
    (op) => op.part === part.id && face(op.copy) === copyOf(copy) && at.done(op.id),
  );
  const rough = roughOf(part);
  const fits = (o: Leftover): boolean =>
    o.stock === part.stuff &&
    o.length !== undefined &&
    o.width !== undefined &&
    atMost(rough.length, o.length) &&
    atMost(rough.width, o.width);
  const area = (o: Leftover) => (o.length && o.width ? forDrawing(o.length) * forDrawing(o.width) : 0);
  return {
    operations,
    builds: buildsOf(operations, at.standing),
    offcuts: at.offcuts.filter(fits).sort((a, b) => area(a) - area(b)),
    mates: part.mates,
    rough,
  };
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
