import { useState } from 'preact/hooks';
import { equals, type Length } from '../../length/length';
import { offered, type Piece, withCount } from '../../trade/stacks/pieces';
import { KeySheet } from '../../ui/key-sheet';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import * as words from './drawer-words';
import { exactly } from './exact-words';
import { PieceChips } from './piece-chips';
import { keepLists, listsOf } from './shop-lists';

const counts = [1, 2, 3, 4, 5, 6];

type Single = keyof typeof words.singles;

type RowsProps = { readonly bench: Bench; readonly singles: readonly Single[] };

/** A dado set as it lies in its box: outers and chippers at a tap, shims as typed. Nothing stands there unasked. */
export function SetRows({ bench, singles }: RowsProps) {
  const [open, setOpen] = useState<Single>();
  const { stack } = listsOf(bench.settings.value);
  const keepSingle = (what: Single, value: Length | undefined) => {
    const { [what]: _, ...rest } = stack;
    keepLists(bench, { stack: value ? { ...rest, [what]: value } : rest });
  };
  return (
    <>
      <Outer
        now={stack.outer}
        onTap={() => setOpen('outer')}
        onOffer={() => keepSingle('outer', offered.outer)}
      />
      <Pieces
        pieces={stack.pieces}
        onPieces={(pieces) => keepLists(bench, { stack: { ...stack, pieces } })}
      />
      <ul>
        {singles.map((what) => (
          <li key={what}>
            <SingleRow what={what} now={stack[what]} onTap={() => setOpen(what)} />
          </li>
        ))}
      </ul>
      {open && (
        <KeySheet
          key={open}
          title={words.singles[open].sheet}
          tape="1/64"
          fill="length"
          now={stack[open]}
          signed={open === 'correction'}
          onLength={(value) => keepSingle(open, value)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

const Known = ({ now }: { readonly now: Length | undefined }) =>
  now ? (
    <Inline value={now} tape={now.d > 64n ? '0.001' : '1/64'} />
  ) : (
    <span class="muted">{words.notSaid}</span>
  );

type SingleProps = {
  readonly what: Single;
  readonly now: Length | undefined;
  readonly onTap: () => void;
};

const SingleRow = ({ what, now, onTap }: SingleProps) => (
  <button type="button" class="nextset" onClick={onTap}>
    <span class="grow">{words.singles[what].row}</span>
    <Known now={now} />
  </button>
);

type OuterProps = Omit<SingleProps, 'what'> & { readonly onOffer: () => void };

/** What one outer cuts: the usual size at a tap until it is said, any other typed. */
const Outer = ({ now, onTap, onOffer }: OuterProps) => (
  <div class="setrow">
    <SingleRow what="outer" now={now} onTap={onTap} />
    {!now && (
      <button
        type="button"
        class="chip"
        aria-label={words.outerCuts(exactly(offered.outer))}
        onClick={onOffer}
      >
        {exactly(offered.outer)}
      </button>
    )}
  </div>
);

type PiecesProps = {
  readonly pieces: readonly Piece[];
  readonly onPieces: (pieces: readonly Piece[]) => void;
};

const isOffered = ({ kind, size }: Piece): boolean =>
  kind === 'chipper' && offered.chippers.some((usual) => equals(usual, size));

/** Chippers of the usual sizes at a tap, all other pieces as typed. */
const Pieces = ({ pieces, onPieces }: PiecesProps) => (
  <>
    {offered.chippers.map((size) => (
      <Chippers key={exactly(size)} size={size} pieces={pieces} onPieces={onPieces} />
    ))}
    <PieceChips
      pieces={pieces}
      onPieces={onPieces}
      not={isOffered}
      add={[
        { label: words.shim, kind: 'shim' },
        { label: words.otherChipper, kind: 'chipper' },
      ]}
    />
  </>
);

type ChipperProps = PiecesProps & { readonly size: Length };

/** How many chippers of one size, at a tap; the count tapped again takes them off. */
function Chippers({ size, pieces, onPieces }: ChipperProps) {
  const now = pieces
    .filter((p) => p.kind === 'chipper' && equals(p.size, size))
    .reduce((sum, p) => sum + p.count, 0);
  const label = words.chippersOf(exactly(size));
  return (
    <div class="pad-x setcounts" role="group" aria-label={label}>
      <span>{label}</span>
      <div class="chips">
        {counts.map((count) => (
          <button
            key={count}
            type="button"
            class="chip"
            aria-pressed={now === count}
            onClick={() =>
              onPieces(withCount(pieces, { size, kind: 'chipper', count: now === count ? 0 : count }))
            }
          >
            {count}
          </button>
        ))}
        {now > counts.length && <b>{now}</b>}
      </div>
    </div>
  );
}
