import { useState } from 'preact/hooks';
import { letAheadOf, tickOf } from '../../job/edits';
import { blocks, type Checklist } from '../../plan/checklist';
import { jointOf } from '../../trade/setups/changes';
import type { Blocked as Block } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import { blockWords, reasonsFor } from '../shared/block-words';
import { blocked } from '../shared/held-words';
import * as words from './words';
import './machine.css';

type BlockedProps = {
  readonly bench: Pick<Bench, 'act' | 'go'>;
  readonly list: Checklist;
  readonly op: Operation;
  readonly unfolded?: boolean;
};

/**
 * What a piece waits for: a tap goes to it. It may be done already: then it is ticked. A tap on a reason lets the piece
 * go ahead all the same, and is kept with the cut. Of several pieces the first shows its reasons at once.
 */
export function Blocked({ bench, list, op, unfolded = false }: BlockedProps) {
  const [asked, setAsked] = useState(false);
  const open = asked || unfolded;
  const waits = blocks(list, op);
  const [first] = waits;
  if (!first) return null;
  // what cannot be set is not cut anyway
  const isLet = first.by !== 'layout' && first.by !== 'shop';
  const to = wayTo(first, list, op);
  return (
    <div class="mblocked">
      <p>
        {blocked}{' '}
        {to ? (
          <button type="button" class="inlink" onClick={() => bench.go(to)}>
            {blockWords(list, op)}
          </button>
        ) : (
          blockWords(list, op)
        )}
      </p>
      {isLet && !open && <Chip label={words.anyway(op)} onTap={() => setAsked(true)} />}
      {isLet && open && <Ahead {...{ bench, op, waits }} />}
    </div>
  );
}

type AheadProps = Pick<BlockedProps, 'bench' | 'op'> & { readonly waits: readonly Block[] };

function Ahead({ bench, op, waits }: AheadProps) {
  const before = waits.flatMap((w) => (w.by === 'operation' ? [w.op] : []));
  return (
    <div class="chips">
      {before.length > 0 && (
        <Chip
          label={words.alreadyDone(before)}
          onTap={() =>
            void bench.act(
              words.alreadyAct(before),
              before.flatMap((b) => tickOf(b.id, b.figure, jointOf(b))),
            )
          }
        />
      )}
      <p>{words.because(op)}</p>
      {reasonsFor(op).map((why) => (
        <Chip
          key={why}
          label={why}
          onTap={() => void bench.act(words.aheadAct(op), letAheadOf(op.id, why))}
        />
      ))}
    </div>
  );
}

/** Where what blocks is done. */
export function wayTo(block: Block, list: Checklist, { groove, part }: Operation): Route | undefined {
  switch (block.by) {
    case 'stock':
      return { at: 'stock', id: block.stock };
    case 'shop':
      return { at: 'shop' };
    case 'opening':
      return { at: 'opening', id: block.bank.replace(/~back$/, '') };
    case 'feet':
      return { at: 'level', id: part.replace(/~bench$/, ''), foot: 'next' };
    case 'operation': {
      const card = list.cards.find((c) => c.operations.includes(block.op));
      return card && { at: 'setup', id: card.id };
    }
    default:
      return groove && { at: 'stops', board: groove.board };
  }
}
