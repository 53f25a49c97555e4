import { assertNever } from '../../length/result';
import type { Case, Inside, StockRole } from '../../trade/carcass/case';
import type { JoinProblem } from '../../trade/carcass/join-problem';
import { mayRunPast } from '../../trade/carcass/meetings';
import type { CaseField, CaseProblem, CaseWarning } from '../../trade/carcass/problems';
import type { RoundProblem } from '../../trade/carcass/round-problems';
import type { PinProblem } from '../../trade/shelves/pin-problem';
import * as ask from './ask-words';
import { hugsTitles, joinTitles, lowTitles, rightTitles } from './join-words';
import { isOfPins } from './loose-words';
import { howMany } from './option-words';
import { roundField } from './round-words';
import { type Section, sections, stockSections } from './sections';
import { insideTitle, type insideTitles } from './sentence-words';
import { stopField } from './stop-words';
import { caseFieldNames, stockNames } from './words';

/** Where a thing is said: its sentence, and its blanks there by their names. */
export type Place = { readonly at: Section | 'whole'; readonly blanks: readonly string[] };

const whole: Place = { at: 'whole', blanks: [] };

const atFields = (...fields: readonly [CaseField, ...CaseField[]]): Place => ({
  at: sections[fields[0]],
  blanks: fields.map((field) => caseFieldNames[field]),
});

type InsideField =
  | keyof typeof looseBlanks
  | 'at'
  | 'first'
  | 'pitch'
  | 'width'
  | 'depth'
  | 'count'
  | 'endRoom'
  | 'slack'
  | 'wide'
  | 'bay';

/** A blank of what stands in a bay. */
function atInside(c: Case, id: string, field: InsideField): Place {
  const i = c.inside.find((x) => x.id === id);
  return i ? { at: `in ${id}`, blanks: [insideTitle(c, id, titleOf(i, field))] } : whole;
}

/** The blanks of loose shelves that are called otherwise there. */
const looseBlanks = {
  first: 'holeFirst',
  pitch: 'holePitch',
  endRoom: 'holeTop',
  width: 'holeWide',
  depth: 'holeDeep',
  front: 'front',
  behind: 'behind',
  flange: 'flange',
  play: 'play',
  frontPlay: 'frontPlay',
  backPlay: 'backPlay',
  band: 'band',
  stripThick: 'stripThick',
  stripRoom: 'stripRoom',
  stripSold: 'stripSold',
} as const;

/** Of strips these are called otherwise again. */
const stripBlanks = { width: 'stripWide', depth: 'stripDeep', endRoom: 'stripTop' } as const;
const isOfStrips = (field: InsideField): field is keyof typeof stripBlanks => field in stripBlanks;

/** Of a stop strip. */
const stopBlanks = { at: 'stopAt', wide: 'stopWide', front: 'stopBack', play: 'stopPlay' } as const;
const isOfStop = (field: InsideField): field is keyof typeof stopBlanks => field in stopBlanks;

const isLoose = (field: InsideField): field is keyof typeof looseBlanks => field in looseBlanks;

function titleOf({ kind, heldBy }: Inside, field: InsideField): keyof typeof insideTitles {
  if (kind === 'stop' && isOfStop(field)) return stopBlanks[field];
  if (kind === 'loose' && heldBy === 'strips' && isOfStrips(field)) return stripBlanks[field];
  if (kind === 'loose' && isLoose(field))
    return field === 'first' && heldBy === 'lines' ? 'least' : looseBlanks[field];
  switch (field) {
    case 'at':
      return kind === 'rail' ? 'under' : 'shelf';
    case 'wide':
      return 'rail';
    case 'endRoom':
      return 'room';
    case 'width':
    case 'depth':
    case 'first':
    case 'pitch':
    case 'slack':
    case 'count':
    case 'bay':
      return field;
    default:
      return looseBlanks[field];
  }
}

/** Of cross members it is their number that is wrong, of stiles how far down they run. */
function roundPlace(problem: RoundProblem): Place {
  if (problem.code === 'plinth-full' || problem.code === 'plinth-crosses')
    return { at: 'plinth', blanks: [howMany.plinthCrosses] };
  if (problem.code === 'stiles-and-plinth') return { at: 'frame', blanks: [ask.frameHow] };
  return atFields(roundField(problem));
}

