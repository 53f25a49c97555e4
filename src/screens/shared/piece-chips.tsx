import { useState } from 'preact/hooks';
import type { Length } from '../../length/length';
import { type Piece, withCount } from '../../trade/stacks/pieces';
import { KeySheet } from '../../ui/key-sheet';
import * as words from './drawer-words';
import { countRefused } from './refused-words';
import { sizeWords } from './stack-words';
import './set-rows.css';

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
const mostOf = countRefused(most, words.ofOneSize, 0);

type Open = { readonly kind: Piece['kind'] } | { readonly piece: Piece } | undefined;

/** Pieces with how many of each; tapped, the count changes; none left takes it off the list. */
export function PieceChips({ pieces, onPieces, add, not = () => false }: ChipsProps) {
  const [open, setOpen] = useState<Open>();
  const onClose = () => setOpen(undefined);
  return (
    <>
      <div class="pad-x chips wrap setpieces">
        {pieces
          .filter((piece) => !not(piece))
          .map((piece, k) => (
            <button key={k} type="button" class="chip" onClick={() => setOpen({ piece })}>
              {sizeWords(piece.size)} <b>× {piece.count}</b>
              <span class="sr"> {words.howMany(piece.kind)}</span>
            </button>
          ))}
        {add.map(({ label, kind }) => (
          <button key={label} type="button" class="chip" onClick={() => setOpen({ kind })}>
            {words.more(label)}
          </button>
        ))}
      </div>
      {open && 'piece' in open && <CountSheet {...{ pieces, onPieces, onClose }} piece={open.piece} />}
      {open && 'kind' in open && <SizeSheet {...{ pieces, onPieces, onClose }} kind={open.kind} />}
    </>
  );
}

type SheetProps = Pick<ChipsProps, 'pieces' | 'onPieces'> & { readonly onClose: () => void };

const CountSheet = ({ pieces, onPieces, onClose, piece }: SheetProps & { readonly piece: Piece }) => (
  <KeySheet
    title={words.howManyOf(sizeWords(piece.size))}
    tape="1/64"
    fill="count"
    nowCount={piece.count}
    refuse={(count) => (typeof count === 'number' ? mostOf(count) : undefined)}
    onCount={(count) => onPieces(withCount(pieces, { ...piece, count: count ?? 0 }))}
    onClose={onClose}
  />
);

const SizeSheet = ({ pieces, onPieces, onClose, kind }: SheetProps & { readonly kind: Piece['kind'] }) => (
  <KeySheet
    title={words.howThick(kind)}
    tape="1/64"
    fill="length"
    kind={kind === 'shim' ? 'shim' : 'kerf'}
    refuse={(size) => (typeof size === 'number' ? undefined : mostOf(having(pieces, { size, kind }) + 1))}
    onLength={(size) => size && onPieces(oneMore(pieces, { size, kind }))}
    onClose={onClose}
  />
);

type One = { readonly size: Length; readonly kind: Piece['kind'] };

const having = (pieces: readonly Piece[], one: One): number =>
  pieces.find((p) => p.kind === one.kind && p.size.equals(one.size))?.count ?? 0;

/** One more of a size: another of those there are, or the first. */
const oneMore = (pieces: readonly Piece[], one: One) =>
  withCount(pieces, { ...one, count: having(pieces, one) + 1 });
