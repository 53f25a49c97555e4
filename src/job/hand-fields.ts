import { handMachineIds } from '../trade/machines/stored-ids';
import { count, flag, length, oneOf, text } from './kinds';

/** An operation added by hand. */
export const workFields = {
  part: text(60),
  name: text(80),
  machine: oneOf(...handMachineIds),
  figure: length,
  cutter: length,
  height: length,
  after: text(24),
  gone: flag,
};

/** A joint cut added by hand: what lies in it, how wide and deep, and where. */
export const jointFields = {
  part: text(60),
  kind: oneOf('rabbet', 'groove', 'notch', 'lap', 'mitre', 'dado', 'holes'),
  at: oneOf('back', 'front', 'end', 'other', 'bottom', 'top', 'left', 'right'),
  takes: text(60),
  width: length,
  depth: length,
  near: length,
  face: oneOf('A', 'B'),
  off: length,
  pitch: length,
  count,
  gone: flag,
};
