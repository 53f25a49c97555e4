import { isPositive, type Length, subtract } from '../../length/length';
import type { Part } from '../carcass/part';
import type { Need } from '../machines/limits';
import type { Operation } from './operation';

const said = (x: Length): Length | undefined => (isPositive(x) ? x : undefined);

/** What a part wants of what rips it, and of what cuts it to length; so wide, so long. Inches. */
export const ripNeed = ({ thickness, width, length }: Part, wide: Length = width.mark.value): Need => ({
  cut: 'rip',
  width: wide,
  length: said(length.mark.value),
  thickness,
});
export const lengthNeed = ({ thickness, width, length }: Part, long: Length = length.mark.value): Need => ({
  cut: 'crosscut',
  length: long,
  width: said(width.mark.value),
  thickness,
});

/**
 * What an operation wants of its machine: how far the fence or stop stands, how wide and thick the piece is. Nothing
 * for steps at the bench and cuts that no figure limits.
 *
 * @param part the part it is done to
 * @example needOf(rip, side)?.cut // 'rip'
 */
export function needOf(op: Operation, part: Part): Need | undefined {
  const length = said(part.length.mark.value);
  const width = said(part.width.mark.value);
  switch (op.what) {
    case 'rip':
      return ripNeed(part, op.figure);
    case 'length':
    case 'mitre':
      return lengthNeed(part, op.figure);
    case 'groove':
      return grooveNeed(op, { length, across: width });
    case 'along': {
      const isEnd = op.setup.on.at === 'end';
      const lies = isEnd ? { length, across: width } : { length: width, across: length };
      return op.width && op.setup.machine === 'fence'
        ? { cut: 'groove', near: op.figure, width: op.width, depth: op.setup.height, ...lies }
        : undefined;
    }
    default:
      return undefined;
  }
}

type Lies = { readonly length: Length | undefined; readonly across: Length | undefined };

/** What is set on a fence scale stands off the teeth by what rides between. */
function grooveNeed({ groove, setup, figure }: Operation, lies: Lies): Need | undefined {
  const { sets, cutter, height: depth } = setup;
  if (!groove || !cutter) return undefined;
  const rides = sets === 'fence-scale' ? subtract(figure, groove.teeth) : undefined;
  return { cut: 'groove', near: groove.teeth, width: cutter, depth, rides, ...lies };
}
