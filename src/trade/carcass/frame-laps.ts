import { add, half, type Length, subtract, sum, times, zero } from '../../length/length';
import { cutsFor } from '../joints/joint';
import { lap } from '../joints/joints';
import { flushLaps } from '../joints/laps';
import { type FaceFrame, frameLapped } from './frame';
import type { Lap, Part } from './part';
import { type Sizes, stockOf } from './sizes';
import { usualOf } from './usual';

/** Where a piece of the frame crosses another: what the lap is called, its near shoulder, how long it is. Inches. */
type Crossing = { readonly id: string; readonly near: Length; readonly long: Length };

type Laps = Pick<Part, 'laps' | 'lapsFromBack'>;
type Lapped = { readonly stile: Laps; readonly rail: Laps; readonly middle: Laps };

const butted: Lapped = { stile: { laps: [] }, rail: { laps: [] }, middle: { laps: [] } };

/**
 * The laps of a half-lapped face frame, flush on the show face: cut in the show face of its rails and in the back of
 * its stiles, which lie over them. A lap is as long as the piece that crosses there is wide.
 *
 * @returns no laps where rails are butted
 * @example lapsOfFrame(sizes, frame).rail.laps.map((lap) => lap.near) // 0, 21: Example 26 of carcass
 */
export function lapsOfFrame(sizes: Sizes, frame: FaceFrame): Lapped {
  const { stile, top, bottom } = frame.pieces;
  const thickness = sizes.thick('frame');
  const depths = flushLaps({ under: { thickness, width: top }, over: { thickness, width: stile } });
  if (!frameLapped(sizes.case) || !depths.ok) return butted;
  const { depthUnder, depthOver } = depths.value;
  const cut = (depth: Length, at: readonly Crossing[]) => lapsAt(sizes, depth, at);
  const atRails = (low: Length, long: Length): Laps => ({
    laps: cut(depthOver, [
      { id: 'lapbottom', near: low, long: bottom },
      { id: 'laptop', near: subtract(long, top), long: top },
    ]),
    lapsFromBack: true,
  });
  return {
    stile: atRails(subtract(frame.railLow, frame.lowEnd), frame.height.value),
    middle: atRails(zero, frame.uprights.value),
    rail: {
      laps: cut(depthUnder, [
        { id: 'lapleft', near: zero, long: stile },
        ...middlesAlong(sizes, frame),
        { id: 'lapright', near: subtract(frame.rails.value, stile), long: stile },
      ]),
    },
  };
}

/** Each middle stile centred on its partition, as its bays were built, from the left end of a rail. */
function middlesAlong(sizes: Sizes, { pieces: { middle } }: FaceFrame): readonly Crossing[] {
  const { case: c, thick } = sizes;
  const partition = thick('partition');
  const beside = half(subtract(middle, partition));
  return Array.from({ length: c.partitions }, (_, k) => {
    const bays = Array.from({ length: k + 1 }, (_, n) => sizes.real(n + 1).value);
    const face = sum([thick('side'), ...bays, times(partition, BigInt(k))]);
    const over = c.overhang ?? usualOf(c).overhang;
    return { id: `lapmiddle${k + 1}`, near: subtract(add(over, face), beside), long: middle };
  });
}

const lapsAt = (sizes: Sizes, depth: Length, at: readonly Crossing[]): readonly Lap[] =>
  cutsFor(
    at.map(({ id, near, long }) => ({
      joint: lap,
      seat: { id, called: 'frame', near, thick: long, depth, fits: stockOf(sizes.case, 'frame') },
    })),
  ).laps;
