import { useState } from 'preact/hooks';
import type { Length } from '../../length/length';
import { type Piece, withCount } from '../../trade/stacks/pieces';
import { KeySheet } from '../../ui/key-sheet';
import { sizeWords } from './stack-words';

type ChipsProps = {
  readonly pieces: readonly Piece[];
  readonly onPieces: (pieces: readonly Piece[]) => void;
  /** What can be written down anew, by the word on its chip. */
  readonly add: readonly { readonly label: string; readonly kind: Piece['kind'] }[];
  /** Sizes that stand elsewhere on the screen. */
  readonly not?: (piece: Piece) => boolean;
};

/** The most of one size a list takes. */
const most = 99;

type Open = { readonly kind: Piece['kind'] } | { readonly piece: Piece } | undefined;

/** Pieces with how many of each; tapped, the count changes; none left takes it off the list. */
export function PieceChips({ pieces, onPieces, add, not = () => false }: ChipsProps) {
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  return (
    <>
      <div class="pad-x chips wrap setpieces">
        {pieces
          .filter((piece) => !not(piece))
          .map((piece, k) => (
            <button key={k} type="button" class="chip" onClick={() => setOpen({ piece })}>
              {sizeWords(piece.size)} <b>× {piece.count}</b>
              <span class="sr"> {piece.kind}, how many</span>
            </button>
          ))}
        {add.map(({ label, kind }) => (
          <button key={label} type="button" class="chip" onClick={() => setOpen({ kind })}>
            + {label}
          </button>
        ))}
      </div>
      {open && 'piece' in open && (
        <KeySheet
          title={`How many of ${sizeWords(open.piece.size)}, none to take it off`}
          tape="1/64"
          fill="count"
          nowCount={open.piece.count}
          onCount={(count) =>
            onPieces(withCount(pieces, { ...open.piece, count: Math.min(count ?? 0, most) }))
          }
          onClose={close}
        />
      )}
      {open && 'kind' in open && (
        <KeySheet
          title={`How thick is the ${open.kind}`}
          tape="1/64"
          fill="length"
          onLength={(size) => size && onPieces(oneMore(pieces, { size, kind: open.kind }))}
          onClose={close}
        />
      )}
    </>
  );
}

/** One more of a size: another of those there are, or the first. */
function oneMore(pieces: readonly Piece[], one: { readonly size: Length; readonly kind: Piece['kind'] }) {
  const there = pieces.find((p) => p.kind === one.kind && p.size.equals(one.size))?.count ?? 0;
  return withCount(pieces, { ...one, count: Math.min(there + 1, most) });
}
