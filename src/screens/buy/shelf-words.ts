import type { Why } from '../../trade/buying/line';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

type WhyOf<C extends Why['code']> = Extract<Why, { readonly code: C }>;

/** Four a shelf, where they are, and what is bought to spare. */
export function heldText({ uses, spares }: WhyOf<'pins' | 'clips'>): string {
  const shelves = uses.map(({ place, count }) => `${place} ${counted(count, 'shelf', 'shelves')}`).join(', ');
  return `Four a shelf: ${shelves}${spares > 0 ? `; ${spares} to spare` : ''}.`;
}

/** What strips are cut to, at most, and what is left of those of one groove. */
export function stripsText({ pieces, each, from }: WhyOf<'strips'>): string {
  const longs = [...pieces].sort((a, b) => b.compare(a)).map(w);
  const kinds = [...new Set(longs)].map((long) => [longs.filter((x) => x === long).length, long] as const);
  const cut = `Cut to at most: ${kinds.map(([n, long]) => `${n * each} of ${long}`).join(', ')}.`;
  if (!from) return `${cut} Say on the page of the case how long they are sold.`;
  const left = from.left.filter((x) => x.n > 0n).map((x) => w(x));
  const over = left.length > 0 ? ` Left of each: ${left.join(', ')}, a saw cut of ${w(from.cut)} off.` : '';
  return `${cut} The strips of all four grooves cut alike.${over}`;
}
