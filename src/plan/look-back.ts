import { withHanging } from '../job/hanging';
import { absolute, atMost, equals, inches, type Length, less, subtract } from '../length/length';
import { isTapeFraction } from '../length/write';
import { machineAt } from '../trade/machines/machines';
import type { Shop } from '../trade/machines/shop';
import type { Operation } from '../trade/setups/operation';
import type { Piece, StackBox } from '../trade/stacks/pieces';
import type { Plan } from './plan';

type SlideField = 'slideLength' | 'slideHeight' | 'slideThickness';

/** A figure of the shop that a job knows otherwise, and whose drawers say so. Inches. */
export type Learned = {
  readonly field: SlideField;
  readonly now: Length | undefined;
  readonly learned: Length;
  readonly from: string;
};

/** Shop figures that the job worked with and the shop does not have, or has otherwise: each may be taken over. */
export function learnedOf({ job }: Pick<Plan, 'job'>, shop: Shop): readonly Learned[] {
  const onSlides = job.banks.filter((bank) => !withHanging(job, bank).hung);
  const found = onSlides.flatMap((bank): readonly Learned[] => {
    const own: Readonly<Record<SlideField, Length | undefined>> = {
      slideLength: bank.slideLong,
      slideHeight: bank.slideHigh,
      slideThickness: bank.clearance,
    };
    return (Object.keys(own) as SlideField[]).flatMap((field): readonly Learned[] => {
      const [learned, now] = [own[field], shop[field]];
      return !learned || (now && equals(learned, now))
        ? []
        : [{ field, now, learned, from: bank.name ?? '' }];
    });
  });
  return found.filter(
    (one, k) => found.findIndex((x) => x.field === one.field && equals(x.learned, one.learned)) === k,
  );
}

/** The shop's bit as a test cut found it, and the cut it was found in. Inches. */
export type BitFound = { readonly now: Length; readonly learned: Length; readonly at: Operation };

/** Farther from the bit, or so near to the depth, it may not be its width. Common practice, no source. Inches. */
const nearBy = inches(1n, 32n);

const isNear = (a: Length, b: Length | undefined): boolean =>
  b !== undefined && atMost(absolute(subtract(a, b)), nearBy);

/**
 * How wide the shop's bit cuts, where test cuts of grooves cut with it in one pass found that, all the same, and the
 * shop has it otherwise. Of walls cut each by itself, of a bit that a board names, and of a router of the shop's own,
 * nothing is learned.
 */
export function bitFound({ job, parts, operations }: Found, { bit }: Shop): BitFound | undefined {
  if (!bit) return undefined;
  const named = new Set(parts.flatMap(({ board }) => (board?.cutter ? [board.id] : [])));
  const found = operations.flatMap((at): readonly BitFound[] => {
    const { setup, groove, which } = at;
    const got = job.recipes[setup.key]?.got;
    const once = groove && !setup.own && !named.has(groove.board) && which?.is === 'groove' && !which.wall;
    const isWidth = got && isNear(got, bit) && !isNear(got, setup.height);
    return once && isWidth && machineAt(setup.machine).cuts === 'bit' ? [{ now: bit, learned: got, at }] : [];
  });
  const [first, ...more] = found;
  if (!first || equals(first.learned, bit)) return undefined;
  return more.every(({ learned }) => equals(learned, first.learned)) ? first : undefined;
}

type Found = Pick<Plan, 'job' | 'parts' | 'operations'>;

/** A piece a recipe is made of: all there must be of it, how many the box has, and a cut it stood for. */
export type Lacked = { readonly piece: Piece; readonly has: number; readonly at: Operation };

/** Pieces in the stacks of recipes that the shop's box has not, or not so many of. */
export function piecesLacked(
  { job, operations }: Found,
  { pieces }: Pick<StackBox, 'pieces'>,
): readonly Lacked[] {
  const cuts = operations.filter(({ what }) => what !== 'test');
  const builds = cuts.filter((x, k) => cuts.findIndex((y) => y.setup.build === x.setup.build) === k);
  const used = builds.flatMap((at) => {
    const stack = job.recipes[at.setup.build]?.stack ?? [];
    return distinct(stack).map((size) => ({ size, at, count: stack.filter((x) => equals(x, size)).length }));
  });
  return distinct(used.map(({ size }) => size)).flatMap((size): readonly Lacked[] => {
    const [most] = used.filter((x) => equals(x.size, size)).sort((a, b) => b.count - a.count);
    const own = pieces.filter((p) => equals(p.size, size));
    const has = own.reduce((all, { count }) => all + count, 0);
    const kind = own.length > 1 ? undefined : (own[0]?.kind ?? kindBySize(size));
    return most && kind && has < most.count
      ? [{ piece: { size, count: most.count, kind }, has, at: most.at }]
      : [];
  });
}

const distinct = (sizes: readonly Length[]): readonly Length[] =>
  sizes.filter((size, k) => sizes.findIndex((x) => equals(x, size)) === k);

/** Where the box has none of a size: chippers are 1/16 and up, in fractions. Common practice, no source. */
const kindBySize = (size: Length): Piece['kind'] =>
  isTapeFraction(size) && !less(size, inches(1n, 16n)) ? 'chipper' : 'shim';
