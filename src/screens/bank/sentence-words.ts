import type { Bank } from '../../trade/fronts/bank';
import { wordFor } from '../shared/counted';

/** The sentences of the slip of these drawers. What stands in braces is a blank, by the name `askOf` knows it by. */

export const labels = {
  opening: 'Opening',
  fronts: 'Fronts',
  heights: 'Heights',
  boxes: 'Boxes',
  tails: 'Dovetails',
  slides: 'Slides',
  pulls: 'Screws and pulls',
} as const;

/** Of a case, or measured by itself. */
export const opening = (bank: Bank): string =>
  bank.of === undefined
    ? '{name} in {into} {width} wide, {height} high and {depth} deep, its lower edge {sill} over the bottom.'
    : `{name} in {into}, bay {bay}, on {floor}, {across} ${wordFor(bank.across, 'column', 'columns')} wide.`;

/** Which front goes on first is settled once the fitting has `begun`. */
export function fronts(bank: Bank, begun: boolean): string {
  const by = { step: ': {step} each', ratio: ': times {ratio}', equal: '', weights: '' }[bank.share];
  const order = begun ? { down: 'top down', up: 'bottom up' }[bank.order] : '{order}';
  return `{count} ${wordFor(bank.count, 'front', 'fronts')} of {of front}, {fit}, {share}${by}. ${gaps(bank)} They go on ${order}; a difference goes to {goes}.`;
}

const gaps = ({ fit, across }: Bank): string =>
  fit === 'inset'
    ? 'Gaps {between} between, {top} at the top, {bottom} at the bottom, {side} at each side.'
    : `Gaps {between} between, covering {top} at the top, {bottom} at the bottom, {side} at the sides${across > 1 ? ', {gap} over a partition' : ''}.`;

export const toggles = {
  contentsFirst: 'Contents first',
  alike: 'All cut alike',
  fromBlank: 'Out of one blank',
} as const;

export const blank = ' Trim {trim} at each end, band {band} on each edge.';

export const fromTop = 'From the top:';
export const shareOf = 'share';
export const letGo = 'Heights are held since they were cut or fitted: let them go';
export const wereLetGo = 'Heights let go';
export const shareOut = 'Share them all out';
export const sharedOut = 'Heights shared out';

export const boxes =
  'Box sides of {of side}, fronts of {of boxFront}, backs of {of boxBack}, bottoms of {of boxBottom} {bottomHow}. {boxDeep} deep; a lap of {lap} before the side ends; backs let {backDado} into the sides, {behind} from their ends. Groove {grooveDeep} deep, {grooveUp} up, {grooveFit} over its bottom; bottoms {ease} easy.';

export const tails = ({ tailsHow, tails: count }: Bank): string =>
  `Tails laid out {tailsHow}, ${
    tailsHow === 'template'
      ? 'pitch {pitch}, pins {pin} at the end line'
      : `half pins {halfPin} and pins {pin} at the end line, {tails} ${wordFor(count, 'tail', 'tails')}`
  }, sloping one in {slope}.`;

export const slides =
  'Slides {slideLong} long, {slideHigh} high, taking {clearance} at each side; their middle {centre} up the box, the box {boxUp} over the lower edge of its front, {play} air over it. A pair carries {rating} lb.';

export const pulls = ({ frontScrews, pulls: count }: Bank): string =>
  `Each front is held from inside by {frontScrews} ${wordFor(frontScrews, 'screw', 'screws')}. {pulls} ${wordFor(count, 'pull', 'pulls')} a front${count > 0 ? ', screws {centres} apart, {fromTop} down' : ''}${count > 1 ? ', {fromEnd} in from each end' : ''}.`;
