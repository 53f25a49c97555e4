import { asInches, asNumber, inches, type Length, type Ratio, ratio } from '../../length/length';
import { roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Ask } from './ask';

/**
 * Weights and what goes by them are kept in pounds and inches. A job in millimetres has them in kilograms, exactly
 * converted; this is the one place that knows of it.
 */
type Measure = 'weight' | 'foot' | 'stiff' | 'turning';

/**
 * One pound in kilograms. Source: "Refinement of Values for the Yard and the Pound", Federal Register, 1 July 1959.
 */
const kilograms = ratio(45_359_237n, 100_000_000n);
/** Newtons a kilogram weighs, by convention. Source: 3rd CGPM, 1901, 9.806 65 m/s². */
const newtons = ratio(980_665n, 100_000n);
const metres = ratio(254n, 10_000n);

const product = (...all: readonly Ratio[]): Ratio => all.reduce((so, x) => so.mul(x) as Ratio);

type Said = {
  readonly unit: Readonly<Record<Units, string>>;
  /** Beside a figure on the keys, where little room is. */
  readonly short: Readonly<Record<Units, string>>;
  readonly metric: Ratio;
  /** What stands in until it is said is an estimate: shown to so much. */
  readonly to: Readonly<Record<Units, Length>>;
};

const hundredths = { in: inches(1n, 100n), mm: inches(1n, 100n) };

const measures: Readonly<Record<Measure, Said>> = {
  weight: {
    unit: { in: 'lb', mm: 'kg' },
    short: { in: 'lb', mm: 'kg' },
    metric: kilograms,
    to: hundredths,
  },
  foot: {
    unit: { in: 'lb a square foot', mm: 'kg a square metre' },
    short: { in: 'lb/ft²', mm: 'kg/m²' },
    metric: kilograms.div(product(ratio(144n), metres, metres)) as Ratio,
    to: hundredths,
  },
  // kept in millions
  stiff: {
    unit: { in: 'million pounds a square inch', mm: 'N/mm²' },
    short: { in: 'million lb/in²', mm: 'N/mm²' },
    metric: product(kilograms, newtons).div(product(metres, metres)) as Ratio,
    to: { in: inches(1n, 100n), mm: inches(10n) },
  },
  turning: {
    unit: { in: 'inch-pounds', mm: 'N·m' },
    short: { in: 'in·lb', mm: 'N·m' },
    metric: product(kilograms, newtons, metres),
    to: hundredths,
  },
};

/** The unit of a measure in the job in hand. @example measureUnit('weight') // 'lb' */
export const measureUnit = (measure: Measure): string => measures[measure].unit[unitInHand()];

/** In the unit in hand. @param x pounds, pounds a square foot, millions of pounds a square inch, inch-pounds */
const inHand = (measure: Measure, x: Ratio): Ratio =>
  unitInHand() === 'mm' ? product(x, measures[measure].metric) : x;

/** In the unit in hand, to the nearest tenth; what is large, as in N/mm², to the nearest ten. */
export function inUnit(measure: Measure, x: Ratio): string {
  const own = inHand(measure, x);
  const large = unitInHand() === 'mm' && measure === 'stiff';
  return `${tenths(large ? roughly(measure, own) : own)} ${measureUnit(measure)}`;
}

/** A number of pounds in the unit in hand. @example weight(ratio(40n)) // '40 lb' */
export const weight = (x: Ratio): string => inUnit('weight', x);

/** A text with its whole pounds in the unit in hand. @example poundsIn('over 50 lb') // 'over 22.7 kg' */
export const poundsIn = (text: string): string =>
  text.replace(/(\d+) lb/g, (_, n: string) => weight(ratio(BigInt(n))));

/** To the nearest whole, without its unit. @param x > 0, as `inHand` has it */
export const wholeOf = (measure: Measure, x: Ratio): string => `${inHand(measure, x).round().n}`;

/** A number to the nearest tenth. */
export function tenths(x: Ratio): string {
  const own = x.mul(10n).round();
  return `${own.s < 0n ? '-' : ''}${own.n / 10n}${own.n % 10n ? `.${own.n % 10n}` : ''}`;
}

type Amount = Extract<Ask, { readonly as: 'amount' }>;

const roughly = (measure: Measure, x: Ratio): Ratio =>
  asNumber(roundTo(asInches(x), measures[measure].to[unitInHand()], 'halfExpand').value);

/** A blank of what is kept in pounds: shown and keyed in the unit in hand, kept exactly. */
export function inMeasure(measure: Measure, ask: Amount): Amount {
  const unit = measures[measure].short[unitInHand()];
  const { now, usual, refuse } = ask;
  const kept = (x: Ratio): Ratio => (unitInHand() === 'mm' ? (x.div(measures[measure].metric) as Ratio) : x);
  return {
    ...ask,
    unit,
    now: now && inHand(measure, now),
    usual: usual && roughly(measure, inHand(measure, usual)),
    save: (x) => ask.save(x && kept(x)),
    ...(refuse ? { refuse: (x) => refuse(kept(x)) } : {}),
  };
}
