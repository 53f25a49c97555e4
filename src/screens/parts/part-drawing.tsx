import { forDrawing, type Length } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import { BoardLying } from '../../ui/board-lying';
import { cutsAcross, holesOf } from '../shared/cuts-across';
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
        holes={holesOf(part)}
        edge={edge ? share(edge.width) : 0}
        along={alongBack(part)}
        corner={part.corner && { deep: share(part.corner.deep), long: forDrawing(part.corner.high) / length }}
        label={words.drawnLying(part)}
      />
      <p class="note">{words.lies(part, { rabbet: edge?.width, groove })}</p>
    </div>
  );
}

/** Grooves along its edges as shares of its width, from the back edge: those near the front lie low in the drawing. */
function alongBack({ along = [], width }: Part) {
  const share = (x: Length) => forDrawing(x) / forDrawing(width.sum.value);
  return along
    .filter(({ edge }) => edge.at === 'edge')
    .map(({ edge, near, width: wide }) => ({
      near: edge.named === 'front' ? 1 - share(near) - share(wide) : share(near),
      wide: share(wide),
    }));
}
