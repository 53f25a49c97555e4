import { forDrawing as d, type Length } from '../../length/length';
import type { JoinPlace } from '../../plan/join-place';
import { biscuitThick } from '../../trade/fasteners/biscuits';
import { JointSection } from '../../ui/joint-section';
import * as words from './join-words';

/** A join cut through: what holds it, in the part and in what that ends against. */
export function JoinSection({ join, usual, is }: JoinPlace) {
  const [part, mate] = [join.part ?? usual.part, join.mate ?? usual.mate];
  if (!is?.found.ok || !part || !mate) return null;
  return <JointSection part={d(part)} mate={d(mate)} label={words.section} {...heldIn(is)} />;
}

function heldIn(
  is: NonNullable<JoinPlace['is']>,
): Omit<Parameters<typeof JointSection>[0], 'part' | 'mate' | 'label'> {
  if (!is.found.ok) return {};
  if (is.by === 'slant') {
    const { head, seat, long, leaves } = is.found.value;
    return { slant: { head: d(head), seat: d(seat), tip: d(long) - d(seat), from: d(leaves) } };
  }
  const square = (thick: Length, inMate: Length, inPart: Length, from: Length) => ({
    square: { thick: d(thick), inMate: d(inMate), inPart: d(inPart), from: d(from) },
  });
  if (is.by === 'dowel') {
    const { size, inFace, inEdge, from } = is.found.value;
    return square(size.thick, inFace, inEdge, from);
  }
  const { slotDeep, from } = is.found.value;
  return square(biscuitThick, slotDeep, slotDeep, from);
}
