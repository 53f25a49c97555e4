import { absolute, isPositive, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Case } from '../../trade/carcass/case';
import type { JoinProblem } from '../../trade/carcass/join-problem';
import { pastTop } from '../../trade/carcass/meetings';
import type { CaseProblem, CaseWarning } from '../../trade/carcass/problems';
import { numberOf } from '../../trade/carcass/stands-as';
import type { StopProblem } from '../../trade/carcass/stop-problem';
import type { PinProblem } from '../../trade/shelves/pin-problem';
import { capital } from '../shared/capital';
import { exactly as w } from '../shared/exact-words';
import { joinProblemText, joinWarningText } from './join-words';
import { isOfPins, looseFigures, pinProblemText, pinWarningText } from './loose-words';
import { roundProblemText, roundWarningText } from './round-words';
import { stopProblemText, stopWarningText } from './stop-words';
import { caseFieldNames, stockNames } from './words';

const insideWords = {
  at: 'where it stands',
  first: 'where the first groove goes',
  pitch: 'how far apart the grooves are',
  width: 'how wide the grooves are',
  depth: 'how deep the grooves are',
  count: 'how many',
  endRoom: 'the room at the top',
  slack: 'the slack of the trays',
  wide: 'how wide it is',
} as const;

const kinds = {
  trays: 'trays',
  fixed: 'fixed shelf',
  loose: 'loose shelves',
  rail: 'middle rail',
  stop: 'stop strip',
} as const;

const insideName = (c: Case, id: string): string => {
  const i = c.inside.find((x) => x.id === id);
  if (!i) return 'what stands in the bay';
  const no = numberOf(c, i);
  const bay = c.partitions === 0 ? '' : ` in bay ${i.bay}`;
  return no === undefined ? `the ${kinds[i.kind]}${bay}` : `${kinds[i.kind]} ${no}${bay}`;
};

type OfInside = Extract<CaseProblem, { code: 'missing-inside' | 'negative-inside' }>;

const isLoose = (field: OfInside['field']): field is OfInside['field'] & keyof typeof looseFigures =>
  field in looseFigures;

/** A figure of what stands in a bay, as it is called there. */
function figureOf(c: Case, { field, in: id }: OfInside): string {
  const loose = c.inside.some((i) => i.id === id && i.kind === 'loose');
  if (isLoose(field) && (loose || !(field in insideWords))) return looseFigures[field];
  return insideWords[field as keyof typeof insideWords];
}

/** What keeps the case from being cut, by how much, and what would fit. */
export function caseProblemText(problem: CaseProblem, c: Case): string {
  if ('round' in problem) return roundProblemText(problem);
  if ('joined' in problem) return joinProblemText(problem);
  if ('stop' in problem) return stopProblemText(problem);
  if (isOfPins(problem)) return pinProblemText(problem, (id) => insideName(c, id));
  return ownText(problem, c);
}

type Own = Exclude<CaseProblem, PinProblem | JoinProblem | StopProblem | { readonly round: unknown }>;

function ownText(problem: Own, c: Case): string {
  switch (problem.code) {
    case 'missing':
      return `Say: ${lower(caseFieldNames[problem.field])}.`;
    case 'missing-inside':
      return `Say ${figureOf(c, problem)} for ${insideName(c, problem.in)}.`;
    case 'missing-stock':
      return `Say what ${stockNames[problem.stock]} of, and how thick.`;
    case 'not-positive':
      return `${caseFieldNames[problem.field]} must be more than 0.`;
    case 'negative':
      return `${caseFieldNames[problem.field]} is ${w(problem.by)} below 0. Make it 0 or more.`;
    case 'too-much':
      return `${caseFieldNames[problem.field]} is ${w(problem.by)} too much. At most ${w(problem.most)}.`;
    case 'negative-inside':
      return `${capital(figureOf(c, problem))} is ${w(problem.by)} below 0 for ${insideName(c, problem.in)}. Make it 0 or more.`;
    case 'no-opening':
      return closedText(problem.across, w(problem.by), isPositive(pastTop(c)));
    case 'bays-off':
      return `The bays given are ${w(absolute(problem.by))} ${problem.by.s < 0n ? 'short of' : 'over'} the clear width together. Leave one blank: it takes what is left.`;
    case 'through':
      return `${caseFieldNames[problem.field]}: ${w(problem.depth)} goes through stuff ${w(problem.thickness)} thick. Leave a third of it.`;
    case 'back-too-wide':
      return `A back rabbet ${w(problem.wide)} wide takes the whole depth of ${w(problem.depth)}.`;
    case 'no-bay':
      return `There is no bay ${problem.bay}: the case has ${problem.bays}.`;
    case 'above-the-top':
      return `${capital(insideName(c, problem.in))} runs ${w(problem.by)} past the room there is. At most ${w(problem.most)}.`;
    case 'overlap':
      return `${capital(insideName(c, problem.in))} stands ${w(problem.by)} in ${insideName(c, problem.with)}.${clears(problem)}`;
    case 'frame-closed':
      return `The frame closes bay ${problem.bay} by ${w(problem.by)}. Narrower stiles, or a wider bay.`;
    case 'crosses-overlap':
      return `The cross members overlap by ${w(problem.by)}. ${problem.fit} fit.`;
    case 'rails-meet':
      return `The two rails of the base meet, ${w(problem.by)} over. Narrower ones.`;
    case 'crosses-count':
      return 'A base frame has two cross members at least, in whole numbers.';
    default:
      return assertNever(problem);
  }
}