/** The blank that makes a problem. */
export function placeOf(problem: CaseProblem, c: Case): Place {
  if ('round' in problem) return roundPlace(problem);
  if ('joined' in problem) return joinPlace(problem);
  if ('stop' in problem) return atInside(c, problem.stop, stopField(problem));
  if (isOfPins(problem)) return pinPlace(problem, c);
  switch (problem.code) {
    case 'missing':
    case 'not-positive':
    case 'negative':
    case 'too-much':
    case 'through':
      return atFields(problem.field);
    case 'missing-inside':
    case 'negative-inside':
      return atInside(c, problem.in, problem.field);
    case 'missing-stock':
      return stockPlace(problem.stock);
    case 'no-opening':
      return closedPlace(problem.across, c);
    case 'bays-off':
      return { at: 'sizes', blanks: c.bays.flatMap((own, k) => (own ? [ask.bayWidth(k + 1)] : [])) };
    case 'back-too-wide':
      return atFields('backWide');
    case 'no-bay':
      return atInside(c, problem.in, 'bay');
    case 'above-the-top':
      return atInside(c, problem.in, 'at');
    case 'overlap': {
      const [own, other] = [atInside(c, problem.in, 'at'), atInside(c, problem.with, 'at')];
      return { at: own.at, blanks: [...own.blanks, ...other.blanks] };
    }
    case 'frame-closed':
      return c.partitions > 0 ? atFields('stile', 'middle') : atFields('stile');
    case 'crosses-overlap':
    case 'crosses-count':
      return { at: 'base', blanks: [howMany.crosses] };
    case 'rails-meet':
      return atFields('crossWide');
    default:
      return assertNever(problem);
  }
}

/** What leaves nothing between. */
function closedPlace(across: boolean, c: Case): Place {
  const outside = c.hold === 'outside';
  if (across) return atFields(outside ? 'width' : 'opening');
  return outside && mayRunPast(c) ? atFields('height', 'sidePast') : atFields(outside ? 'height' : 'clear');
}

/** The blank that makes a joint impossible. */
function joinPlace(problem: JoinProblem): Place {
  switch (problem.code) {
    case 'tongue-thick':
      return atFields('tongue');
    case 'mitre-unlike':
      return { at: 'joints', blanks: [joinTitles[problem.part]] };
    case 'top-low':
      return { at: 'joints', blanks: [rightTitles.top, caseFieldNames.sidePast] };
    case 'no-top-under':
      return atFields('sidePast');
    case 'tongue-low':
      return { at: 'joints', blanks: [hugsTitles.bottom] };
    case 'bottom-low':
      return { at: 'joints', blanks: [...lowTitles[problem.joint], caseFieldNames.feet] };
    default:
      return assertNever(problem);
  }
}

/** The blank that makes rows of holes impossible, or a shelf. */
function pinPlace(problem: PinProblem, c: Case): Place {
  const at = (field: InsideField) => atInside(c, problem.in, field);
  switch (problem.code) {
    case 'no-hole':
      return at('first');
    case 'no-strips':
      return at('endRoom');
    case 'holes-touch':
      return c.inside.some(({ id, heldBy }) => id === problem.in && heldBy === 'lines')
        ? at('width')
        : at('pitch');
    case 'row-off':
      return at(problem.row === 'front' ? 'front' : 'behind');
    case 'rows-cross':
      return { at: at('front').at, blanks: [...at('front').blanks, ...at('behind').blanks] };
    case 'hole-through':
    case 'holes-meet':
      return at('depth');
    case 'no-shelf':
      return at(problem.across ? 'flange' : 'frontPlay');
  }
}

const stockPlace = (stock: StockRole): Place => ({
  at: stockSections[stock],
  blanks: [ask.stockOf(stockNames[stock])],
});

/** The blank that makes a thing worth a look; of some no single one. */
export function placeOfWarning(warning: CaseWarning, c: Case): Place {
  if ('round' in warning) return atFields(roundField(warning));
  if ('stop' in warning) return atInside(c, warning.stop, stopField(warning));
  if ('joined' in warning) return atFields(warning.code === 'tongue-room' ? 'tongueRoom' : 'sidePast');
  switch (warning.code) {
    case 'deep':
      return atFields(warning.field);
    case 'trays-locked':
      return atFields(warning.stile === 'middle' ? 'middle' : 'stile');
    case 'top-in-opening':
      return atFields('topRail');
    case 'cleat-proud':
      return atFields(warning.where === 'side' ? 'cleatRabbetWide' : 'notchDeep');
    case 'notch-deep':
      return atFields('notchDeep');
    case 'small-bearing':
    case 'hole-web':
      return atInside(c, warning.in, 'depth');
    case 'not-32':
      return atInside(c, warning.in, 'pitch');
    case 'strips-short':
      return atInside(c, warning.in, 'stripSold');
    case 'sets-meet':
      return atInside(c, warning.in, 'front');
    case 'edge-thin':
      return { at: `in ${warning.in}`, blanks: [ask.stockOf(stockNames.shelfedge)] };
    case 'holes-left-out':
    case 'strips-crossed':
    case 'no-strip':
      return { at: `in ${warning.in}`, blanks: [] };
    case 'trays-wider':
    case 'sill':
    case 'packing':
    case 'two-thicknesses':
      return whole;
    default:
      return assertNever(warning);
  }
}
