import type { Length } from '../../length/length';
import { copyOf } from '../grooves/copies';
import type { RoughPiece } from './pieces';
import type { Pool } from './pool';

const exact = (x: Length | undefined): string => (x ? `${x.s * x.n}/${x.d}` : '');

/**
 * A hash of what a plan rests on: sizes, trims and grain of its stocks, the kerf, and the pieces as they must lie. A
 * plan with another hash was made for something else. A piece cut again is the same piece.
 *
 * @example restsOn(pool, kerf) === restsOn(pool, kerf) // true
 */
export function restsOn({ stocks, pieces }: Pool, kerf: Length): string {
  const stock = stocks.map((s) => [
    s.id,
    exact(s.long),
    exact(s.wide),
    exact(s.trim),
    s.grain,
    s.bad.map(exact),
  ]);
  const piece = (p: RoughPiece) => [
    p.part,
    copyOf(p.copy),
    exact(p.long),
    exact(p.wide),
    p.lies,
    p.together ?? '',
  ];
  const all = JSON.stringify([exact(kerf), stock, pieces.map(piece)]);
  return `${folded(all, 5381)}${folded(all, 52711)}`;
}

/** A 32-bit hash of a text, in base 36. */
function folded(text: string, from: number): string {
  let n = from;
  for (let k = 0; k < text.length; k += 1) n = (Math.imul(n, 33) ^ text.charCodeAt(k)) >>> 0;
  return n.toString(36);
}
