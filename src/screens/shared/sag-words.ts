import { type Length, type Ratio, ratio, shortest } from '../../length/length';
import { assertNever } from '../../length/result';
import type { EvenLoad, LoadedShelf } from '../../plan/shelf-loads';
import { shelfMost } from '../../trade/loads/even-shelf';
import type { Sag, ShelfError } from '../../trade/loads/sag';
import { unitInHand } from '../../ui/unit-in-hand';
import { closely, exactly as w } from './exact-words';
import { measureUnit, weight, wholeOf } from './pounds';

/** Why a shelf is not reckoned, and what would do. */
export function shelfErrorText(error: ShelfError): string {
  if (error.code === 'stiff-missing')
    return 'Solid wood with its grain across the span is no shelf: turn it, or enter how stiff it is on the page of its sheet.';
  switch (error.what) {
    case 'span':
      return 'The bay has no width left to span.';
    case 'deep':
      return 'The shelf has no depth.';
    case 'thick':
      return 'The thickness of the shelf is not above nothing: measure its sheet.';
    case 'load':
      return 'What stands on it must weigh more than nothing.';
    case 'stiff':
      return 'How stiff its sheet is must be more than nothing.';
    case 'edging':
      return 'The strip on its edge must be thicker and taller than nothing.';
    default:
      return assertNever(error.what);
  }
}

/** The shop's limit: a six-hundredth of the span. */
const share = (): string => (unitInHand() === 'mm' ? '1 mm in 600' : '.02 a foot');

/** How far it sags beside what is allowed; `rough`: its back is glued; `unweighed`: more on it than is counted. */
export const sags = ({ sag, allowed, over, rough }: Sag, unweighed = 0): string => {
  const within = unweighed > 0 ? 'within it as far as things are weighed, and it sags further' : 'within it';
  const by = over ? `${closely(over)} too far` : within;
  return `Sags about ${closely(sag)} in the middle; ${share()} allows ${closely(allowed)}: ${by}.${
    rough ? ' Its back is glued: a rough bound, no more.' : ''
  }`;
};

/** What it could carry and span: never more than a shelf may. */
export const couldBe = (span: Length, { mostLoad, span: most, spanByFoot }: Sag): string => {
  const grows = `the load growing with the span, over ${w(spanByFoot)}`;
  return shelfMost.lt(mostLoad)
    ? `Not over ${weight(shelfMost)}, as on any shelf; with this load it sags just as far as allowed over ${w(most)}; ${grows}.`
    : `Sags just as far as allowed under ${weight(mostLoad)} over ${w(span)}, or with this load over ${w(most)}; ${grows}.`;
};

/** More than a shelf may carry, by how much. */
export const tooHeavy = (load: Ratio, by: Ratio): string =>
  `${weight(load)}, itself among it, is ${weight(by)} over the ${weight(shelfMost)} a shelf may carry.`;

/** The line of the case page for a shelf that would sag too far under what stands on it. */
export const loadedOver = (span: Length, { load }: LoadedShelf, found: Sag, over: Length): string =>
  `Spans ${w(span)}: under about ${weight(load)} it sags ${closely(found.sag)}, ${closely(over)} more than ${share()}. Loads says what helps.`;

/** The same with nothing said to stand on it: an even load by the standard. */
export const evenOver = (span: Length, foot: number, found: Sag, over: Length): string =>
  `Spans ${w(span)}: at ${footOf(foot)} it sags ${closely(found.sag)}, ${closely(over)} more than ${share()}, which it would keep over ${w(found.spanByFoot)}. Loads says what helps.`;

/** So many pounds a square foot, in the unit in hand. @example footOf(40) // '40 pounds a square foot' */
export const footOf = (foot: number): string =>
  `${wholeOf('foot', ratio(BigInt(foot)))} ${unitInHand() === 'mm' ? measureUnit('foot') : 'pounds a square foot'}`;

/** Pounds a square foot of a use, as the sentence says it. */
export const feet = { school: 50, hospital: 50, library: 50, other: 40 } as const;

/** By the standard: the greatest span, and which limit fails. */
export const standardSays = (even: Extract<EvenLoad['by'], { ok: true }>['value'], foot: number): string => {
  const most = `By the Architectural Woodwork Standards, ${footOf(foot)} and span/144, it may span ${w(shortest(even.span, even.spanByCap))}`;
  const past = even.lacks.map((lack) =>
    lack.code === 'standard'
      ? `it sags ${closely(lack.by)} past the standard`
      : lack.code === 'cap'
        ? `its ${weight(even.load)} are ${weight(lack.by)} over the ${weight(shelfMost)} a shelf may have: not over ${w(even.spanByCap)}`
        : `it sags ${closely(lack.by)} past ${share()}`,
  );
  return past.length === 0
    ? `${most}; under that even load it keeps both limits.`
    : `${most}; ${past.join('; ')}.`;
};
