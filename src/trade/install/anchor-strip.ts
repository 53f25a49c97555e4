import { inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/** What a case is fixed to the wall through, at the least, and how high one stands before another is wanted between. */
type AnchorStrip = { readonly thick: Length; readonly wide: Length; readonly high: Length };

/** Source: Architectural Woodwork Standards, first edition, 1 October 2009, p. 281, 4.4.18. Inches. */
const strip: AnchorStrip = { thick: inches(1n, 2n), wide: inches(5n, 2n), high: inches(60n) };

/**
 * The least strip, in the unit system of a job: nailers of a case and its anchor card go by the same.
 *
 * @example anchorStrip('mm').thick // 12 mm
 */
export const anchorStrip = (units: Units | undefined): AnchorStrip => ({
  thick: figureIn(units, strip.thick),
  wide: figureIn(units, strip.wide),
  high: figureIn(units, strip.high),
});
