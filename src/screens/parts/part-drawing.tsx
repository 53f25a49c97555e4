import { forDrawing, type Length } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import { BoardLying } from '../../ui/board-lying';
import { cutsAcross, cutsAlong, holesOf, mitresOf } from '../shared/cuts-across';
import * as words from './words';

/** The part lying, its reference end at the left against the blue block, to scale; what is cut in it shown. */
export function PartDrawing({ part }: { readonly part: Part }) {
  const length = forDrawing(part.length.sum.value);
  if (length <= 0) return null;
  const edge = part.rabbets.find((r) => r.along.at === 'edge' && r.along.named === 'back' && !r.from);
  const groove = part.along?.find((a) => a.edge.at === 'edge' && a.edge.named === 'back');
  const share = (x: Length) => forDrawing(x) / forDrawing(part.width.sum.value);
  return (
    <div class="pad-x drawing">
      <BoardLying
        length={length}
        grooves={cutsAcross(part)}
        holes={holesOf(part)}
        edge={edge ? share(edge.width) : 0}
        along={cutsAlong(part)}
        mitres={mitresOf(part)}
        corner={part.corner && { deep: share(part.corner.deep), long: forDrawing(part.corner.high) / length }}
        label={words.drawnLying(part)}
      />
      <p class="note">{words.lies(part, { rabbet: edge?.width, groove })}</p>
    </div>
  );
}
