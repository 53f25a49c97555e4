import { useState } from 'preact/hooks';
import type { Length } from '../../length/length';
import { writeDecimal } from '../../length/write';
import type { Piece } from '../../trade/stacks/pieces';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { keepLists, listsOf } from '../shop-lists';
import { sizeWords } from './words';

type Open =
  | { readonly what: 'outer' | 'arbor' | 'correction' }
  | { readonly what: 'new'; readonly kind: 'chipper' | 'shim' | 'gap' | 'screw' }
  | { readonly what: 'count'; readonly piece: Piece; readonly of: 'stack' | 'shims' };

/** What lies in the box: outers, chippers, shims, and how many of each; shims for gaps; screws on the shelf. */
export function StackBox({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<Open>();
  const lists = listsOf(bench);
  const { stack } = lists;
  const keepStack = (patch: Partial<typeof stack>) => keepLists(bench, { stack: { ...stack, ...patch } });
  const single = (what: 'outer' | 'arbor' | 'correction', words: string, now: Length | undefined) => (
    <li>
      <button type="button" class="nextset" onClick={() => setOpen({ what })}>
        <span class="grow">{words}</span>
        {now ? <Inline value={now} tape={now.d > 64n ? '0.001' : '1/64'} /> : <span class="muted">none</span>}
      </button>
    </li>
  );
  return (
    <>
      <section>
        <div class="sechead">
          <h2 class="sec">Stack, as it lies in its box</h2>
        </div>
        <ul>
          {single('outer', 'One outer cuts', stack.outer)}
          {single('arbor', 'The arbor carries at most', stack.arbor)}
          {single('correction', 'This set cuts over its marks', stack.correction)}
        </ul>
        <Pieces
          pieces={stack.pieces}
          onCount={(piece) => setOpen({ what: 'count', piece, of: 'stack' })}
          onNew={[
            { label: 'Chipper', kind: 'chipper' },
            { label: 'Shim', kind: 'shim' },
          ].map(({ label, kind }) => ({
            label,
            onTap: () => setOpen({ what: 'new', kind: kind === 'chipper' ? 'chipper' : 'shim' }),
          }))}
        />
        <p class="pad-x note">A set stands here as commonly sold, until you say what is in yours.</p>
      </section>
      <section>
        <div class="sechead">
          <h2 class="sec">Shims for gaps</h2>
        </div>
        <Pieces
          pieces={lists.shims}
          onCount={(piece) => setOpen({ what: 'count', piece, of: 'shims' })}
          onNew={[{ label: 'Shim', onTap: () => setOpen({ what: 'new', kind: 'gap' }) }]}
        />
      </section>
      <section>
        <div class="sechead">
          <h2 class="sec">Screws on the shelf, lengths</h2>
        </div>
        <div class="pad-x chips wrap">
          {lists.screws.map((x, k) => (
            <button
              key={k}
              type="button"
              class="chip"
              aria-label={`Take the ${writeDecimal(x)} screw off the list`}
              onClick={() => keepLists(bench, { screws: lists.screws.filter((_, j) => j !== k) })}
            >
              <Given value={x} /> <Icon name="cross" />
            </button>
          ))}
          <button type="button" class="chip" onClick={() => setOpen({ what: 'new', kind: 'screw' })}>
            + Screw
          </button>
        </div>
      </section>
      {open && (
        <BoxKeys
          key={JSON.stringify({ ...open, piece: undefined })}
          open={open}
          now={
            open.what === 'outer' || open.what === 'arbor' || open.what === 'correction'
              ? stack[open.what]
              : undefined
          }
          onLength={(value) => {
            if (open.what === 'outer') return value && keepStack({ outer: value });
            if (open.what === 'arbor' || open.what === 'correction') {
              const { [open.what]: _, ...rest } = stack;
              return keepLists(bench, { stack: value ? { ...rest, [open.what]: value } : rest });
            }
            if (open.what !== 'new' || !value) return;
            if (open.kind === 'screw')
              return keepLists(bench, { screws: [...lists.screws, value].sort((a, b) => a.compare(b)) });
            if (open.kind === 'gap')
              return keepLists(bench, { shims: [...lists.shims, { size: value, count: 1, kind: 'shim' }] });
            keepStack({ pieces: [...stack.pieces, { size: value, count: 1, kind: open.kind }] });
          }}
          onCount={(count) => {
            if (open.what !== 'count') return;
            const change = (pieces: readonly Piece[]) =>
              pieces.flatMap((p) => (p === open.piece ? (count ? [{ ...p, count }] : []) : [p]));
            if (open.of === 'stack') keepStack({ pieces: change(stack.pieces) });
            else keepLists(bench, { shims: change(lists.shims) });
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type PiecesProps = {
  readonly pieces: readonly Piece[];
  readonly onCount: (piece: Piece) => void;
  readonly onNew: readonly { readonly label: string; readonly onTap: () => void }[];
};

/** Pieces with how many of each; tapped, the count changes; none left takes it off the list. */
const Pieces = ({ pieces, onCount, onNew }: PiecesProps) => (
  <div class="pad-x chips wrap">
    {pieces.map((piece, k) => (
      <button key={k} type="button" class="chip" onClick={() => onCount(piece)}>
        {sizeWords(piece.size)} <b>× {piece.count}</b>
        <span class="sr"> {piece.kind}, how many</span>
      </button>
    ))}
    {onNew.map(({ label, onTap }) => (
      <button key={label} type="button" class="chip" onClick={onTap}>
        + {label}
      </button>
    ))}
  </div>
);

type KeysProps = {
  readonly open: Open;
  readonly now: Length | undefined;
  readonly onLength: (value: Length | undefined) => void;
  readonly onCount: (count: number | undefined) => void;
  readonly onClose: () => void;
};

function BoxKeys({ open, now, onLength, onCount, onClose }: KeysProps) {
  if (open.what === 'count') {
    return (
      <KeySheet
        title={`How many of ${sizeWords(open.piece.size)}, none to take it off`}
        tape="1/64"
        fill="count"
        nowCount={open.piece.count}
        onCount={onCount}
        onClose={onClose}
      />
    );
  }
  const titles = {
    outer: 'What one outer cuts',
    arbor: 'The most the arbor carries',
    correction: 'What this set cuts over its marks',
    new: 'How thick, or how long',
  };
  return (
    <KeySheet
      title={titles[open.what]}
      tape="1/64"
      fill="length"
      now={now}
      onLength={onLength}
      onClose={onClose}
    />
  );
}
