import { isZero, subtract } from '../../length/length';
import { assertNever } from '../../length/result';
import { leastLand } from '../../trade/boxes/box';
import type { BoxError, BoxWarning } from '../../trade/boxes/box-plan';
import { leastLap } from '../../trade/boxes/joints/half-blind';
import { unitInHand } from '../../ui/unit-in-hand';
import { dowelFails, dowelWarning } from '../shared/dowel-words';
import { exactly as w } from '../shared/exact-words';

type BoxField = Extract<BoxError, { readonly code: 'not-positive' }>['field'];

const boxFields: Record<BoxField, string> = {
  opening: 'opening',
  depth: 'depth of the box',
  height: 'height of the box',
  side: 'thickness of the sides',
  front: 'thickness of the front',
  back: 'thickness of the back',
  bottom: 'thickness of the bottom',
  'groove-deep': 'depth of the groove',
  'groove-up': 'groove up from the edge',
  'front-rabbet': 'rabbet in the front',
  clearance: 'room for a slide',
  lap: 'lap',
  'back-dado': 'depth of the dado for the back',
  behind: 'room behind the back',
  'groove-fit': 'groove over its bottom',
  ease: 'ease of the bottom',
};
const mayBeNothing: readonly BoxField[] = ['clearance', 'lap', 'back-dado', 'behind', 'groove-fit', 'ease'];

/** What keeps a box from being made. */
export function boxErrorText(problem: BoxError & { readonly drawer: number }): string {
  switch (problem.code) {
    case 'own-shows':
      return 'That joint would be seen from in front. As the front of its box a front is rabbeted or dovetailed to the sides, or doweled over their ends; or fix it to the box.';
    case 'own-not-flush':
      return `A dovetailed front is as wide as its box, and here the box is ${w(problem.by)} ${problem.wider ? 'narrower' : 'wider'} than the front.${problem.clearance ? ` ${w(problem.clearance)} at each side of the box would fit.` : ''}${problem.wider ? ' A rabbeted or doweled front may stand past its box.' : ''}`;
    case 'own-narrow':
      return `The front is ${w(problem.by)} short of its box at an end: leave ${w(problem.clearance)} at each side of the box.`;
    case 'own-lopsided':
      return `The front stands ${w(problem.by)} further past its box at one end than at the other: dowels are bored alike at both. Rabbet it, or cover as much at both sides.`;
    case 'own-low':
      return `The box of drawer ${problem.drawer} is ${w(problem.by)} higher than its front. At most ${w(problem.most)}.`;
    case 'inside-gone':
      return `Slides and sides take the whole width: ${w(problem.by)} over.`;
    case 'inside-depth-gone':
      return `Front, back and what runs on behind it take the whole depth: ${w(problem.by)} over.`;
    case 'lap-too-deep':
      return `A lap of ${w(problem.lap)} leaves no tail in a front ${w(problem.front)} thick.`;
    case 'rabbet-through':
      return `A rabbet ${w(problem.deep)} deep goes through a front ${w(problem.front)} thick${isZero(problem.over) ? '' : `, ${w(problem.over)} past it`}: make it about half.`;
    case 'finger-not-positive':
      return 'A finger must be more than 0 wide.';
    case 'no-dowels':
      return `Drawer ${problem.drawer}, dowels of the ${problem.at}: ${dowelFails(problem.why)}`;
    case 'too-low-for-fingers':
      return `Drawer ${problem.drawer}: a box ${w(problem.height)} high is ${w(subtract(problem.least, problem.height))} too low for three fingers. At least ${w(problem.least)} high, or narrower fingers.`;
    case 'fingers-too-many':
      return `Drawer ${problem.drawer}: that makes more than ${problem.most} fingers. Make them wider.`;
    case 'back-gone':
      return `Drawer ${problem.drawer}: nothing is left of the back over the bottom, ${w(problem.by)} short.`;
    case 'groove-through':
      return `Cut ${w(problem.deep)} deep, a groove or dado goes through a ${problem.which} ${w(problem.thickness)} thick.`;
    case 'not-positive':
      return `Drawer ${problem.drawer}: the ${boxFields[problem.field]} must be ${mayBeNothing.includes(problem.field) ? '0 or more' : 'more than 0'}.`;
    default:
      return assertNever(problem);
  }
}

/** What is worth a look in a box that can be made. */
export function boxWarningText(warning: BoxWarning): string {
  switch (warning.code) {
    case 'lap-thin':
      return `A lap of ${w(warning.lap)} is thin: leave ${w(leastLap(unitInHand()))}.`;
    case 'groove-deep':
      return `A groove ${w(warning.deep)} deep is past half the side (${w(warning.half)}).`;
    case 'dado-deep':
      return `A dado ${w(warning.deep)} deep for the back is past half the side (${w(warning.half)}).`;
    case 'land-thin':
      return `Behind the back only ${w(warning.land)} of side is left, which breaks off: leave ${w(leastLand(unitInHand()))}.`;
    case 'rabbet-shallow':
      return `A rabbet ${w(warning.deep)} deep is under half of the front: the sides want ${w(warning.limit)} to hold.`;
    case 'rabbet-deep':
      return `A rabbet ${w(warning.deep)} deep is over two thirds of the front (${w(warning.limit)}): what is left of it is weak.`;
    case 'dowel':
      return `Dowels of the ${warning.at}: ${dowelWarning(warning.warning)}`;
    case 'dowel-in-groove':
      return `A dowel of the ${warning.at} runs ${w(warning.by)} into the groove for the bottom: move the groove.`;
    case 'groove-past-rabbet':
      return `The groove for the bottom is ${w(warning.by)} deeper than the rabbet, and shows at the ends of the front.`;
    default:
      return assertNever(warning);
  }
}
