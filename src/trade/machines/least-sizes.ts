import { inches, type Length, less, subtract, times } from '../../length/length';
import { isDrilled } from './drilled';
import { isGroove, type Need, type Reach, type Way } from './limits';

/** A piece under what is safe at its machine as it stands, by how much; each code has its remedy. Inches. */
export type TooSmall =
  /** Too short along the fence to be steered by it: from a longer piece, or on the sled. */
  | { readonly code: 'short-along-fence'; readonly by: Length; readonly least: Length }
  /** Hands would come near: push block. */
  | { readonly code: 'push-block'; readonly by: Length; readonly least: Length }
  /** Falls free on the far side, or is cut from wide. */
  | { readonly code: 'narrow-strip'; readonly by: Length; readonly least: Length }
  /** Clamped to the sled, or cut from long stock. */
  | { readonly code: 'short-on-sled'; readonly by: Length; readonly least: Length }
  /** A strip of equal thickness beside it carries the base. */
  | { readonly code: 'under-base'; readonly by: Length; readonly least: Length };

/** Source: table saw manuals, push block under 6 by 12; no crosscut of a piece under 6 long. Inches. */
const leastWide = inches(6n);
const leastLong = inches(6n);
const leastAlong = inches(12n);
/** A narrower strip is not held between blade and fence. Common practice, no source. Inches. */
const leastStrip = inches(3n, 4n);

const under = <C extends TooSmall['code']>(code: C, has: Length | undefined, least: Length) =>
  has && less(has, least) ? [{ code, by: subtract(least, has), least } as const] : [];

/**
 * What is too small to be cut as it lies. These limits are printed in tools' manuals or are common practice; the tool's
 * own manual comes first.
 *
 * @param need of the cut; @param way the tool it is made with; @param shop its figures
 * @example tooSmallFor(strip, way, shop) // an edging 5/8 wide: narrow-strip, by 1/8
 */
export function tooSmallFor(need: Need, { tool }: Pick<Way, 'tool'>, shop: Reach): readonly TooSmall[] {
  if (tool === 'fence' || tool === 'table') return atFence(need);
  if (tool === 'router') {
    const { routerBase } = shop;
    const across = isGroove(need) ? need.across : isDrilled(need) ? undefined : need.width;
    return routerBase ? under('under-base', across, times(routerBase, 2n)) : [];
  }
  if (tool !== 'sled' && tool !== 'sliding') return [];
  return isDrilled(need) ? [] : under('short-on-sled', need.length, leastLong);
}

function atFence(need: Need): readonly TooSmall[] {
  if (isDrilled(need)) return [];
  const [along, wide] = isGroove(need) ? [need.across, need.length] : [need.length, need.width];
  const strip = need.cut === 'rip' ? under('narrow-strip', wide, leastStrip) : [];
  const push = under('push-block', wide, leastWide);
  const short = under('short-along-fence', along, leastAlong);
  return [...short, ...(strip.length > 0 ? strip : push)];
}
