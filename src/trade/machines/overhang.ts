import { half, type Length, less, subtract, times } from '../../length/length';
import { isDrilled } from './drilled';
import { type Ask, isGroove, type Need, type Way } from './limits';
import type { Shop } from './shop';

/** What hangs over the table saw's table, more than half of it: it wants holding up. Inches. */
type Overhang = { readonly over: 'behind' | 'beside'; readonly by: Length };

/** What hangs over, or the figure of the shop it cannot be told without. */
type Hangs = { readonly hangs?: Overhang; readonly asks?: Ask };

/** What of a piece lies past the blade, of how much in all. */
type Past = {
  readonly field: 'tableBehind' | 'tableBeside';
  readonly past: Length;
  readonly whole: Length;
};

/**
 * Whether more than half of a piece hangs over the table: a rip once it has gone by the blade, a crosscut and a groove
 * off the fence beside it. Common practice, no source.
 *
 * @returns nothing for tools that lie on the work, and where its length is not known
 * @example overhangOf({ cut: 'rip', length: inches(64n) }, { tool: 'fence' }, { tableBehind: inches(18n) }).hangs // 46
 */
export function overhangOf(need: Need, { tool }: Pick<Way, 'tool'>, shop: Shop): Hangs {
  const lies = pastBlade(need, tool);
  if (!lies) return {};
  const { field, past, whole } = lies;
  const table = shop[field];
  // more than half hangs over where the table is shorter than what is past the blade less half of all
  if (!table) return { asks: { field, wants: subtract(past, half(whole)) } };
  const by = subtract(past, table);
  if (!less(whole, times(by, 2n))) return {};
  return { hangs: { over: field === 'tableBehind' ? 'behind' : 'beside', by } };
}

function pastBlade(need: Need, tool: Way['tool']): Past | undefined {
  if (isDrilled(need) || !need.length) return undefined;
  const { length: whole } = need;
  if (need.cut === 'rip') return tool === 'fence' ? { field: 'tableBehind', past: whole, whole } : undefined;
  if (need.cut === 'crosscut')
    return tool === 'sled' ? { field: 'tableBeside', past: whole, whole } : undefined;
  if (!isGroove(need)) return undefined;
  return tool === 'fence' ? { field: 'tableBeside', past: subtract(whole, need.near), whole } : undefined;
}
