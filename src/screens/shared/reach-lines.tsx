import { ownGone } from '../../plan/own-gone';
import type { Plan } from '../../plan/plan';
import { withinReach, worst } from '../../plan/within-reach';
import { isDoubtful } from '../../trade/machines/small-shop';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { goneText } from './gone-text';
import {
  asksText,
  hangsText,
  insteadText,
  lacksText,
  movedTo,
  remedyText,
  tooSmallText,
} from './limit-words';
import { moveCuts, moveTo } from './move-cut';
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
  const gone = ownGone(operations, plan.job, bench.shop.value);
  return (
    <>
      {gone.length > 0 && (
        <div class="pad-x reach">
          {gone.map(({ id, name }) => (
            <p key={id}>{goneText(name)}</p>
          ))}
        </div>
      )}
      <Within {...{ bench, operations, plan }} />
    </>
  );
}

function Within({ bench, operations, plan }: ReachProps & { readonly plan: Plan }) {
  const reach = reachOf(bench);
  const each = operations.flatMap((op) => {
    const found = withinReach(op, plan.parts, reach);
    return found ? [{ op, ...found }] : [];
  });
  const short = each.filter(({ own }) => own.lacks.length > 0);
  const found = short[0] ?? each.find(({ passed }) => passed.length > 0) ?? each[0];
  if (!found) return null;
  const { tape } = plan.job;
  const { need, own, passed, can, remedies } = found;
  const hangs = each.find((one) => one.hangs)?.hangs;
  const says = [
    ...[own, ...passed].map((way) => lacksText(way, tape)),
    ...remedies.map((remedy) => remedyText(remedy, tape)),
    ...worst(each.flatMap(({ small }) => small)).map((one) => tooSmallText(one, tape)),
  ];
  const lacking = short.map(({ op }) => op);
  const to = can && (can.own ?? can.tool);
  const move = to ? moveTo(lacking, to) : [];
  const asks = own.asks.filter(isDoubtful);
  return (
    <div class="pad-x reach">
      {[...new Set(says)].map((line) => line && <p key={line}>{line}</p>)}
      {hangs && <p class="note">{hangsText(hangs, tape)}</p>}
      {can && to && move.length > 0 && (
        <Chip
          label={insteadText(can, need, tape)}
          onTap={() => void moveCuts(bench, lacking, { label: movedTo(to), to })}
        />
      )}
      {can && move.length === 0 && <p>{insteadText(can, need, tape)}</p>}
      {asks.length > 0 && <Chip label={asksText(asks, own.own)} onTap={() => bench.go({ at: 'shop' })} />}
    </div>
  );
}
