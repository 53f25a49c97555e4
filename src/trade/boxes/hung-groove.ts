import { subtract, zero } from '../../length/length';
import type { Along } from '../carcass/part';
import type { BoxPlan } from './box-plan';
import type { Hung } from './hung';

/** A box as its groove stands in it. */
type Hangs = { readonly plan: Pick<BoxPlan, 'depth' | 'front'> };

/** The groove for a strip in the outside of a box side: from its back end, stopped before the joint of the front. */
export function hungGroove({ thick, groove, land }: Hung, { plan }: Hangs, stock: string | undefined) {
  if (!groove) return [];
  const along: Along = {
    id: 'strip',
    takes: { part: 'strip' },
    outside: true,
    edge: { at: 'edge', named: 'bottom' },
    near: groove.up,
    width: groove.wide,
    depth: thick,
    fits: stock,
    from: zero,
    to: subtract(subtract(plan.depth, plan.front), land),
  };
  return [along];
}
