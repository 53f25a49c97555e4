import {
  atMost,
  howMany,
  inches,
  isPositive,
  type Length,
  type Ratio,
  ratio,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { isMore, minus, product } from './ratios';
import { cubeRootDown } from './roots';
import { type Shelf, type ShelfError, sagOf } from './sag';

/** Where a shelf stands: how many pounds a square foot it is reckoned with. */
type Use = 'school' | 'hospital' | 'library' | 'other';

/** Source: Architectural Woodwork Standards, first edition, 2009, p. 253. */
const perFoot: Record<Use, bigint> = { school: 50n, hospital: 50n, library: 50n, other: 40n };
/** Never more than so many pounds on one shelf. Source: the same page. */
export const shelfMost = ratio(200n);
/** Sag over span. Source: the same page. */
const standardShare = ratio(1n, 144n);

/** A limit it is past, and by how much: inches of span, pounds, inches of sag. */
type ShelfLack =
  | { readonly code: 'standard'; readonly by: Length }
  | { readonly code: 'cap'; readonly by: Ratio }
  | { readonly code: 'shop'; readonly by: Length };

type EvenShelf = {
  /** What it is loaded with, pounds. */
  readonly load: Ratio;
  /** The greatest span at span / 144, and by the 200 pounds; whole inches, down. */
  readonly span: Length;
  readonly spanByCap: Length;
  readonly sag: Length;
  /** Sag allowed by the standard, span / 144, and the shop's .02 a foot, span / 600. */
  readonly allowed: Length;
  readonly shopAllowed: Length;
  readonly lacks: readonly ShelfLack[];
};

/**
 * A shelf by the Architectural Woodwork Standards: evenly loaded, on two ends, sag not past span / 144, and never more
 * than 200 pounds on it: L³ <= 32 E t³ / (5 w). Beside it the shop's stricter .02 a foot, and which of them fails.
 *
 * Source: Architectural Woodwork Standards, first edition, 2009, pp. 253 and 279; loaded for years, twice as much (Wood
 * Handbook, FPL-GTR-190, 2010, chapter 5). Without edging: the standard has none.
 *
 * @param at inches, pounds a square inch, each > 0
 * @returns inches, pounds
 * @example evenShelf(shelf, 'other') // 38: Example 6 of loads
 */
export function evenShelf(at: Omit<Shelf, 'edging' | 'glued'>, use: Use): Result<EvenShelf, ShelfError> {
  const foot = ratio(perFoot[use]);
  const { span, deep, thick, stiff } = at;
  const inch = inches(1n);
  const load = product(foot, howMany(span, inch), howMany(deep, inch), ratio(1n, 144n));
  if (!isPositive(span)) return err({ code: 'not-positive', what: 'span' });
  if (!isPositive(deep)) return err({ code: 'not-positive', what: 'deep' });
  const found = sagOf({ span, deep, thick, stiff, years: at.years ?? false, load, grain: inch });
  if (!found.ok || !stiff) return found.ok ? err({ code: 'stiff-missing' }) : found;
  const t = howMany(thick, inch);
  const cube = product(
    ratio(32n, 5n),
    stiff,
    t,
    t,
    t,
    foot.inverse() as Ratio,
    at.years ? ratio(1n, 2n) : ratio(1n),
  );
  const most = cubeRootDown(cube, inch);
  const allowed = times(span, standardShare);
  const { sag, allowed: shopAllowed, over } = found.value;
  const heavy = minus(load, shelfMost);
  const byCap = product(shelfMost, ratio(144n), foot.inverse() as Ratio, howMany(inch, deep));
  return ok({
    load,
    span: most,
    spanByCap: wholeDown(byCap),
    sag,
    allowed,
    shopAllowed,
    lacks: [
      ...(atMost(sag, allowed) ? [] : [{ code: 'standard', by: subtract(sag, allowed) } as const]),
      ...(isMore(heavy) ? [{ code: 'cap', by: heavy } as const] : []),
      ...(over ? [{ code: 'shop', by: over } as const] : []),
    ],
  });
}

const wholeDown = (x: Ratio): Length => inches(x.n / x.d);
