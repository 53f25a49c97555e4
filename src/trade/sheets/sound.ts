import { add, equals, type Length, less, longest, subtract, zero } from '../../length/length';
import { leastOver } from './pieces';
import { runsOf, trimOf } from './pool';
import type { SheetStock } from './stock';
import { type Branch, placesOf, type Rect, type Way } from './tree';

/** A rectangle of a sheet, and where its corner nearest the edges measured from lies. Inches. */
export type Spot = { readonly from: Rect; readonly size: Rect };

type Span = { readonly from: Length; readonly to: Length };

type SoundAt = {
  readonly stock: SheetStock;
  /** Size of the whole sheet or stick. */
  readonly whole: Rect;
  readonly kerf: Length;
  /** A piece left over has no edges to trim. */
  readonly offcut: boolean;
};

/**
 * What is sound of a rectangle of a sheet: what lies inside the trims, and on a stick between its bad places; `from` as
 * measured in the rectangle. A trim that came out 1/16 short is still a trim, a bad place is bad to its end.
 *
 * @param spot where the rectangle lies; @param at the sheet it lies on
 * @example soundOf({ from: { long: zero, wide: zero }, size }, at).length // 1
 */
export function soundOf({ from, size }: Spot, at: SoundAt): readonly Spot[] {
  const { stock, whole, kerf, offcut } = at;
  if (offcut) return [{ from: { long: zero, wide: zero }, size }];
  const trim = trimOf(stock, kerf);
  const inside = (x: Length): Span => ({ from: trim, to: subtract(x, trim) });
  const clip = (span: Span, way: 'long' | 'wide', slack: Length) =>
    within(span, { from: from[way], size: size[way], slack, kerf });
  const across =
    stock.kind === 'stick'
      ? clip({ from: zero, to: whole.wide }, 'wide', zero)
      : clip(inside(whole.wide), 'wide', leastOver);
  const along =
    stock.bad.length > 0
      ? runsOf({ ...stock, long: whole.long }, kerf).flatMap((run) => clip(run, 'long', zero))
      : clip(inside(whole.long), 'long', leastOver);
  return along.flatMap((long) =>
    across.map((wide) => ({
      from: { long: long.from, wide: wide.from },
      size: { long: subtract(long.to, long.from), wide: subtract(wide.to, wide.from) },
    })),
  );
}

type Clip = { readonly from: Length; readonly size: Length; readonly slack: Length; readonly kerf: Length };

/** A span as it lies in a rectangle; what must come off at its near side takes a kerf at least. */
function within(span: Span, { from, size, slack, kerf }: Clip): readonly Span[] {
  const off = subtract(span.from, from);
  const over = subtract(size, subtract(span.to, from));
  const begins = less(slack, off) ? longest(off, kerf) : zero;
  const ends = less(slack, over) ? subtract(size, over) : size;
  return less(begins, ends) ? [{ from: begins, to: ends }] : [];
}

/** Whether nothing of a rectangle lies in a trim or on a bad place. @example isSound(spot, at) */
export function isSound(spot: Spot, at: SoundAt): boolean {
  const [one] = soundOf(spot, at);
  return one !== undefined && equals(one.size.long, spot.size.long) && equals(one.size.wide, spot.size.wide);
}

/** A stretch of a rectangle that is kept, what is cut of it, and whether what lies beyond it comes off. */
type Stretch = Span & { readonly tree: Branch; readonly past: boolean };

/**
 * A rectangle of which stretches are kept, in order: what lies between them is cut away.
 *
 * @param begins where the rectangle begins on the measure of the stretches
 * @example freed([{ from, to, tree, past: true }], { way: 'cross', kerf }).is // 'cut'
 */
export function freed(
  [first, ...rest]: readonly Stretch[],
  { way, kerf, begins = zero }: { readonly way: Way; readonly kerf: Length; readonly begins?: Length },
): Branch {
  if (!first) return { is: 'waste' };
  const { from, to, tree, past } = first;
  const good: Branch = past
    ? {
        is: 'cut',
        way,
        at: subtract(to, from),
        near: tree,
        far: freed(rest, { way, kerf, begins: add(to, kerf) }),
      }
    : tree;
  if (!less(begins, from)) return good;
  const at = longest(zero, subtract(subtract(from, begins), kerf));
  return { is: 'cut', way, at, near: { is: 'waste' }, far: good };
}

/**
 * A rectangle of which one part is kept: the edges measured from are cut true first, the other two only where a piece
 * ends on them.
 *
 * @param kept where it lies, and what is cut of it
 * @example trimmedTo(whole, { from, size, tree }, kerf).is
 */
export function trimmedTo(whole: Rect, kept: Spot & { readonly tree: Branch }, kerf: Length): Branch {
  const ends = endsOn(kept, kerf);
  return (['long', 'wide'] as const).reduce<Branch>((tree, side) => {
    const from = kept.from[side];
    const to = add(from, kept.size[side]);
    const past = ends[side] && less(to, whole[side]);
    return freed([{ from, to, tree, past }], { way: side === 'long' ? 'cross' : 'rip', kerf });
  }, kept.tree);
}

/** Whether a piece ends on the far edge of what is kept, each way. */
function endsOn(kept: { readonly size: Rect; readonly tree: Branch }, kerf: Length) {
  const pieces = placesOf(kept, kerf).filter((p) => p.branch.is === 'piece');
  const reaches = (way: 'long' | 'wide') =>
    pieces.some(({ from, size }) => less(subtract(kept.size[way], kerf), add(from[way], size[way])));
  return { long: reaches('long'), wide: reaches('wide') };
}
