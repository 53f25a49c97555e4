import { forDrawing } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import { layOut } from '../../trade/grooves/lay-out';
import type { DrawnHole } from '../../ui/board-lying';
import type { DrawnGroove } from '../../ui/boards';
import { drawn } from './drawn-board';

/**
 * Rows of holes as numbers for a picture: along the part, and as a share of its width from the front edge.
 *
 * @param row one of them alone
 */
export const holesOf = ({ bores = [], width, name }: Part, row?: string): readonly DrawnHole[] =>
  bores
    .filter(({ id }) => row === undefined || id === row)
    .flatMap((bore) =>
      bore.holes.map(({ no, at }) => ({
        id: `${bore.id}~${no}`,
        at: forDrawing(at),
        across: forDrawing(bore.off) / forDrawing(width.sum.value),
        dia: forDrawing(bore.dia),
        behind: row === undefined && name.role === 'partition' && bore.face === 'B',
      })),
    );

/** Everything cut across a part, as numbers for a picture: grooves, laps, notches, rabbets at its ends. */
export function cutsAcross(part: Part): readonly DrawnGroove[] {
  const length = forDrawing(part.length.sum.value);
  const grooves = part.board ? drawn(layOut(part.board).grooves) : [];
  const cuts = [...part.laps, ...part.notches].map(({ id, near, long }) => ({
    id,
    near: forDrawing(near),
    width: forDrawing(long),
    done: false,
  }));
  const ends = part.rabbets
    .filter((r) => r.along.at === 'end')
    .map(({ id, along, width }) => ({
      id,
      near: along.named === 'top' ? length - forDrawing(width) : 0,
      width: forDrawing(width),
      done: false,
    }));
  return [...grooves, ...cuts, ...ends];
}
