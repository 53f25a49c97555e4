import { add, type Length } from '../../length/length';
import type { FastenerRow, ReferenceFace } from '../fasteners/row';
import type { Butted } from './butted';
import type { FastenedEnd } from './fastened';

/** What is cut for one kind of meeting, alike at all its ends: holes, slots or slanted holes. Inches. */
export type Fastening = Pick<FastenerRow, 'thick' | 'long' | 'biscuit' | 'slant'> & {
  /** From the reference face of the part to the middle. */
  readonly from: Length;
  /** Nothing is cut in the mate where a screw bites it: so deep it goes. */
  readonly inFace: Length;
  readonly inEnd: Length;
  /** How far the tip of a slant screw comes off square in the mate. */
  readonly drift?: Length;
  /** Middles from the front edge. */
  readonly marks: readonly Length[];
};

/**
 * The rows cut in parts and mates, by the part they are in: the ends off the reference face, the mate at the same
 * figure from the line that face comes to. Slant screws are bored for in the ends alone.
 *
 * @example rowsFor(ends, 'bottom', fastening).get('c~left')?.[0]?.from // 23/64: half of 23/32, on the floor
 */
export function rowsFor(
  ends: readonly FastenedEnd[],
  what: Butted,
  fastening: Fastening,
): ReadonlyMap<string, readonly FastenerRow[]> {
  const rows = new Map<string, readonly FastenerRow[]>();
  const put = (part: string, row: FastenerRow) => rows.set(part, [...(rows.get(part) ?? []), row]);
  const { from, inFace, inEnd, drift: _, ...alike } = fastening;
  for (const { id } of new Set(ends.map(({ part }) => part))) {
    const own = ends.filter(({ part }) => part.id === id);
    const [first] = own;
    if (!first) continue;
    const off = fastening.slant ? boredFace(first) : first.face;
    const at = { at: 'ends', named: own.map(({ end }) => end), off } as const;
    put(id, { id: what, holds: first.holds, in: at, ...alike, deep: inEnd, from });
  }
  if (fastening.slant) return rows;
  for (const { id, holds, mate, off, near, on } of ends) {
    const at = { at: 'face', off, ...(on ? { face: on } : {}) } as const;
    put(mate.id, { id, holds, in: at, ...alike, deep: inFace, from: add(near, from) });
  }
  return rows;
}

/** The face slanted holes go into: the one that is not seen, of a side the inner one. */
const boredFace = ({ face }: FastenedEnd): ReferenceFace => (face === 'outside' ? 'inside' : face);
