import type { Plan } from '../../plan/plan';
import { isDoubtful } from '../../trade/machines/small-shop';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { asksText, movedTo } from './limit-words';
import { moveCuts, moveTo } from './move-cut';
import { goneSays, reachFound } from './reach-says';
import { reachOf } from './shop-lists';
import './reach-lines.css';

type ReachProps = { readonly bench: Bench; readonly operations: readonly Operation[] };

/**
 * What the machine of a setting cannot take, by how much, and the machine that can: a tap moves its cuts there. What
 * was tried before it says what it lacks. A figure of the shop that is not known is asked; a piece small for its
 * machine, or hanging over its table, has its remedy said.
 */
export function ReachLines({ bench, operations }: ReachProps) {
  const plan = bench.plan.value;
  if (!plan) return null;
  const gone = goneSays(operations, plan, reachOf(bench));
  return (
    <>
      {gone.length > 0 && (
        <div class="pad-x reach">
          {gone.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
      <Within {...{ bench, operations, plan }} />
    </>
  );
}

function Within({ bench, operations, plan }: ReachProps & { readonly plan: Plan }) {
  const found = reachFound(operations, plan, reachOf(bench));
  if (!found) return null;
  const { own, can, lacking, says, hangs, instead = '' } = found;
  const to = can && (can.own ?? can.tool);
  const move = to ? moveTo(lacking, to) : [];
  const asks = own.asks.filter(isDoubtful);
  return (
    <div class="pad-x reach">
      {says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {hangs && <p class="note">{hangs}</p>}
      {to && move.length > 0 && (
        <Chip label={instead} onTap={() => void moveCuts(bench, lacking, { label: movedTo(to), to })} />
      )}
      {can && move.length === 0 && <p>{instead}</p>}
      {asks.length > 0 && <Chip label={asksText(asks, own.own)} onTap={() => bench.go({ at: 'shop' })} />}
    </div>
  );
}
