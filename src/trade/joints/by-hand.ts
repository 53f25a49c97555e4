import { add, atMost, isPositive, type Length, less, subtract, zero } from '../../length/length';
import type { Cutting } from '../carcass/boards';
import type { Along, Notch, Part, Rabbet } from '../carcass/part';
import type { Face } from '../grooves/layout';
import type { Side } from '../setups/on';
import type { Bore } from '../shelves/bore';
import { type Crossing, crossings } from './crosses';
import { type DadoFault, dadoFault, type HandDado, withDado } from './dado-by-hand';
import { type EdgeName, otherEnd } from './edges';
import { type HandHoles, type HolesFault, holesFault, withHoles } from './holes-by-hand';

/** A joint cut that somebody added to a part. What is not said yet is `undefined`: it is not cut. Inches. */
export type HandJoint = {
  readonly id: string;
  readonly part: string;
  readonly kind: 'rabbet' | 'groove' | 'notch' | 'lap' | 'mitre' | 'dado' | 'holes';
  /** Along which edge, as the part has them (`edgesOf`), or end: that it is measured from, or the other. */
  readonly at: EdgeName | 'end' | 'other';
  /** What lies in it, in the words of whoever added it. */
  readonly takes: string;
  /** Across a rabbet, a groove, a dado or a hole; along the part for a notch or a lap. */
  readonly width?: Length | undefined;
  readonly depth?: Length | undefined;
  /**
   * Near wall of a groove from its edge, near shoulder of a notch or lap, near wall of a dado and middle of the first
   * of a row of holes from the reference end.
   */
  readonly near?: Length | undefined;
  /** Of a partition, the face a dado is cut or holes are bored in; A when not said. */
  readonly face?: Face | undefined;
  /** Of a row of holes: how far their middles are from the edge they stand off and from each other; how many. */
  readonly off?: Length | undefined;
  readonly pitch?: Length | undefined;
  readonly count?: number | undefined;
};

/** @example sideOf(part, 'other') // the top end of a part measured from its bottom */
export function sideOf({ end }: Pick<Part, 'end'>, at: HandJoint['at']): Side {
  if (at !== 'end' && at !== 'other') return { at: 'edge', named: at };
  return { at: 'end', named: at === 'end' ? end : otherEnd({ end }) };
}

/**
 * Why a joint is not cut: it comes out at the other face, by so much or just; it runs off the part, by so much; its
 * end has a joint of the case; or a dado or a hole meets the other cuts of its part.
 */
export type HandJointFault =
  | { readonly code: 'nothing'; readonly field: 'width' | 'depth' }
  | { readonly code: 'through'; readonly by: Length; readonly thickness: Length }
  | { readonly code: 'off'; readonly by: Length; readonly has: Length }
  | { readonly code: 'taken'; readonly end: string }
  | DadoFault
  | HolesFault;

/** What keeps a joint from being cut as it is said; nothing where it can be, or is not wholly said. */
export function faultOf(part: Part, joint: HandJoint): HandJointFault | undefined {
  const { width, depth, near = zero, kind, at } = joint;
  if (kind === 'mitre') return takenBy(part, sideOf(part, at).named);
  if (!width || !depth) return undefined;
  const none = isPositive(width) ? (isPositive(depth) ? undefined : 'depth') : 'width';
  if (none) return { code: 'nothing', field: none };
  const { thickness } = part;
  const across = kind === 'notch' ? part.width.sum.value : thickness;
  if (across && atMost(across, depth))
    return { code: 'through', by: subtract(depth, across), thickness: across };
  if (kind === 'holes') {
    const row = holesOf(joint);
    return row && holesFault(part, row);
  }
  const alongPart = kind === 'notch' || kind === 'lap' || kind === 'dado' || at === 'end' || at === 'other';
  const has = (alongPart ? part.length : part.width).sum.value;
  const far = add(near, width);
  if (less(has, far)) return { code: 'off', by: subtract(far, has), has };
  const dado = dadoOf(joint);
  return dado && dadoFault(part, dado);
}

/** The holes of its part that a joint opens, once it is cut. */
export const crossedBy = (part: Part, joint: HandJoint): readonly Crossing[] => crossings(part, idOf(joint));

/** An end that is cut to go into another part, or is a long point already, takes no mitre. */
function takenBy(part: Part, end: string): HandJointFault | undefined {
  const { rabbets, tongues = [], endCut, longPoint } = part;
  const rabbeted = rabbets.some(({ id, along }) => along.at === 'end' && along.named === end && !isHand(id));
  const taken = rabbeted || tongues.some((tongue) => tongue.end === end) || endCut || longPoint;
  return taken ? { code: 'taken', end } : undefined;
}

