import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';

/** Parts out of one stock, by its name; parts of none have no name over them. */
type OfStock = { readonly name: string | undefined; readonly parts: readonly Part[] };

/** The parts of a job by the name of the stock they come out of, in the order these first come. */
export function byStock({ parts, stuff }: Pick<Plan, 'parts' | 'stuff'>): readonly OfStock[] {
  const groups = new Map<string | undefined, Part[]>();
  for (const part of parts) {
    const name = stuff.find((s) => s.id === part.stuff)?.name;
    groups.set(name, [...(groups.get(name) ?? []), part]);
  }
  return [...groups].map(([name, parts]) => ({ name, parts }));
}
