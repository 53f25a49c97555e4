import { editPart } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Tool } from '../../trade/machines/shop';
import type { GrooveMachineId } from '../../trade/machines/stored-ids';
import { lengthAt, ripAt } from '../../trade/machines/through';
import type { Operation } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { editHow } from './edit-how';
import { stayingAt } from './stay-at';

/** The machine that cuts grooves with a tool of the shop. */
const grooveAt: Readonly<Record<Tool, GrooveMachineId>> = {
  fence: 'fence',
  sled: 'stop',
  sliding: 'sliding',
  router: 'router',
  circular: 'saw',
};

/**
 * What moves cuts to another tool of the shop: a rip and a length of their parts, grooves of their boards; nothing
 * where that tool does not make them.
 *
 * @param to the tool; not said: what was chosen is taken back, and the first that can takes a rip or a length again
 */
export const moveTo = (operations: readonly Operation[], to: Tool | undefined): readonly Change[] => [
  ...partsOf(operations, 'rip').flatMap((id) => through(id, 'ripOn', to, to && ripAt[to])),
  ...partsOf(operations, 'length').flatMap((id) => through(id, 'lengthOn', to, to && lengthAt[to])),
  ...[...new Set(operations.flatMap((op) => op.groove?.board ?? []))].flatMap((id) =>
    to ? editHow({ id }, { machine: grooveAt[to] }) : [],
  ),
];

const partsOf = (operations: readonly Operation[], what: 'rip' | 'length'): readonly string[] => [
  ...new Set(operations.flatMap((op) => (op.what === what ? op.part : []))),
];

/**
 * Moves cuts, and stays at them.
 *
 * @param to the tool; not said: what was chosen is taken back
 */
export const moveCuts = (
  bench: Pick<Bench, 'act' | 'go' | 'plan' | 'folded' | 'route'>,
  operations: readonly Operation[],
  { label, to }: { readonly label: string; readonly to: Tool | undefined },
): Promise<void> => stayingAt(bench, operations[0]?.id, () => bench.act(label, moveTo(operations, to)));

function through(
  id: string,
  field: 'ripOn' | 'lengthOn',
  to: Tool | undefined,
  machine: Parameters<typeof editPart>[1]['ripOn' | 'lengthOn'],
): readonly Change[] {
  return to && !machine ? [] : editPart(id, { [field]: machine });
}