const isEnd = ({ at }: HandJoint): boolean => at === 'end' || at === 'other';

/** Whether all is said that its cut needs. */
function isSaid(joint: HandJoint): boolean {
  const { kind, width, depth, near } = joint;
  if (kind === 'mitre') return isEnd(joint);
  if (kind === 'holes') return holesOf(joint) !== undefined;
  return width !== undefined && depth !== undefined && (kind === 'rabbet' || near !== undefined);
}

type AddedAt = Cutting & { readonly like?: readonly Bore[] };

/**
 * A part with the joints that were added to it: cut like those it has from its case, at the same setups.
 *
 * @param joints of this part and others; one that is not wholly said, or cannot be cut, is left out
 * @param at how its grooves are cut, where that is not the usual way, and rows of other parts that its are bored like
 * @returns the same part where there is none
 * @example withHandJoints(part, [joint]).rabbets.length // one more
 */
export function withHandJoints(part: Part, joints: readonly HandJoint[], at: AddedAt = {}): Part {
  const { like = [], ...cutting } = at;
  const said = joints.filter((joint) => joint.part === part.id && isSaid(joint) && !faultOf(part, joint));
  if (said.length === 0) return part;
  const of = (kind: HandJoint['kind']) => said.filter((joint) => joint.kind === kind);
  // each beside those said before it: of two that meet the first is cut
  const dadoed = of('dado').reduce((own, joint) => {
    const dado = dadoOf(joint);
    return dado && !dadoFault(own, dado) ? withDado(own, dado, cutting) : own;
  }, part);
  const whole: Part = {
    ...dadoed,
    rabbets: [...part.rabbets, ...of('rabbet').flatMap((joint) => rabbetOf(part, joint))],
    along: [...(part.along ?? []), ...of('groove').flatMap((joint) => grooveOf(part, joint))],
    notches: [...part.notches, ...of('notch').flatMap(shoulderedOf)],
    laps: [...part.laps, ...of('lap').flatMap(shoulderedOf)],
    ...mitredAt(part, of('mitre')),
  };
  return of('holes').reduce((own, joint) => {
    const row = holesOf(joint);
    return row && !holesFault(own, row) ? withHoles(own, row, like) : own;
  }, whole);
}

/** Its mitred ends, that it is measured from first; it stays as long: to the long points. */
function mitredAt(part: Part, joints: readonly HandJoint[]): Pick<Part, 'mitres'> {
  const ends = new Set([...(part.mitres ?? []), ...joints.map(({ at }) => sideOf(part, at).named)]);
  const [...all] = ends;
  return all.length > 0
    ? { mitres: all.sort((a, b) => Number(b === part.end) - Number(a === part.end)) }
    : {};
}

/** Their ids in the operations of the part: no id of a joint of a case begins so. */
export const idOf = ({ id }: HandJoint): string => `x${id}`;

/** A dado across a part, once all of it is said. */
function dadoOf(joint: HandJoint): HandDado | undefined {
  const { kind, width, depth, near, face = 'A', takes: said } = joint;
  if (kind !== 'dado' || !width || !depth || !near) return undefined;
  return { id: idOf(joint), face, near, width, depth, said };
}

/** A row of holes, once all of it is said. */
function holesOf(joint: HandJoint): HandHoles | undefined {
  const { width: dia, depth: deep, near: first, off, pitch, count, face = 'A' } = joint;
  if (!dia || !deep || !first || !off || !pitch || !count) return undefined;
  return { id: idOf(joint), face, off, dia, deep, pitch, first, count };
}

const isHand = (id: string): boolean => id.startsWith('x');

function rabbetOf(part: Part, joint: HandJoint): readonly Rabbet[] {
  const { width, depth, takes: said, at } = joint;
  if (!width || !depth) return [];
  return [{ id: idOf(joint), takes: { said }, along: sideOf(part, at), width, depth }];
}

function grooveOf(part: Part, joint: HandJoint): readonly Along[] {
  const { width, depth, near, takes: said, at } = joint;
  if (!width || !depth || !near) return [];
  return [{ id: idOf(joint), takes: { said }, edge: sideOf(part, at), near, width, depth }];
}

function shoulderedOf(joint: HandJoint): readonly Notch[] {
  const { width: long, depth: deep, near, takes: said } = joint;
  return long && deep && near ? [{ id: idOf(joint), near, long, deep, takes: { said } }] : [];
}
