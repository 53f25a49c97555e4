import { type Ratio, ratio } from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/**
 * Moisture that wood comes to in air of 70 °F, in tenths of a percent, at 20, 25 … 95 % relative humidity.
 * Source: Wood Handbook, FPL-GTR-190, 2010, table 4-2, p. 4-4.
 */
const at70 = [45n, 54n, 62n, 69n, 77n, 85n, 92n, 101n, 110n, 120n, 131n, 144n, 160n, 179n, 205n, 239n];
const first = ratio(20n);
const last = ratio(95n);

/** The air is drier or damper than the table: a meter is asked for. `by`: percent beyond it. */
type AirError = { readonly code: 'too-dry' | 'too-damp'; readonly by: Ratio; readonly limit: Ratio };

/**
 * The moisture wood comes to in air of 70 °F, by a straight line between the printed columns. An estimate: a meter
 * goes before it.
 *
 * @param humidity relative, percent, 20 to 95
 * @returns percent
 * @example moistureInAir(ratio(33n)) // 6.62: Example 2 of movement
 */
export function moistureInAir(humidity: Ratio): Result<Ratio, AirError> {
  if (humidity.lt(first)) return err({ code: 'too-dry', by: first.sub(humidity) as Ratio, limit: first });
  if (last.lt(humidity)) return err({ code: 'too-damp', by: humidity.sub(last) as Ratio, limit: last });
  const along = humidity.sub(first).div(5n) as Ratio;
  const k = Number(along.n / along.d);
  const low = at70[k] ?? 0n;
  const high = at70[k + 1] ?? low;
  const share = along.sub(BigInt(k)) as Ratio;
  return ok(
    share
      .mul(high - low)
      .add(low)
      .div(10n) as Ratio,
  );
}
