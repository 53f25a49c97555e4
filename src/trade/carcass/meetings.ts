import { type Length, zero } from '../../length/length';
import type { Joint } from '../joints/joint';
import { dado, groove, rabbet } from '../joints/joints';
import { backHow } from './back-how';
import type { Case, StockRole } from './case';

/** Fields of a case that say how deep one part goes into another. */
export type JointField = 'dado' | 'partitionDado' | 'topRabbet' | 'backDeep' | 'backGroove' | 'cleatRabbet';

/** By which joint, and what it is cut in. */
export const meetings: Readonly<Record<JointField, { readonly joint: Joint; readonly into: StockRole }>> = {
  dado: { joint: dado, into: 'side' },
  partitionDado: { joint: dado, into: 'bottom' },
  topRabbet: { joint: rabbet, into: 'side' },
  backDeep: { joint: rabbet, into: 'side' },
  backGroove: { joint: groove, into: 'side' },
  cleatRabbet: { joint: rabbet, into: 'side' },
};

/** The joints a case has. @example jointFields({ ...c, hasTop: false }).includes('topRabbet') // false */
export const jointFields = (c: Case): readonly JointField[] => [
  'dado',
  ...(c.partitions > 0 ? (['partitionDado'] as const) : []),
  ...(c.hasTop ? (['topRabbet'] as const) : []),
  ...(backHow(c) === 'rabbet' ? (['backDeep'] as const) : []),
  ...(backHow(c) === 'groove' ? (['backGroove'] as const) : []),
  ...(c.cleats > 0 ? (['cleatRabbet'] as const) : []),
];

/**
 * How far a part reaches into the one it meets, inches: so much longer it is at that end than the opening is clear.
 *
 * @example reachOf(sizes, 'dado') // 9/32 where the dado is that deep
 */
export const reachOf = ({ joints }: Deep, field: JointField): Length =>
  meetings[field].joint.reach(joints[field]);

/** As much of that as is seen from the front, inches. @example seenOf(sizes, 'dado') // 0: a dado hides it */
export const seenOf = (sizes: Deep, field: JointField): Length =>
  meetings[field].joint.seen ? reachOf(sizes, field) : zero;

type Deep = { readonly joints: Readonly<Record<JointField, Length>> };
