import { type Length, less } from '../../length/length';
import { copyOf } from '../grooves/copies';
import { givesPiece, type RoughPiece } from './pieces';
import { type Branch, placesOf, type Rect } from './tree';

/** A sheet of the plan that was taken up: what is cut of it so far is ticked by `path`. */
export type PlannedSheet = {
  readonly id: string;
  readonly kerf: Length;
  readonly size: Rect;
  readonly tree: Branch;
};

/** A piece that lies on a sheet, too small for what is wanted now even with no more over than a final cut needs. */
export type Misfit = {
  readonly piece: RoughPiece;
  readonly sheet: string;
  /** Its rectangle along the piece, and across it. Inches. */
  readonly laid: Rect;
  /** Smaller than the finished size: it cannot be used; else it is only not the rough size wanted now. */
  readonly short: boolean;
};

/** Where every piece of a job stands against the sheets of its plan. */
export type Standing = {
  /** Wanted, and on no sheet. */
  readonly missing: readonly RoughPiece[];
  /** On a sheet, wanted by nobody any more: ids. */
  readonly stale: readonly { readonly sheet: string; readonly piece: string }[];
  readonly misfits: readonly Misfit[];
  /** Laid on more than one sheet, as when two phones planned apart. */
  readonly twice: readonly RoughPiece[];
};

/**
 * What of a plan still holds: pieces missing on it, pieces on it nobody wants, pieces whose size has changed.
 *
 * @param pieces wanted; @param sheets of the plan; @param cut pieces that were cut without it
 * @example standingOf({ pieces, sheets: [], cut: () => false }).missing // all of them
 */
export function standingOf(at: {
  readonly pieces: readonly RoughPiece[];
  readonly sheets: readonly PlannedSheet[];
  readonly cut: (piece: string) => boolean;
}): Standing {
  const wanted = new Map(at.pieces.map((piece) => [piece.id, piece]));
  const laid = at.sheets.flatMap((sheet) =>
    placesOf(sheet, sheet.kerf).flatMap(({ branch, size }) =>
      branch.is === 'piece' ? [{ sheet: sheet.id, branch, size }] : [],
    ),
  );
  // a spoiled piece came out of its sheet all the same; its recut is another piece
  const again = new Set(at.pieces.filter(({ copy }) => copy !== copyOf(copy)).map(({ id }) => making(id)));
  const on = new Set(laid.map(({ branch }) => branch.piece));
  const times = (id: string) => laid.filter(({ branch }) => branch.piece === id).length;
  return {
    missing: at.pieces.filter(({ id }) => !on.has(id) && !at.cut(id)),
    twice: laid.length === on.size ? [] : at.pieces.filter(({ id }) => times(id) > 1),
    stale: laid
      .filter(({ branch }) => !wanted.has(branch.piece) && !again.has(making(branch.piece)))
      .map(({ sheet, branch }) => ({ sheet, piece: branch.piece })),
    misfits: laid.flatMap(({ sheet, branch, size }) => {
      const piece = wanted.get(branch.piece);
      const own = branch.turned ? { long: size.wide, wide: size.long } : size;
      return piece && !givesPiece(own, piece)
        ? [{ piece, sheet, laid: own, short: under(own, piece.finished) }]
        : [];
    }),
  };
}

/** The piece whatever its making: `case~left/1` of `case~left/1~2`. */
const making = (id: string): string => {
  const [part = '', copy = ''] = id.split('/');
  return `${part}/${copyOf(copy)}`;
};

const under = (own: Rect, wanted: Rect): boolean =>
  less(own.long, wanted.long) || less(own.wide, wanted.wide);
