import type { Part } from '../carcass/part';
import type { RipMachine } from '../machines/through';
import type { Side } from './on';
import type { Placing } from './placing';

const trueEdge: Side = { at: 'edge', named: 'true' };
const squaredEnd: Side = { at: 'end', named: 'squared' };

/** Which side of the line a guide lies on: on what is kept, or on the waste. */
export type GuideOn = 'reference' | 'far';

/** Ripped off its true edge, good face up. The rip fence stands right of the blade: common practice, no source. */
const ripped: Placing = {
  face: { named: 'good', lies: 'up' },
  onFence: trueEdge,
  stop: 'right',
};

/**
 * Along a guide the good face is down, for the teeth come out of the upper one, and the guide at the left of the saw
 * as it is pushed away, under its wide side. Common practice, no source.
 */
const guided = (measured: Side, guide: GuideOn): Placing => ({
  face: { named: 'good', lies: 'down' },
  measured,
  stop: guide === 'reference' ? 'left' : 'right',
});

export const rippedOn = (machine: RipMachine, guide: GuideOn = 'reference'): Placing =>
  machine === 'saw' ? guided(trueEdge, guide) : ripped;

/** Cut to length off its squared end, true edge on the fence: of a sled at your side, of a sliding saw the far one. */
export const crosscut = (part: Part, fence: 'near' | 'far' = 'near'): Placing => ({
  face: { named: 'good', lies: 'up' },
  onFence: trueEdge,
  toStop: squaredEnd,
  stop: part.board?.stopSide ?? 'left',
  fence,
});

/** Along a guide squared off the true edge, which is toward you. */
export const crosscutGuided = (guide: GuideOn): Placing => ({
  ...guided(squaredEnd, guide),
  toYou: trueEdge,
});
