import type { Json } from '../../job/entry';
import { amount } from '../../job/kinds';
import { type Ratio, ratio } from '../../length/length';
import { type Calibration, calibrate, cardDoubt } from '../../trade/paper/screen-rule';

/** How sure a line stands on the edge of a card: a point of the screen either way. */
const doubt = ratio(1n);

/** How the screen looked when it was calibrated: zoomed or scaled since, its points are others. */
type Look = { readonly dpr: number; readonly scale: number };

export const lookNow = (): Look => ({
  dpr: devicePixelRatio,
  scale: visualViewport?.scale ?? 1,
});

/** What is kept on the phone of a screen that was calibrated. */
export const writeRule = (points: Ratio, { dpr, scale }: Look): Json => ({
  points: amount.write(points),
  dpr,
  scale,
});

/**
 * The calibration that was kept, where the screen still looks as it did then.
 *
 * @returns `zoomed` where it does not, nothing where there is none
 */
export function readRule(json: Json | undefined, look: Look): Calibration | 'zoomed' | undefined {
  if (!isKept(json)) return undefined;
  const points = json.points === undefined ? undefined : amount.read(json.points);
  if (!points || points.n === 0n) return undefined;
  if (json.dpr !== look.dpr || json.scale !== look.scale) return 'zoomed';
  return { points, doubt, cardDoubt };
}

const isKept = (json: Json | undefined): json is Readonly<Record<string, Json>> =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

/** A card measured in quarters of a point, along its long edge and then its short one. */
export const calibrated = (long: number, short: number) =>
  calibrate({ points: ratio(BigInt(long), 4n), doubt, cardDoubt }, ratio(BigInt(short), 4n));
