import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, type WayRead } from '../job/room';
import { zero } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import type { CaseSize } from '../trade/room/lying';
import { usualRoom } from '../trade/room/usual';
import { type Passage, type PassageError, type Passed, wayIn } from '../trade/room/way-in';

/** A figure of a thing on the way in. */
export type WayField = 'width' | 'height' | 'from' | 'into' | 'headroom' | 'going' | 'rise' | 'between';
export type WayKind = Passage['kind'];

const wanted: Record<WayKind, readonly WayField[]> = {
  doorway: ['width', 'height'],
  turn: ['from', 'into'],
  stair: ['headroom', 'going', 'rise', 'between'],
};

export const kindOf = ({ kind = 'doorway' }: WayRead): WayKind => kind;

/** What must be said of it before it can be reckoned; of winders nothing, they are not reckoned. */
const wantedOf = (way: WayRead): readonly WayField[] =>
  kindOf(way) === 'stair' && way.winders ? [] : wanted[kindOf(way)];

/** One thing on the way in for one case: what is missing, or what was found. */
export type WayFound = {
  readonly way: WayRead;
  readonly asks: readonly WayField[];
  readonly found?: Result<Passed, PassageError>;
};

function passageOf(way: WayRead): Passage | undefined {
  const { width, height, leaf, beyond, from, into, headroom, going, rise, between } = way;
  switch (kindOf(way)) {
    case 'doorway':
      if (!width || !height) return undefined;
      return { kind: 'doorway', door: { width, height, ...(leaf && { leaf }), ...(beyond && { beyond }) } };
    case 'turn':
      return from && into
        ? { kind: 'turn', turn: { a: from, b: into, ...(height && { height }) } }
        : undefined;
    case 'stair': {
      if (way.winders) return { kind: 'stair', stair: { ...noStair, flight: 'winders' } };
      if (!headroom || !going || !rise || !between) return undefined;
      return { kind: 'stair', stair: { flight: 'straight', headroom, going, rise, between } };
    }
  }
}

/** Of winders no figure is asked for: they are refused before one is looked at. */
const noStair = { headroom: zero, going: zero, rise: zero, between: zero };

/**
 * Whether a case gets by each thing on its way, in the order they were said.
 *
 * @param size of the case as it is carried, inches
 */
export function waysFor(job: Job, size: CaseSize): readonly WayFound[] {
  const units = usualIn(job);
  const room = roomIn(job);
  const at = { hand: room.hand ?? usualRoom(units).hand, grain: grainOf(job.tape), units };
  return room.ways.map((way) => {
    const asks = wantedOf(way).filter((field) => !way[field]);
    const passage = passageOf(way);
    const [found] = passage ? wayIn([passage], size, at) : [];
    return { way, asks, ...(found && { found }) };
  });
}
