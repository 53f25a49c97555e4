import { useState } from 'preact/hooks';
import { equals, type Length } from '../../length/length';
import { writeLength } from '../../length/write';
import { offered, type Piece, type StackBox, withCount } from '../../trade/stacks/pieces';
import { KeySheet } from '../../ui/key-sheet';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { PieceChips } from './piece-chips';
import { keepLists, listsOf } from './shop-lists';

const counts = [1, 2, 3, 4, 5, 6];

type Single = 'outer' | 'arbor' | 'correction';

const words: Record<Single, { readonly row: string; readonly sheet: string }> = {
  outer: { row: 'One outer cuts', sheet: 'What one outer cuts' },
  arbor: { row: 'The arbor carries at most', sheet: 'The most the arbor carries' },
  correction: { row: 'This set cuts over its marks', sheet: 'What this set cuts over its marks' },
};

type RowsProps = { readonly bench: Bench; readonly singles: readonly Single[] };

/** A dado set as it lies in its box: outers and chippers at a tap, shims as typed. Nothing stands there unasked. */
export function SetRows({ bench, singles }: RowsProps) {
  const [open, setOpen] = useState<Single>();
  const { stack } = listsOf(bench.settings.value);
  const keep = (patch: Partial<StackBox>) => keepLists(bench, { stack: { ...stack, ...patch } });
  const keepPieces = (pieces: readonly Piece[]) => keep({ pieces });
  const keepSingle = (what: Single, value: Length | undefined) => {
    const { [what]: _, ...rest } = stack;
    keepLists(bench, { stack: value ? { ...rest, [what]: value } : rest });
  };
  return (
    <>
      <Outer
        now={stack.outer}
        onTap={() => setOpen('outer')}
        onOffer={() => keep({ outer: offered.outer })}
      />
      {offered.chippers.map((size) => (
        <Chippers key={writeLength(size)} size={size} pieces={stack.pieces} onPieces={keepPieces} />
      ))}
      <PieceChips
        pieces={stack.pieces}
        onPieces={keepPieces}
        not={(piece) => piece.kind === 'chipper' && offered.chippers.some((size) => equals(size, piece.size))}
        add={[
          { label: 'Shim', kind: 'shim' },
          { label: 'Other chipper', kind: 'chipper' },
        ]}
      />
      <ul>
        {singles.map((what) => (
          <li key={what}>
            <button type="button" class="nextset" onClick={() => setOpen(what)}>
              <span class="grow">{words[what].row}</span>
              <Known now={stack[what]} />
            </button>
          </li>
        ))}
      </ul>
      {open && (
        <KeySheet
          key={open}
          title={words[open].sheet}
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
  now ? <Inline value={now} tape={now.d > 64n ? '0.001' : '1/64'} /> : <span class="muted">not said</span>;

type OuterProps = {
  readonly now: Length | undefined;
  readonly onTap: () => void;
  readonly onOffer: () => void;
};

/** What one outer cuts: the usual size at a tap until it is said, any other typed. */
const Outer = ({ now, onTap, onOffer }: OuterProps) => (
  <div class="setrow">
    <button type="button" class="nextset" onClick={onTap}>
      <span class="grow">{words.outer.row}</span>
      <Known now={now} />
    </button>
    {!now && (
      <button
        type="button"
        class="chip"
        aria-label={`One outer cuts ${writeLength(offered.outer)}`}
        onClick={onOffer}
      >
        {writeLength(offered.outer)}
      </button>
    )}
  </div>
);

type ChipperProps = {
  readonly size: Length;
  readonly pieces: readonly Piece[];
  readonly onPieces: (pieces: readonly Piece[]) => void;
};

/** How many chippers of one size, at a tap; the count tapped again takes them off. */
function Chippers({ size, pieces, onPieces }: ChipperProps) {
  const now = pieces
    .filter((p) => p.kind === 'chipper' && equals(p.size, size))
    .reduce((sum, p) => sum + p.count, 0);
  const label = `Chippers of ${writeLength(size)}`;
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
