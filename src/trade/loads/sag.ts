import {
  half,
  howMany,
  inches,
  isPositive,
  type Length,
  over,
  type Ratio,
  ratio,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { isMore, product, shareOf } from './ratios';
import { cubeRootDown, squareRootDown } from './roots';

/** A strip stuck on the front edge of a shelf, tops flush. Inches; pounds a square inch. */
export type Edging = { readonly thick: Length; readonly tall: Length; readonly stiff: Ratio };

/** A shelf on two ends that hold it up and do not clamp it. Inches, each > 0. */
export type Shelf = {
  /** Clear between what it rests on. */
  readonly span: Length;
  readonly deep: Length;
  readonly thick: Length;
  /** Modulus of elasticity, pounds a square inch; none said: it is asked. */
  readonly stiff?: Ratio | undefined;
  readonly edging?: Edging;
  /** Its back is glued into the back of the case: then the answer is a rough bound, and says so. */
  readonly glued?: boolean;
  /** Loaded for years: it creeps, and sags twice as far. */
  readonly years?: boolean;
};

export type Loaded = Shelf & {
  /** All of what stands on it, evenly spread, and its own weight; pounds, > 0. */
  readonly load: Ratio;
  /** What a greatest span is rounded down to. Inches, > 0. */
  readonly grain: Length;
};

export type ShelfError =
  | { readonly code: 'not-positive'; readonly what: 'span' | 'deep' | 'thick' | 'load' | 'stiff' | 'edging' }
  | { readonly code: 'stiff-missing' };

export type Sag = {
  /** In the middle. Inches. */
  readonly sag: Length;
  /** .02 for every foot of span. */
  readonly allowed: Length;
  /** By how much it is over; none where it is not. */
  readonly over?: Length;
  /** Pounds that sag it just as far as allowed. */
  readonly mostLoad: Ratio;
  /** The greatest span for the same pounds, and for the same pounds a foot. */
  readonly span: Length;
  readonly spanByFoot: Length;
  /** A bound, not an answer: the back is glued. */
  readonly rough: boolean;
};

/** Sag allowed: .02 in for every foot. Common practice, no source. */
const allowedShare = ratio(1n, 600n);
/** Source: Wood Handbook, FPL-GTR-190, 2010, chapter 5: creep adds about as much again. */
const creep = ratio(2n);

const area = (a: Length, b: Length): Ratio => product(howMany(a, inches(1n)), howMany(b, inches(1n)));
const cubed = (t: Length): Ratio => product(area(t, t), howMany(t, inches(1n)));

/**
 * E·I of a shelf and what is stuck to its edge, tops flush: the strip counts as so much wider shelf as it is stiffer,
 * and both bend about the middle of the whole. Source: any text on the strength of beams, the transformed section.
 *
 * @param shelf inches; @returns pounds × square inches
 */
function rigidity(deep: Length, thick: Length, stiff: Ratio, edging: Edging | undefined): Ratio {
  const twelfth = ratio(1n, 12n);
  const b = howMany(deep, inches(1n));
  const own = product(b, cubed(thick), twelfth);
  if (!edging) return product(stiff, own);
  const wide = product(shareOf(edging.stiff, stiff), howMany(edging.thick, inches(1n)));
  const [a1, a2] = [area(deep, thick), product(wide, howMany(edging.tall, inches(1n)))];
  const [y1, y2] = [half(thick), half(edging.tall)];
  const all = a1.add(a2) as Ratio;
  const middle = over(times(y1, a1).add(times(y2, a2)) as Length, all);
  const [d1, d2] = [subtract(y1, middle), subtract(y2, middle)];
  const strip = product(wide, cubed(edging.tall), twelfth);
  const parts = [own, strip, product(a1, area(d1, d1)), product(a2, area(d2, d2))];
  return product(
    stiff,
    parts.reduce((so, x) => so.add(x) as Ratio),
  );
}

/** What resists, creep taken off. Glued: the front half and its edging carry half the load. */
function stiffened(shelf: Shelf & { readonly stiff: Ratio }): Ratio {
  const { deep, thick, stiff, edging, glued, years } = shelf;
  const held = glued
    ? product(ratio(2n), rigidity(half(deep), thick, stiff, edging))
    : rigidity(deep, thick, stiff, edging);
  return years ? shareOf(held, creep) : held;
}

/**
 * How far a shelf sags under an even load, and what it could carry or span: sag = 5 P L³ / (384 E I). The same pounds
 * over twice the span sag it eight times as far; the same pounds a foot, sixteen times. An estimate.
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 9-2 and table 9-1, W the whole load, without the part shear adds.
 *
 * @param at inches, pounds, pounds a square inch; each > 0
 * @returns inches, exact; spans rounded down
 * @example sagOf(shelf) // 71 thousandths against 62: Example 5 of loads
 */
export function sagOf(at: Loaded): Result<Sag, ShelfError> {
  const { stiff, load, span } = at;
  if (!stiff) return err({ code: 'stiff-missing' });
  const what = blankOf({ ...at, stiff });
  if (what) return err({ code: 'not-positive', what });
  const held = stiffened({ ...at, stiff });
  // E·I ÷ creep × 384/5 is what a load times the cube of its span is divided by
  const k = product(held, ratio(384n, 5n));
  const sag = over(times(inches(1n), product(load, cubed(span))), k);
  const allowed = times(span, allowedShare);
  const past = subtract(sag, allowed);
  const square = product(k, shareOf(allowedShare, load));
  return ok({
    sag,
    allowed,
    ...(isPositive(past) ? { over: past } : {}),
    mostLoad: product(load, howMany(allowed, sag)),
    span: squareRootDown(square, at.grain),
    spanByFoot: cubeRootDown(product(square, howMany(span, inches(1n))), at.grain),
    rough: at.glued ?? false,
  });
}

type Blank = (ShelfError & { readonly code: 'not-positive' })['what'];

function blankOf({
  span,
  deep,
  thick,
  load,
  stiff,
  edging,
}: Loaded & { readonly stiff: Ratio }): Blank | undefined {
  if (!isPositive(span)) return 'span';
  if (!isPositive(deep)) return 'deep';
  if (!isPositive(thick)) return 'thick';
  if (!isMore(load)) return 'load';
  if (!isMore(stiff)) return 'stiff';
  const isEdged = !edging || (isPositive(edging.thick) && isPositive(edging.tall) && isMore(edging.stiff));
  return isEdged ? undefined : 'edging';
}