/** What the grooves of these parts come to. @example onParts(['Left side', 'Right side'], 'It runs off.') */
export const onParts = (parts: readonly string[], text: string): string => `${parts.join(' and ')}: ${text}`;

const closedText = (across: boolean, by: string, past: boolean): string =>
  across
    ? `The sides and partitions alone are ${by} over what there is between. Go wider by more than that.`
    : `Feet, bottom${past ? ', top and what the sides run past it' : ' and top'} alone are ${by} over the height. Go higher by more than that.`;

/** Where its lower face clears the other. */
function clears({ under, over }: Extract<CaseProblem, { code: 'overlap' }>): string {
  if (under && over) return ` It clears it at ${w(under)} or lower, or at ${w(over)} or higher.`;
  if (under) return ` It clears it at ${w(under)} or lower.`;
  return over ? ` It clears it at ${w(over)} or higher.` : '';
}

/** What is worth a look. Limits are common practice. */
export function caseWarningText(warning: CaseWarning, c: Case): string {
  if ('round' in warning) return roundWarningText(warning);
  if ('joined' in warning) return joinWarningText(warning);
  if ('stop' in warning) return stopWarningText(warning);
  switch (warning.code) {
    case 'deep':
      return `${caseFieldNames[warning.field]}: ${w(warning.depth)} is more than half of ${w(warning.thickness)}.`;
    case 'trays-locked':
      return warning.comesOff
        ? `The ${warning.stile} stile stands over the trays of bay ${warning.bay}: it is held by screws and comes off for them.`
        : `Trays in bay ${warning.bay} are locked in by the ${warning.stile} stile: it must come off, held by screws, or be no wider than ${w(warning.widest)}${warning.free ? `, ${w(warning.free)} if it is set off centre` : ''} (it is ${w(warning.wide)}).`;
    case 'trays-wider':
      return `A tray ${w(warning.tray)} wide does not pass the frame opening of ${w(warning.opening)} in bay ${warning.bay}.`;
    case 'sill':
      return `The bottom rail stands ${w(warning.sill)} over the case bottom: drawer heights start there.`;
    case 'top-in-opening':
      return `The top of the case hangs ${w(warning.by)} into the frame opening: boxes of drawers pass under it. A top rail ${w(warning.least)} wide covers it.`;
    case 'packing':
      return `Slides or runners in bay ${warning.bay} want packing behind the frame: ${packed(warning.left)} at the left, ${packed(warning.right)} at the right.`;
    case 'cleat-proud': {
      const sunk = warning.by.s < 0n;
      const how = `${sunk ? 'lies sunk' : 'stands proud'} by ${w(absolute(warning.by))}`;
      return `The cleat ${how} in the ${warning.where === 'side' ? 'sides' : 'partitions'}: rabbet, notch and cleat are one figure.`;
    }
    case 'notch-deep':
      return `Notches ${w(warning.deep)} deep take more than half of the partition (${w(warning.half)}).`;
    case 'small-bearing':
      return `Pushed to one side ${insideName(c, warning.in)} bear only ${w(warning.bearing)}: keep ${w(warning.least)}.`;
    case 'holes-left-out':
    case 'strips-crossed':
    case 'edge-thin':
    case 'sets-meet':
    case 'no-strip':
    case 'strips-short':
    case 'hole-web':
    case 'not-32':
      return pinWarningText(warning);
    case 'two-thicknesses':
      return 'Sides and partitions are of two thicknesses: each is taken at its own.';
    default:
      return assertNever(warning);
  }
}

const packed = (x: Length): string => (x.s > 0n && x.n > 0n ? w(x) : 'none');
const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
