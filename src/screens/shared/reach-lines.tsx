import type { Change } from '../../job/entry';
import { withinReach } from '../../plan/within-reach';
import type { GrooveMachineId } from '../../trade/machines/groove-machines';
import { isDoubtful } from '../../trade/machines/small-shop';
import type { Tool } from '../../trade/machines/tools';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { editHow } from './edit-how';
import { asksText, insteadText, lacksText, moved, remedyText, tooSmallText } from './limit-words';
import { listsOf } from './shop-lists';

/** The machine that cuts grooves with a tool of the shop. */
const machineOf: Readonly<Record<Tool, GrooveMachineId>> = {
  fence: 'fence',
  sled: 'stop',
  sliding: 'sliding',
  router: 'router',
  circular: 'saw',
};

type ReachProps = { readonly bench: Bench; readonly operations: readonly Operation[] };

/**
 * What the machine of a setting cannot take, by how much, and the machine that can: a tap moves its grooves there.
 * A figure of the shop that is not known is asked; a piece small for its machine has its remedy said.
 */
export function ReachLines({ bench, operations }: ReachProps) {
  const plan = bench.plan.value;
  if (!plan) return null;
  const { arbor } = listsOf(bench.settings.value).stack;
  const reach = { ...bench.shop.value, arbor };
  const each = operations.flatMap((op) => withinReach(op, plan.parts, reach) ?? []);
  const found = each.find(({ own }) => own.lacks.length > 0) ?? each[0];
  if (!found) return null;
  const { tape } = plan.job;
  const { need, own, can, remedies, small } = found;
  const lacks = lacksText(own, tape);
  const asks = own.asks.filter(isDoubtful);
  const boards = [...new Set(operations.flatMap((o) => o.groove?.board ?? []))];
  const to = can && boards.length > 0 ? machineOf[can.tool] : undefined;
  const move = (machine: GrooveMachineId): readonly Change[] =>
    boards.flatMap((id) => editHow({ id }, { machine }));
  return (
    <div class="pad-x">
      {lacks && <p>{lacks}</p>}
      {can && to && (
        <Chip label={insteadText(can, need, tape)} onTap={() => void bench.act(moved(can), move(to))} />
      )}
      {can && !to && <p>{insteadText(can, need, tape)}</p>}
      {remedies.map((remedy) => (
        <p key={remedy.code}>{remedyText(remedy, tape)}</p>
      ))}
      {small.map((one) => (
        <p key={one.code}>{tooSmallText(one, tape)}</p>
      ))}
      {asks.length > 0 && <Chip label={asksText(asks)} onTap={() => bench.go({ at: 'shop' })} />}
    </div>
  );
}
