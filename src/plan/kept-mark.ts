import { editPart } from '../job/edits';
import type { Change } from '../job/entry';
import { equals } from '../length/length';
import type { Part } from '../trade/carcass/part';
import { copyOf } from '../trade/grooves/copies';
import type { Checklist } from './checklist';

/**
 * What keeps the mark of a piece that is spoiled: where its part sets the case, and another part of the case is cut to
 * length already, the piece is made again to the mark it had, whatever has since been measured. A piece that came out
 * otherwise and was not matched is made again to what it was meant to be.
 *
 * @param copy of the part, however often it was cut again
 */
export function keepMark({ plan, cutTo, doing }: Checklist, part: Part, copy: string): readonly Change[] {
  if (!/~(bottom|left|right)$/.test(part.id) || !plan.worked.has(part.of)) return [];
  const lengths = plan.operations.filter((op) => op.what === 'length' && doing.done(op.id));
  const piece = lengths.find((op) => op.part === part.id && copyOf(op.copy) === copy);
  const cut = piece && cutTo(piece.id);
  const others = plan.parts.filter((p) => p.of === part.of && p.id !== part.id);
  const mated = lengths.some((op) => others.some((other) => other.id === op.part));
  const own = plan.job.parts[part.id]?.mark;
  const matched = cut && own && equals(own, cut.figure);
  return cut && mated ? editPart(part.id, { mark: matched ? own : (cut.stood ?? cut.figure) }) : [];
}
