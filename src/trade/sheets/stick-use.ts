import { add, type Length, less, subtract, sum, times, zero } from '../../length/length';
import { runsOf } from './pool';
import type { SheetStock } from './stock';
import { type Branch, placesOf, type Rect } from './tree';

/**
 * How much of a stick its parts use: their lengths and the kerfs between them, one fewer than there are parts. What the
 * last cut takes beyond the last part is not in it.
 *
 * @param parts inches, > 0; none use nothing
 * @param kerf inches, > 0
 * @returns inches: sum of parts + (n - 1) kerf
 * @example stickUse([inches(60n), inches(35n)], inches(1n, 8n)) // 95 1/8; worked by hand in Example 4 of sheets
 */
export const stickUse = (parts: readonly Length[], kerf: Length): Length =>
  parts.length === 0 ? zero : add(sum(parts), times(kerf, BigInt(parts.length - 1)));

/** So much of a stick is used, of what is usable: between its trims and its bad places. Inches. */
export type StickUse = { readonly used: Length; readonly usable: Length };

/** A stick as it is laid out. */
export type LaidStick = {
  readonly size: Rect;
  readonly tree: Branch;
  readonly kerf: Length;
  readonly stock: SheetStock;
  /** A piece left over has no trims and no bad places. */
  readonly offcut: boolean;
};

/**
 * How much of a stick is used as laid out, each good run of it by itself.
 *
 * @param stick its size, cuts, kerf and stock, inches
 * @returns inches; nothing where parts lie side by side: then no sum of lengths says it
 * @example useOf(stick)?.used // 95 1/8
 */
export function useOf({ size, tree, kerf, stock, offcut }: LaidStick): StickUse | undefined {
  const pieces = placesOf({ size, tree }, kerf)
    .filter(({ branch }) => branch.is === 'piece')
    .map((p) => ({ from: p.from.long, long: p.size.long }))
    .sort((a, b) => (less(a.from, b.from) ? -1 : 1));
  const beside = pieces.some(({ from }, k) => {
    const before = pieces[k - 1];
    return before !== undefined && less(from, add(before.from, before.long));
  });
  if (beside) return undefined;
  const runs = runsOf(
    offcut ? { ...stock, ...size, trim: zero, bad: [] } : { ...stock, long: size.long },
    kerf,
  );
  const inRun = (run: (typeof runs)[number]) =>
    pieces.filter(({ from }) => !less(from, run.from) && less(from, run.to)).map(({ long }) => long);
  return {
    used: sum(runs.map((run) => stickUse(inRun(run), kerf))),
    usable: sum(runs.map(({ from, to }) => subtract(to, from))),
  };
}
