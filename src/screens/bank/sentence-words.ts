import { equals } from '../../length/length';
import type { Bank } from '../../trade/fronts/bank';
import { isOwnFront } from '../../trade/fronts/corner';
import { revealsOf } from '../../trade/fronts/reveals';
import { wordFor } from '../shared/counted';
import { measureUnit } from '../shared/pounds';
import type { FormPage } from './form-pages';

/** The sentences of the slip of these drawers. What stands in braces is a blank, by the name `askOf` knows it by. */

export const pages: Readonly<Record<FormPage, string>> = {
  fronts: 'Opening and fronts',
  boxes: 'Boxes and slides',
  wood: 'Wood and joints',
};
export const pagesLabel = 'Page';

/** The way on from a page: the next one by its name. */
export const onward: Readonly<Record<FormPage, string>> = {
  fronts: 'Next: boxes and slides',
  boxes: 'Next: wood and joints',
  wood: 'To the fronts',
};

/** What lies folded below a page, at its usual figures until it is opened. */
const more: Readonly<Record<FormPage, string>> = {
  fronts: 'More: which goes first, single heights',
  boxes: 'More: where the slide sits, air over a box',
  wood: 'More: depths, groove, dovetails',
};

/** What lies folded below a page of these drawers. */
export function moreOf(page: FormPage, bank: Bank): string {
  if (page === 'boxes' && bank.hung) return 'More: where the box stands, air over it';
  if (page !== 'wood' || isHalfBlind(bank)) return more[page];
  if (bank.boxJoint === 'butted') return 'More: groove, dowels';
  return bank.boxJoint === 'box-joint' ? 'More: depths, groove, step of the sled' : 'More: depths, groove';
}

export const labels = {
  opening: 'Opening',
  fronts: 'Fronts',
  ends: 'Gaps and order',
  heights: 'Heights',
  wood: 'Wood',
  joint: 'Joints',
  corner: 'Corners of the boxes',
  layout: 'Dovetails, fingers or dowels',
  slides: 'Slides',
  runners: 'Runners',
  seat: 'Slide on the box',
  pulls: 'Screws and pulls',
} as const;

/** Of a case, or measured by itself. */
export const opening = (bank: Bank): string =>
  bank.of === undefined
    ? '{name} in {into} {width} wide, {height} high and {depth} deep.'
    : `{name} in {into}, bay {bay}, on {floor}, {across} ${wordFor(bank.across, 'column', 'columns')} wide.`;

export const fronts = (bank: Bank): string => {
  const by = {
    step: ', each {step} higher than the one above',
    ratio: ', each {ratio} times the one above',
    equal: '',
    weights: '',
  }[bank.share];
  return `{count} ${wordFor(bank.count, 'front', 'fronts')}, {fit}, {share}${by}. ${gaps(bank)}`;
};

/** Gaps at the ends follow the ones between until they are said. */
function gaps(bank: Bank): string {
  const { top, between, bottom, side } = revealsOf(bank);
  if (bank.fit === 'inset')
    return [top, bottom, side].every((gap) => equals(gap, between))
      ? 'Gaps {between} all round.'
      : 'Gaps {between} between them.';
  return `Gaps {between} between, covering {top} at the top, {bottom} at the bottom, {side} at the sides${bank.across > 1 ? ', {gap} over a partition' : ''}.`;
}

/** Gaps at the ends, which front goes on first once the fitting has not `begun`, where a difference goes. */
export function ends(bank: Bank, begun: boolean): string {
  const { fit, of, order } = bank;
  const own = fit === 'inset' ? 'Gaps {top} at the top, {bottom} at the bottom, {side} at each side. ' : '';
  const first = begun ? { down: 'top down', up: 'bottom up' }[order] : '{order}';
  const lower =
    of === undefined ? ' The lower edge of the opening is {sill} above what the sticks stand on.' : '';
  // hung with its box, a front is not fitted
  if (isOwnFront(bank)) return `${own}${lower.trim()}`;
  return `${own}Fit them ${first}; any difference goes to {goes}.${lower}`;
}

export const toggles = {
  contentsFirst: 'Contents first',
  alike: 'All cut alike',
  fromBlank: 'Out of one blank',
} as const;

export const blank = ' Trim {trim} at each end, band {band} on each edge.';

export const fromTop = 'Heights from the top:';
export const shareOf = 'share';
export const letGo = 'Heights are held since they were cut or fitted: let them go';
export const wereLetGo = 'Heights let go';
export const shareOut = 'Share them all out';
export const sharedOut = 'Heights shared out';

