import { add, atMost, half, type Length, less, subtract, zero } from '../../length/length';
import type { Notch } from '../carcass/part';
import type { Joint, Seat } from './joint';

const limits: Pick<Joint, 'goesThrough' | 'weakens'> = {
  goesThrough: (depth, thickness) => atMost(thickness, depth),
  // half is where a cut begins to weaken the piece. Common practice, no source
  weakens: (depth, thickness) => less(half(thickness), depth),
};

const width = ({ thick, room = zero }: Seat): Length => add(thick, room);

/** What goes in lies in a rabbet along an end or an edge, whole or stopped. */
export const rabbet: Joint = {
  ...limits,
  reach: (depth) => depth,
  seen: true,
  cut: (seat) => {
    const { id, called, no, flush, depth, fits, from, to } = seat;
    if (!flush) return {};
    const takes = { part: called, no };
    return { rabbets: [{ id, takes, along: flush, width: width(seat), depth, fits, from, to }] };
  },
};

/**
 * What goes in is centred in a dado across the part. Flush with the end there is no wood for the far wall: it is then
 * cut as a rabbet, as wide as what lies in it.
 */
export const dado: Joint = {
  ...limits,
  reach: (depth) => depth,
  seen: false,
  cut: (seat) => {
    if (seat.flush) return rabbet.cut({ ...seat, room: zero });
    const { id, face = 'A', near = zero, room = zero, depth, fits, called, no } = seat;
    const at = { near: subtract(near, half(room)), width: width(seat), depth };
    return { wides: [{ id, face, ...at, fits, called, ...(no === undefined ? {} : { calledNo: no }) }] };
  },
};

/** What goes in stands in a groove along an edge, so far from it, whole or stopped. */
export const groove: Joint = {
  ...limits,
  reach: (depth) => depth,
  seen: false,
  cut: (seat) => {
    const { id, called, no, flush, near = zero, depth, fits, from, to } = seat;
    if (!flush) return {};
    const takes = { part: called, no };
    return { along: [{ id, takes, edge: flush, near, width: width(seat), depth, fits, from, to }] };
  },
};

/**
 * A barefaced tongue, one shoulder of the part cut away beside it, in a groove with room under it: the tongue lies at
 * the near face of the part or at its far one, and the groove there.
 */
export const tongue: Joint = {
  ...limits,
  reach: (depth, mate) => subtract(depth, mate?.room ?? zero),
  seen: false,
  cut: (seat) => {
    const { tongue: own, near = zero, thick } = seat;
    if (!own) return {};
    const shoulder = own.hugs === 'far' ? subtract(thick, own.thick) : zero;
    const { fits: _, ...rest } = seat;
    return dado.cut({ ...rest, thick: own.thick, near: add(near, shoulder) });
  },
};

/** Nothing is cut in either for the other: no depth to go through or to weaken a part by. */
const uncut: Pick<Joint, 'goesThrough' | 'weakens'> = { goesThrough: () => false, weakens: () => false };

/** What goes between ends at the face of the other; where it stands is marked, but for an end that it is flush with. */
export const butt: Joint = {
  ...uncut,
  reach: () => zero,
  seen: false,
  cut: ({ id, called, no, face, near, flush }) =>
    flush || !near ? {} : { lines: [{ id, takes: { part: called, no }, near, ...(face ? { face } : {}) }] },
};

/** It lies over the end of the other, flush with its outer face or past it. */
export const over: Joint = {
  ...uncut,
  reach: (_, mate) => (mate ? add(mate.thick, mate.past) : zero),
  seen: true,
  cut: () => ({}),
};

/** Both are mitred from the inner corner to the outer, and as long as the outside: to the long points. */
export const mitre: Joint = {
  ...uncut,
  reach: (_, mate) => mate?.thick ?? zero,
  seen: true,
  cut: () => ({}),
};

const shouldered = (seat: Seat): Notch => {
  const { id, near = zero, depth: deep, fits } = seat;
  return { id, near, long: width(seat), deep, fits };
};

/** What goes in passes by in a notch of the edge: its length is its own. */
export const notch: Joint = {
  ...limits,
  reach: () => zero,
  seen: true,
  cut: (seat) => ({ notches: [shouldered(seat)] }),
};

/** Each of two that cross is cut for the other: their lengths are their own. */
export const lap: Joint = {
  ...limits,
  reach: () => zero,
  seen: true,
  cut: (seat) => ({ laps: [shouldered(seat)] }),
};
