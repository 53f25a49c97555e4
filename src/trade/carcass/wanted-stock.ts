import { isPositive } from '../../length/length';
import type { Case, Inside, StockRole } from './case';

const isEdged = ({ kind, heldBy, band }: Inside): boolean =>
  kind === 'loose' && heldBy !== undefined && band !== undefined && isPositive(band);

/** The stock a case cannot do without, in the order it is asked for. */
export function wantedStock(c: Case): readonly StockRole[] {
  const kinds = new Set(c.inside.map((i) => i.kind));
  return [
    'side',
    ...(c.hasBack ? (['back'] as const) : []),
    ...(kinds.has('trays') ? (['tray'] as const) : []),
    ...(c.hasFrame || kinds.has('rail') ? (['frame'] as const) : []),
    ...(c.hasEdging ? (['edging'] as const) : []),
    ...(c.stocks.shelfedge && c.inside.some(isEdged) ? (['shelfedge'] as const) : []),
  ];
}
