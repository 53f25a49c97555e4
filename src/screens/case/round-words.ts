import { assertNever } from '../../length/result';
import type { CaseField } from '../../trade/carcass/problems';
import type { RoundProblem, RoundWarning } from '../../trade/carcass/round-problems';
import { exactly as w } from '../shared/exact-words';

/** What keeps what goes round a case from being cut, by how much, and what would fit. */
export function roundProblemText(problem: RoundProblem): string {
  switch (problem.code) {
    case 'back-too-thick':
      return `The back is ${w(problem.by)} too thick for a groove ${w(problem.groove)} wide.`;
    case 'no-depth':
      return `The groove for the back, and what is left behind it, take the whole depth and ${w(problem.by)} more.`;
    case 'cleats-behind':
      return `Cleats lie behind a back in a groove: what is left there is ${w(problem.by)} short. At least ${w(problem.least)}.`;
    case 'board-proud':
      return `The toe board stands ${w(problem.by)} before the sides: there is no notch for it. A recess of more than ${w(problem.least)}.`;
    case 'no-foot':
      return `The notches for the toe board take the whole depth of the sides and ${w(problem.by)} more. Less of a recess.`;
    case 'frame-shut':
      return `The rails of the face frame meet, ${w(problem.by)} over. Narrower ones, or a higher case.`;
    case 'rail-over-top':
      return `The top rail ends ${w(problem.by)} over the top of the case: the frame stands open there. At least ${w(problem.least)} wide.`;
    case 'no-lower-rail':
      return `Nothing is left of the bottom rail: it ends ${w(problem.by)} over its upper edge. Its lower edge under ${w(problem.under)} off the floor.`;
    case 'rail-under-stiles':
      return `The bottom rail ends ${w(problem.by)} lower than the stiles. At least ${w(problem.least)} off the floor.`;
    case 'stiles-and-plinth':
      return 'Stiles to the floor hang past a case on a plinth. A frame as high as the case, or a toe board in place of the plinth.';
    case 'nailers-full':
      return `The nailers together are ${w(problem.by)} over the clear height. Fewer, or narrower ones.`;
    case 'nailers-deep':
      return `The nailers take the whole depth and ${w(problem.by)} more. Thinner ones, or a deeper case.`;
    case 'nailers-no-edge':
      return `Nailers before a back in a groove lie at no edge to be let in from: 0 deep, or ${w(problem.least)} left behind the back, ${w(problem.by)} more than there is.`;
    case 'nailers-and-cleats':
      return 'Cleats and nailers take the same place. Remove one or the other.';
    case 'plinth-no-length':
      return `The plinth is in at its ends by ${w(problem.by)} more than the case is wide.`;
    case 'plinth-rails-meet':
      return `The rails of the plinth meet, ${w(problem.by)} over. Less of a recess in front or behind.`;
    case 'plinth-full':
      return `The cross members of the plinth overlap by ${w(problem.by)} together. Fewer of them.`;
    case 'plinth-crosses':
      return `A plinth has ${problem.least} cross members at least: its ends.`;
    default:
      return assertNever(problem);
  }
}

/** The blank that makes it. */
export function roundField(problem: RoundProblem | RoundWarning): CaseField {
  if (problem.code === 'frame-shut' || problem.code === 'rail-over-top') return 'topRail';
  switch (problem.code) {
    case 'back-too-thick':
      return 'backGrooveWide';
    case 'no-depth':
    case 'cleats-behind':
    case 'thin-land':
      return 'backLand';

    case 'no-lower-rail':
    case 'rail-under-stiles':
    case 'stiles-and-plinth':
      return 'frameClear';
    case 'low-toe-opening':
      return 'frameToe';
    case 'board-proud':
    case 'no-foot':
    case 'small-foot':
    case 'shallow-toe':
      return 'toeBack';
    case 'nailers-no-edge':
      return 'nailerDeep';
    case 'nailers-full':
    case 'nailers-deep':
    case 'nailers-and-cleats':
    case 'nailer-thin':
    case 'nailer-narrow':
    case 'nailers-inside':
      return 'nailerWide';
    case 'plinth-no-length':
      return 'plinthLeft';
    case 'two-bases':
    case 'plinth-full':
    case 'plinth-crosses':
    case 'plinth-rails-meet':
      return 'plinthFront';
    case 'low-toe':
      return 'feet';
    default:
      return assertNever(problem);
  }
}

/** What is worth a look in it. Limits are common practice. */
export function roundWarningText(warning: RoundWarning): string {
  switch (warning.code) {
    case 'thin-land':
      return `Only ${w(warning.land)} is left behind the groove for the back: it may break out. Keep ${w(warning.least)}.`;
    case 'nailer-thin':
    case 'nailer-narrow':
      return `A nailer is ${w(warning.is)} ${warning.code === 'nailer-thin' ? 'thick' : 'wide'}: keep ${w(warning.least)}.`;
    case 'nailers-inside':
      return `What is left behind the back is ${w(warning.by)} short for the nailers: they lie inside and take ${w(warning.takes)} of its depth.`;
    case 'small-foot':
      return `The notches, ${w(warning.deep)} deep, take more than a third of the sides: they stand on ${w(warning.foot)}.`;
    case 'two-bases':
      return 'A plinth and a lapped frame stand under this case, one on the other. Remove one, or keep both.';
    case 'low-toe-opening':
      return `The opening under the bottom rail is ${w(warning.is)} high: toes find room from ${w(warning.least)} on.`;
    case 'low-toe':
      return `The toe space is ${w(warning.is)} high: toes find room from ${w(warning.least)} on.`;
    case 'shallow-toe':
      return `The toe board is ${w(warning.is)} back: toes find room from ${w(warning.least)} on.`;
    default:
      return assertNever(warning);
  }
}
