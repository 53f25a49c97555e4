import {
  add,
  asNumber,
  inches,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
  times,
} from '../../length/length';
import { roundTo, toWhole } from '../../length/round';
import { type Hands, type Lift, liftSays } from './lift';
import { isMore, shareOf } from './ratios';

/** What would bring a lift under its limit, each by itself. Inches, pounds. */
export type LiftCure =
  /** Hands no further out than this, at both ends. */
  | { readonly code: 'closer'; readonly out: Length }
  /** The load stood on something, so that the hands start as high as this. */
  | { readonly code: 'start-at'; readonly up: Length }
  /** Faced, not turned to. */
  | { readonly code: 'no-turn' }
  /** So much has to come out of it. */
  | { readonly code: 'take-out'; readonly pounds: Ratio }
  /** In so many trips, where it comes apart that far. */
  | { readonly code: 'trips'; readonly count: bigint }
  | { readonly code: 'hoist' };

const inch = inches(1n);
const least = inches(10n);
const knuckles = inches(30n);

const goes = (lift: Lift): boolean => {
  const says = liftSays(lift);
  return says.ok && says.value.over === undefined;
};

/**
 * What brings a lift under its limit, each way tried by itself with all else as it is; none for a lift that is under
 * it, or that is refused. A hoist always stands last.
 *
 * @param lift inches, degrees, pounds
 * @example liftCures(lift) // Example 4 of loads
 */
export function liftCures(lift: Lift): readonly LiftCure[] {
  const says = liftSays(lift);
  if (!says.ok || !says.value.over) return [];
  const { most, over } = says.value;
  return [
    ...closer(lift),
    ...startAt(lift),
    ...(turned(lift) && goes(faced(lift)) ? [{ code: 'no-turn' } as const] : []),
    ...(isMore(most) ? lighter(lift.load, most, over) : []),
    { code: 'hoist' },
  ];
}

const lighter = (load: Ratio, most: Ratio, over: Ratio): readonly LiftCure[] => [
  { code: 'take-out', pounds: over },
  { code: 'trips', count: toWhole(shareOf(load, most), 'ceil') },
];

const turned = ({ start, end }: Lift): boolean => isMore(start.turn) || isMore(end.turn);
const faced = (lift: Lift): Lift => ({
  ...lift,
  start: { ...lift.start, turn: ratio(0n) },
  end: { ...lift.end, turn: ratio(0n) },
});

/** The greatest whole inch no further out than now; under 10 is no lighter than 10. */
function closer(lift: Lift): readonly LiftCure[] {
  const at = (hands: Hands, out: Length): Hands => ({
    ...hands,
    out: less(out, hands.out) ? out : hands.out,
  });
  for (let out = inches(25n); !less(out, least); out = subtract(out, inch)) {
    const held = { ...lift, start: at(lift.start, out), end: at(lift.end, out) };
    if (goes(held)) return [{ code: 'closer', out }];
  }
  return [];
}

/** The least change of the start, toward 30 in whole inches, that does. */
function startAt(lift: Lift): readonly LiftCure[] {
  const now = lift.start.up;
  if (!less(now, knuckles)) return [];
  const first = roundTo(now, inch, 'ceil').value;
  const steps = Number(toWhole(asNumber(subtract(knuckles, first)), 'floor'));
  const heights = Array.from({ length: steps + 1 }, (_, k) => add(first, times(inch, BigInt(k))));
  const up = heights.find((height) => goes({ ...lift, start: { ...lift.start, up: height } }));
  return up ? [{ code: 'start-at', up }] : [];
}
