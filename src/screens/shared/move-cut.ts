import { editOwnName, editPart } from '../../job/edits';
import type { Change } from '../../job/entry';
import { namedFor } from '../../trade/grooves/stands-on';
import { type Taker, toolOf } from '../../trade/machines/own-machine';
import { grooveAt, lengthAt, ripAt } from '../../trade/machines/through';
import { type JointField, jointFieldOf } from '../../trade/setups/joint-machine';
import type { Operation } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { editHow } from './edit-how';
import { stayingAt } from './stay-at';

/**
 * What moves cuts to another machine of the shop: those of their parts, grooves of their boards; nothing
 * where it does not make them. What one of the shop's own is called goes along.
 *
 * @param to not said: what was chosen is taken back, and the first that can takes a rip or a length again
 */
export function moveTo(operations: readonly Operation[], to: Taker | undefined): readonly Change[] {
  const tool = to && toolOf(to);
  const own = typeof to === 'object' ? to : undefined;
  const by = own?.id;
  const moved = [
    ...partsOf(operations, 'rip').flatMap((id) =>
      tool && !ripAt[tool] ? [] : editPart(id, { ripOn: tool && ripAt[tool], ripBy: by }),
    ),
    ...partsOf(operations, 'length').flatMap((id) =>
      tool && !lengthAt[tool] ? [] : editPart(id, { lengthOn: tool && lengthAt[tool], lengthBy: by }),
    ),
    ...[...new Set(operations.flatMap((op) => op.groove?.board ?? []))].flatMap((id) => {
      const machine = own ? namedFor(own) : tool && grooveAt[tool];
      return machine ? editHow({ id }, { machine, by }) : [];
    }),
    ...jointsOf(operations).flatMap(([id, field]) => editPart(id, jointOn(field, to))),
  ];
  return own && moved.length > 0 ? [...moved, ...editOwnName(own.id, own.name)] : moved;
}

/** The parts whose joints stand here, each with the name under which its machine is kept. */
function jointsOf(operations: readonly Operation[]) {
  const each = operations.flatMap((op) => {
    const field = jointFieldOf(op);
    return field ? [[`${op.part} ${field}`, [op.part, field] as const] as const] : [];
  });
  return [...new Map(each).values()];
}

/**
 * What is kept of a part whose joint is put on a machine. A router table is named apart for grooves that run through,
 * so that what was said of the others goes on counting.
 */
function jointOn(field: JointField, to: Taker | undefined): Partial<Record<JointField, string | undefined>> {
  const by = typeof to === 'object' ? to.id : to === 'sliding' ? to : to && 'usual';
  if (field !== 'alongBy') return { [field]: by };
  return to && toolOf(to) === 'table' ? { alongBy: by } : { alongBy: undefined, edgeBy: by };
}

const partsOf = (operations: readonly Operation[], what: 'rip' | 'length'): readonly string[] => [
  ...new Set(operations.flatMap((op) => (op.what === what ? op.part : []))),
];

/**
 * Moves cuts, and stays at them.
 *
 * @param to not said: what was chosen is taken back
 */
export const moveCuts = (
  bench: Pick<Bench, 'act' | 'go' | 'plan' | 'folded' | 'route'>,
  operations: readonly Operation[],
  { label, to }: { readonly label: string; readonly to: Taker | undefined },
): Promise<void> => {
  // a test cut is of its build: on another machine it is another
  const first = operations.find(({ what }) => what !== 'test');
  return stayingAt(bench, first?.id, () => bench.act(label, moveTo(operations, to)));
};
