import { forDrawing, type Length } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import { layOut } from '../../trade/grooves/lay-out';
import { BoardLying } from '../../ui/board-lying';
import type { DrawnGroove } from '../../ui/boards';
import { drawn } from '../shared/drawn-board';
import * as words from './words';

/** The part lying, its reference end at the left against the blue block, to scale; what is cut in it shown. */
export function PartDrawing({ part }: { readonly part: Part }) {
  const length = forDrawing(part.length.sum.value);
  if (length <= 0) return null;
  const edge = part.rabbets.find((r) => r.along.at === 'edge' && !r.from);
  const groove = part.along?.find((a) => a.edge.at === 'edge' && a.edge.named === 'back');
  const share = (x: Length) => forDrawing(x) / forDrawing(part.width.sum.value);
  return (
    <div class="pad-x drawing">
      <BoardLying
        length={length}
        grooves={cutsAcross(part)}
        edge={edge ? share(edge.width) : 0}
        groove={groove && { near: share(groove.near), wide: share(groove.width) }}
        label={words.drawnLying(part)}
      />
      <p class="note">{words.lies(part, { rabbet: edge?.width, groove })}</p>
    </div>
  );
}

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