/** What boxes run on. */
export function slides({ hung }: Bank): string {
  const rest = '{sidePlay} free at each side and {backRoom} behind. Boxes {boxDeep} deep.';
  if (hung === 'runners') return `Boxes run on {hung}, {runHigh} high, with {kickers}; ${rest}`;
  return hung === 'strips'
    ? `Boxes run on {hung}, {runHigh} high; the grooves {stripUp} up the box, ${rest}`
    : `Boxes run on {hung}. ${onSlides()}`;
}

const onSlides = (): string =>
  `Slides {slideLong} long and {slideHigh} high, needing {clearance} at each side; a pair carries {rating} ${measureUnit('weight')}. Boxes {boxDeep} deep.`;

/** Where a box stands behind its front, and what is free over it. */
export const seat = ({ hung }: Bank): string =>
  hung
    ? `The box starts {boxUp} above the lower edge of its front, with {play} of air over it and {kickRoom} under what lies over it.${hung === 'strips' ? ' Its grooves are {stripPlay} wider than the strips.' : ''}`
    : 'The middle of the slide sits {centre} up the box. The box starts {boxUp} above the lower edge of its front, with {play} of air over it.';

/** Screws, where a front is fixed to its box. */
const held = (bank: Bank): string =>
  isOwnFront(bank)
    ? ''
    : `Each front is held from inside by {frontScrews} ${wordFor(bank.frontScrews, 'screw', 'screws')}. `;

export const pulls = (bank: Bank): string => held(bank) + pullsOf(bank.pulls);

const pullsOf = (count: number): string =>
  `{pulls} ${wordFor(count, 'pull', 'pulls')} a front${count > 0 ? ', screws {centres} apart, {fromTop} down' : ''}${count > 1 ? ', {fromEnd} in from each end' : ''}.`;

const runnersOf = { runners: 'Runners', strips: 'Strips' } as const;

export const wood = (bank: Bank): string =>
  `Fronts of {of front}, {frontIs}. Box sides of {of side}, ${isOwnFront(bank) ? '' : 'box fronts of {of boxFront}, '}backs of {of boxBack}, bottoms of {of boxBottom}, {bottomHow}.${bank.hung ? ` ${runnersOf[bank.hung]} of {of runner}.` : ''}`;

/** How box front and sides are joined, and what that wants first. */
export const corner = ({ boxJoint, ...bank }: Bank): string =>
  `${isOwnFront(bank) ? 'Front' : 'Box front'} and sides are joined by {boxJoint}${cornerOf(boxJoint)}.`;

function cornerOf(joint: Bank['boxJoint']): string {
  if (joint === 'rabbeted') return ', {frontRabbet} deep';
  if (joint === 'butted') return ', the front {frontAt}';
  return joint === 'box-joint' ? ', fingers {finger} wide, {fingers}' : '';
}

const isHalfBlind = ({ boxJoint }: Bank): boolean => boxJoint === undefined;

export function joint(bank: Bank): string {
  const lap = isHalfBlind(bank)
    ? `The ${isOwnFront(bank) ? 'front' : 'box front'} laps {lap} over the side ends. `
    : '';
  const back =
    bank.boxJoint === 'butted' ? '' : 'Backs are let {backDado} into the sides, {behind} from their ends. ';
  return `${lap}${back}The groove for the bottom is {grooveDeep} deep and {grooveUp} up, {grooveFit} wider than the bottom; the bottom is cut {ease} small.`;
}

/** How the joint is laid out; nothing where there is no more to say. */
export function layout(bank: Bank): string {
  if (isHalfBlind(bank)) return tails(bank);
  if (bank.boxJoint === 'butted') return dowels;
  return bank.boxJoint === 'box-joint' ? sled : '';
}

const dowels = 'Dowels {dowel} thick and {dowelLong} long.';
const sled = 'The sled steps {fingerStep} from slot to slot; a finger goes in its slot {fingerPlay} loose.';

const tails = ({ tailsHow, tails: count }: Bank): string =>
  `Tails laid out {tailsHow}, ${
    tailsHow === 'template'
      ? 'pitch {pitch}, pins {pin} at the end line'
      : `half pins {halfPin} and pins {pin} at the end line, ${count === 0 ? 'tails {tails}' : `{tails} ${wordFor(count, 'tail', 'tails')}`}`
  }, sloping one in {slope}.`;
