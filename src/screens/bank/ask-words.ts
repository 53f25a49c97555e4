/** Titles and choices of the blanks of these drawers; a choice has its value, its word and what it means. */

export const name = 'Name of these drawers';

export const into = 'What the drawers go into';
export const aCase = 'Case';
export const ownOpening = {
  value: '',
  label: 'a measured opening',
  hint: 'not in a case of this job',
} as const;

export const standOn = 'What the drawers stand on';
export const bottom = (framed: boolean): string => (framed ? 'the bottom rail' : 'the bottom');
/** The floors of a bay are counted where there are several. */
export const floor = (kind: 'rail' | 'fixed', no: number, of: number): string =>
  `${kind === 'rail' ? 'middle rail' : 'fixed shelf'}${of > 1 ? ` ${no}` : ''}`;

/** Choices by the field they fill. */
export const choices = {
  fit: {
    title: 'How the fronts sit',
    choices: [
      { value: 'inset', label: 'inset', hint: 'in the opening, a gap all round' },
      { value: 'overlay', label: 'overlay', hint: 'over the edges of the case' },
    ],
  },
  share: {
    title: 'How the heights are shared',
    choices: [
      { value: 'equal', label: 'all equal' },
      { value: 'step', label: 'by a step', hint: 'each higher than the one above by the same amount' },
      { value: 'ratio', label: 'by a ratio', hint: 'each the same number of times the one above' },
      { value: 'weights', label: 'by shares', hint: 'a share for each front' },
    ],
  },
  order: {
    title: 'Which front goes on first',
    choices: [
      { value: 'down', label: 'top down', hint: 'what is left over ends up at the bottom' },
      { value: 'up', label: 'bottom up', hint: 'each rests on the shims of the one below' },
    ],
  },
  goes: {
    title: 'Where a difference goes',
    choices: [
      { value: 'gaps', label: 'the other gaps', hint: 'shared evenly by the gaps still to go' },
      { value: 'fronts', label: 'the other fronts', hint: 'trimmed, so that the gaps stay as planned' },
      { value: 'last', label: 'the last gap', hint: 'the others stay as planned' },
    ],
  },
  bottomHow: {
    title: 'How the bottom goes in',
    choices: [
      { value: 'captured', label: 'captured', hint: 'in a groove all round, put in at the glue-up' },
      { value: 'slid-in', label: 'slid in', hint: 'under a short back' },
    ],
  },
  boxJoint: {
    title: 'How box front and sides are joined',
    choices: [
      {
        value: 'half-blind',
        label: 'half-blind dovetails',
        hint: 'tails in the sides, not seen from the front',
      },
      { value: 'rabbeted', label: 'a rabbeted front', hint: 'the sides lie in rabbets of the front' },
      { value: 'box-joint', label: 'a box joint', hint: 'square fingers, cut on a sled with a pin' },
      { value: 'butted', label: 'dowels', hint: 'front and back butted to the sides' },
    ],
  },
  frontIs: {
    title: 'What the front of a drawer is',
    choices: [
      { value: 'apart', label: 'fixed to the boxes', hint: 'each front is shimmed and screwed on last' },
      {
        value: 'box',
        label: 'the fronts of the boxes',
        hint: 'one piece: rabbeted, dovetailed or doweled to the sides',
      },
    ],
  },
  hung: {
    title: 'What the boxes run on',
    choices: [
      { value: 'slides', label: 'bought slides', hint: 'a pair for each drawer' },
      {
        value: 'runners',
        label: 'wooden runners',
        hint: 'a strip on each wall under the box, which stands on it',
      },
      { value: 'strips', label: 'strips in their sides', hint: 'a groove in each side rides on a strip' },
    ],
  },
  kickers: {
    title: 'What keeps a box from tipping',
    choices: [
      { value: 'none', label: 'nothing over the boxes', hint: 'its front drops as it comes out' },
      {
        value: 'over',
        label: 'kickers over the boxes',
        hint: 'strips over its sides; the runners above, where near',
      },
    ],
  },
  frontAt: {
    title: 'Where the box front stands',
    choices: [
      { value: 'over', label: 'over the side ends', hint: 'as wide as the box' },
      { value: 'between', label: 'between the sides', hint: 'its ends on their inside faces' },
    ],
  },
  fingers: {
    title: 'Where fingers do not fill the height',
    choices: [
      { value: 'full', label: 'a finger at both edges', hint: 'what is over comes off the top edge' },
      {
        value: 'any',
        label: 'as many as go in',
        hint: 'top edge a finger or a slot; what is over comes off',
      },
      { value: 'equal', label: 'both ends alike', hint: 'nothing comes off; wider or narrower at the edges' },
    ],
  },
  tailsHow: {
    title: 'How the tails are laid out',
    choices: [
      { value: 'free', label: 'freely', hint: 'any number, any pin' },
      { value: 'template', label: 'by a template', hint: 'its pitch decides; heights in whole pitches' },
    ],
  },
} as const;

export const stockOf = (pieces: string): string => `What the ${pieces} are of`;
export const sheet = 'Sheet';
export const measureSheet = 'Measure a sheet';
export const asSides = 'as the sides';

export const frontHigh = (no: number): string => `Height of front ${no}; blank takes an even share`;
export const shared = 'shared';
export const frontShare = (no: number): string => `Share of front ${no} beside the others`;
export const boxHigh = (no: number): string => `Height of the box of drawer ${no}`;
export const atMost = 'at most';

export const workedOut = 'worked out';

export const counts = {
  bay: 'Which bay, counted from the left',
  across: 'Columns side by side',
  count: 'How many fronts',
  tails: 'How many tails; 0 works it out',
  frontScrews: 'Screws that hold each front',
  pulls: 'Pulls on each front',
} as const;

/** What is counted, beside its figure. */
export const counted = {
  bay: 'from the left',
  across: 'columns',
  count: 'fronts',
  tails: 'tails',
  frontScrews: 'screws',
  pulls: 'pulls',
} as const;

export const bays = 'bays';

export const amounts = {
  ratio: 'How many times the one above',
  slope: 'Slope of the tails: one in',
  rating: 'What a pair of slides carries',
} as const;
