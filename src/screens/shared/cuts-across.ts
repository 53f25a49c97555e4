import { forDrawing, isZero, type Length, subtract, zero } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import type { FastenerRow } from '../../trade/fasteners/row';
import { layOut } from '../../trade/grooves/lay-out';
import type { DrawnAlong, DrawnHole } from '../../ui/board-lying';
import type { DrawnGroove } from '../../ui/boards';
import { drawn } from './drawn-board';

/**
 * Rows of holes as numbers for a picture: along the part, and as a share of its width from the edge that lies low.
 *
 * @param row one of them alone
 */
export const holesOf = (part: Part, row?: string): readonly DrawnHole[] => [
  ...boredRows(part, row),
  ...(row === undefined ? fastenerHoles(part) : []),
];

/** Holes and slots in its faces for what holds a butted joint; those in its ends do not show, slanted ones do. */
const fastenerHoles = (part: Part): readonly DrawnHole[] =>
  (part.fasteners ?? [])
    .flatMap((row) => {
      const { in: where, from, slant } = row;
      if (where.at === 'face') return [holesAt(part, row, { off: where.off, from })];
      return slant ? where.named.map((off) => holesAt(part, row, { off, from: slant.meets })) : [];
    })
    .flat();

/** A row across a part, so far off an end. */
function holesAt(
  { width, name, end, length }: Part,
  { id, in: where, thick, long, slant, marks }: FastenerRow,
  { off, from }: { readonly off: string; readonly from: Length },
): readonly DrawnHole[] {
  const share = (x: Length) => forDrawing(x) / forDrawing(width.sum.value);
  const hidden = where.at === 'ends' && (where.off === 'under' || where.off === 'upper');
  return marks.map((mark, k) => ({
    id: `${id}~${off}${k}`,
    at: forDrawing(off === end ? from : subtract(length.sum.value, from)),
    across: share(mark),
    dia: forDrawing(thick),
    ...(long ? { slot: share(long) } : {}),
    // a bit at 15 degrees comes through a face about four times as long as it is wide
    ...(slant ? { slanted: forDrawing(thick) / Math.sin(Math.PI / 12) } : {}),
    behind: hidden || (name.role === 'partition' && where.at === 'face' && where.face === 'B'),
  }));
}

/** Edges that lie low in the drawing. */
const low: readonly string[] = ['front', 'bottom', 'right'];

/** None of a board whose width nobody gave yet. */
const boredRows = ({ bores = [], width, name }: Part, row?: string): readonly DrawnHole[] =>
  bores
    .filter(({ id }) => (row === undefined || id === row) && !isZero(width.sum.value))
    .flatMap((bore) => {
      const share = forDrawing(bore.off) / forDrawing(width.sum.value);
      return bore.holes.map(({ no, at }) => ({
        id: `${bore.id}~${no}`,
        at: forDrawing(at),
        across: low.includes(bore.edge ?? 'front') ? share : 1 - share,
        dia: forDrawing(bore.dia),
        behind: row === undefined && name.role === 'partition' && bore.face === 'B',
      }));
    });

/** Everything cut across a part, as numbers for a picture: grooves, laps, notches, rabbets and grooves at its ends. */
export function cutsAcross(part: Part): readonly DrawnGroove[] {
  const length = forDrawing(part.length.sum.value);
  /** From the end at the block, of what is measured from either. */
  const fromNear = (end: string, near: Length, width: Length): number =>
    end === part.end ? forDrawing(near) : length - forDrawing(near) - forDrawing(width);
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
      near: fromNear(along.named, zero, width),
      width: forDrawing(width),
      done: false,
    }));
  const beside = (part.along ?? [])
    .filter(({ edge }) => edge.at === 'end')
    .map(({ id, edge, near, width }) => ({
      id,
      near: fromNear(edge.named, near, width),
      width: forDrawing(width),
      done: false,
    }));
  return [...grooves, ...cuts, ...ends, ...beside];
}

/**
 * What is cut along the edges of a part, as shares of its width and length: grooves, and rabbets but the one that runs
 * through at the back. Those near the front edge lie low in the drawing, and near the bottom or right one.
 */
export function cutsAlong({ along = [], rabbets, width, length }: Part): readonly DrawnAlong[] {
  const share = (x: Length) => forDrawing(x) / forDrawing(width.sum.value);
  const at = (x: Length) => forDrawing(x) / forDrawing(length.sum.value);
  const others = rabbets
    .filter(({ from, along: side }) => from || side.named !== 'back')
    .map((r) => ({ ...r, edge: r.along, near: zero, outside: false }));
  return [...along, ...others]
    .filter(({ edge }) => edge.at === 'edge')
    .map(({ id, edge, near, width: wide, from, to, outside }) => ({
      id,
      ...(outside ? { behind: true } : {}),
      near: low.includes(edge.named) ? 1 - share(near) - share(wide) : share(near),
      wide: share(wide),
      from: from ? at(from) : 0,
      to: to ? at(to) : 1,
    }));
}

/** How far its mitred ends slope away under the face, as shares of its length: as much as it is thick. */
export function mitresOf({ mitres = [], end, thickness, length }: Part): {
  readonly near: number;
  readonly far: number;
} {
  const slope = thickness ? forDrawing(thickness) / forDrawing(length.sum.value) : 0;
  return {
    near: mitres.includes(end) ? slope : 0,
    far: mitres.some((other) => other !== end) ? slope : 0,
  };
}
