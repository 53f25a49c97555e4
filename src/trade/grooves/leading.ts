import { type Length, subtract } from '../../length/length';
import { machineFor } from '../machines/groove-machines';
import { isOtherEndOn } from '../machines/reach';
import type { Board } from './board';

type Hand = 'left' | 'right';

/**
 * Which edge of a case side goes first into the cut, inside face down, reference (bottom) end on the stop.
 *
 * Take the left side as you face the case: front toward you, inside face toward the right. Lay it inside face down
 * with its bottom end to the left, on a stop left of the blade: that is one turn about the front-to-back line, so the
 * front edge still faces you and trails. The right side's inside faces left: it needs the turn the other way round
 * and front and back change places, so its front edge leads. A stop right of the blade swaps both.
 *
 * @param side as you face the case; @param stop which side of the blade the stop stands
 * @example leadingEdge('left', 'left') // 'back'
 */
export function leadingEdge(side: Hand, stop: Hand): 'front' | 'back' {
  return side === stop ? 'back' : 'front';
}

/**
 * Which edge of a side leads with the board as it is set up: the top end on the stop instead of the bottom turns the
 * side half round on the table, and front and back change places.
 *
 * @param board whose `end` is its reference end, and `against` the end on the stop
 * @example leadingEdgeOf({ ...side, end: 'bottom', against: 'other' }, 'left') // 'front'
 */
export function leadingEdgeOf(board: Board, side: Hand): 'front' | 'back' {
  const machine = machineFor(board.machine);
  const turned = isOtherEndOn(machine, board);
  const topOnStop = (board.end === 'top') !== turned;
  // a rip fence stands right of the cutter: common practice, no source
  const edge = leadingEdge(side, machine.holds === 'fence' ? 'right' : board.stopSide);
  if (!topOnStop) return edge;
  return edge === 'front' ? 'back' : 'front';
}

/**
 * A groove stopped short of the front: where the cut begins or ends along the feed. With the front edge leading the
 * work is lowered onto the cutter that far behind it; trailing, the cut ends that far before it. So the stop changes
 * sides between left and right.
 *
 * @param across width of the board, front to back, inches
 * @returns length of the groove from the back edge, inches
 * @example stoppedGroove(inches(35n, 2n), inches(3n, 4n)) // 16 3/4
 */
export function stoppedGroove(across: Length, stopped: Length): Length {
  return subtract(across, stopped);
}
