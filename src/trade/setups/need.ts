import { isPositive, type Length, subtract, zero } from '../../length/length';
import type { Units } from '../../length/units';
import type { Part } from '../carcass/part';
import type { Need } from '../machines/limits';
import type { Operation } from './operation';

const said = (x: Length): Length | undefined => (isPositive(x) ? x : undefined);

/** What a part wants of what rips it, and of what cuts it to length; so wide, so long. Inches. */
export const ripNeed = (
  { thickness, width, length }: Part,
  units: Units | undefined,
  wide: Length = width.mark.value,
): Need => ({ cut: 'rip', width: wide, length: said(length.mark.value), thickness, units });
export const lengthNeed = (
  { thickness, width, length }: Part,
  units: Units | undefined,
  long: Length = length.mark.value,
): Need => ({ cut: 'crosscut', length: long, width: said(width.mark.value), thickness, units });

/**
 * What an operation wants of its machine: how far the fence or stop stands, how wide and thick the piece is. Nothing
 * for steps at the bench and cuts that no figure limits.
 *
 * @param part the part it is done to; @param units of the job
 * @example needOf(rip, side)?.cut // 'rip'
 */
export function needOf(op: Operation, part: Part, units?: Units): Need | undefined {
  const length = said(part.length.mark.value);
  const width = said(part.width.mark.value);
  switch (op.what) {
    case 'rip':
      return ripNeed(part, units, op.figure);
    case 'length':
    case 'mitre':
      return lengthNeed(part, units, op.figure);
    case 'groove':
      return grooveNeed(op, { length, across: width, units });
    case 'along':
    case 'rabbet':
      return edgeNeed(op, { length, width });
    case 'notch':
    case 'lap':
      return shoulderNeed(op, { length, width });
    case 'bore': {
      const { which, setup } = op;
      if (which?.is !== 'row') return undefined;
      const { off, dia, deep } = which.bore;
      const toPress = setup.machine === 'press' || which.short || which.passed;
      return toPress ? { cut: 'bore', off, dia, depth: deep } : undefined;
    }
    case 'slot': {
      const { which, setup } = op;
      if (which?.is !== 'fasteners' || !setup.height) return undefined;
      const where = which.row.in.at === 'face' ? 'face' : 'end';
      return { cut: 'slot', in: where, off: op.figure, depth: setup.height };
    }
    default:
      return undefined;
  }
}

type Size = { readonly length: Length | undefined; readonly width: Length | undefined };

/** Whether a groove along an edge runs through: it is not let down between two marks. */
export const isThrough = ({ which }: Pick<Operation, 'which'>): boolean =>
  !(which?.is === 'takes' && which.stopped);

/** A rabbet is as wide as the stack stands out of its fence: nothing is set between that and the work. */
function edgeNeed(op: Operation, { length, width }: Size): Need | undefined {
  const { what, figure, width: wide, setup } = op;
  const lies = setup.on.at === 'end' ? { length, across: width } : { length: width, across: length };
  const { height: depth } = setup;
  if (what === 'rabbet') return { cut: 'edge', near: zero, width: figure, depth, ...lies };
  if (!wide) return undefined;
  return { cut: isThrough(op) ? 'along' : 'stopped', near: figure, width: wide, depth, ...lies };
}

/** A notch is cut in parts stood on edge, clamped as one: how wide they are limits what comes from above alone. */
function shoulderNeed({ what, figure, setup }: Operation, { length, width }: Size): Need | undefined {
  const { cutter, height: depth } = setup;
  if (!cutter) return undefined;
  const across = what === 'lap' ? { across: width } : { stands: width };
  return { cut: 'shoulder', near: figure, width: cutter, depth, length, ...across };
}

type Lies = {
  readonly length: Length | undefined;
  readonly across: Length | undefined;
  readonly units: Units | undefined;
};

/** What is set on a fence scale stands off the teeth by what rides between. */
function grooveNeed({ groove, setup, figure }: Operation, lies: Lies): Need | undefined {
  const { sets, cutter, height: depth } = setup;
  if (!groove || !cutter) return undefined;
  const rides = sets === 'fence-scale' ? subtract(figure, groove.teeth) : undefined;
  return { cut: 'groove', near: groove.teeth, width: cutter, depth, rides, ...lies };
}
