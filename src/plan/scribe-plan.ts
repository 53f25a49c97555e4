import type { Job } from '../job/job';
import { type GapRead, standIn } from '../job/room';
import { type Length, zero } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { type Scribe, type ScribeError, scribe } from '../trade/room/scribe';
import type { AtSpot } from '../trade/room/spot';

type Short = Extract<ScribeError, { readonly code: 'overhang' }>;

/** One side of a case scribed to its wall. Inches. */
export type ScribeSide = {
  readonly side: 'left' | 'right';
  /** The gaps in the order they were made, read or not. */
  readonly gaps: readonly GapRead[];
  /** How far the edge hangs over: said, or as the face frame does. */
  readonly hang: Length;
  /** What was said of it, where it was. */
  readonly said?: Length;
  readonly found?: Result<Scribe & { readonly short?: Short }, Exclude<ScribeError, Short>>;
};

const isShort = (error: ScribeError): error is Short => error.code === 'overhang';

/** What comes off all the same where too little hangs over: by how much is said beside it. */
function scribed(gaps: readonly AtSpot[], hang: Length): Exclude<ScribeSide['found'], undefined> {
  const found = scribe(gaps, hang);
  if (found.ok) return found;
  if (!isShort(found.error)) return err(found.error);
  const all = scribe(gaps, found.error.need);
  if (all.ok) return ok({ ...all.value, short: found.error });
  return isShort(all.error) ? err({ code: 'no-readings' }) : err(all.error);
}

/**
 * Both sides of a case scribed to the walls, from the gaps read down its edges.
 *
 * @param id of the case
 * @returns inches
 */
export function scribeSides(job: Job, id: string): readonly ScribeSide[] {
  const stand = standIn(job, id);
  const c = job.cases.find((x) => x.id === id);
  const framed = (c?.hasFrame ? c.overhang : undefined) ?? zero;
  return (['left', 'right'] as const).map((side) => {
    const gaps = stand.gaps.filter((gap) => (gap.side ?? 'left') === side);
    const said = side === 'left' ? stand.hangLeft : stand.hangRight;
    const hang = said ?? framed;
    const read = gaps.flatMap(({ at, gap }): readonly AtSpot[] =>
      at && gap ? [{ at, plane: 'front', value: gap }] : [],
    );
    return {
      side,
      gaps,
      hang,
      ...(said && { said }),
      ...(read.length > 0 && { found: scribed(read, hang) }),
    };
  });
}
