import { add, type Length } from '../../length/length';
import type { FastenerRow } from '../fasteners/row';
import type { Butted } from './butted';
import type { FastenedEnd } from './fastened';

/** What is bored for one kind of meeting, alike at all its ends. Inches. */
export type Fastening = {
  readonly thick: Length;
  /** From the reference face of the part to the middle. */
  readonly from: Length;
  readonly inFace: Length;
  readonly inEnd: Length;
  /** Middles from the front edge. */
  readonly marks: readonly Length[];
};

/**
 * The rows bored in parts and mates, by the part they are in: the ends off the reference face, the mate at the same
 * figure from the line that face comes to.
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
  const { thick, from, inFace, inEnd, marks } = fastening;
  for (const { id } of new Set(ends.map(({ part }) => part))) {
    const own = ends.filter(({ part }) => part.id === id);
    const [first] = own;
    if (!first) continue;
    const at = { at: 'ends', named: own.map(({ end }) => end), off: first.face } as const;
    put(id, { id: what, holds: first.holds, in: at, thick, deep: inEnd, from, marks });
  }
  for (const { id, holds, mate, off, near, on } of ends) {
    const at = { at: 'face', off, ...(on ? { face: on } : {}) } as const;
    put(mate.id, { id, holds, in: at, thick, deep: inFace, from: add(near, from), marks });
  }
  return rows;
}
