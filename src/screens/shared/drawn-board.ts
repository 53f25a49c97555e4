import { forDrawing } from '../../length/length';
import type { Face, Groove } from '../../trade/grooves/layout';
import type { DrawnGroove } from '../../ui/boards';

/** Grooves as numbers for a picture: those of the other face dashed. */
export const drawn = (
  grooves: readonly Groove[],
  { done = new Set<string>(), face }: { readonly done?: ReadonlySet<string>; readonly face?: Face } = {},
): readonly DrawnGroove[] =>
  grooves.map((g) => ({
    id: g.id,
    near: forDrawing(g.near),
    width: forDrawing(g.width),
    done: done.has(g.id),
    behind: face !== undefined && g.face !== face,
  }));
