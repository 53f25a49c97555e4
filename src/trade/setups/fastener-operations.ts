import { fineOf, markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { FastenerRow } from '../fasteners/row';
import { fastened } from './lies';
import type { Operation } from './operation';
import { base, type Piece } from './part-pieces';
import { type Setup, setupOf } from './setup';

/**
 * Holes or slots for what holds a butted joint of a case, a row at one setting: how far its middle stands off the
 * reference face of the part, in its ends, or off an end, in the face of the mate; for slant screws how far the seat
 * stays back from the end. Each along the row is marked from the front edge, which is flush.
 */
export const fastenersOf = (part: Part, piece: Piece, tape: Tape): readonly Operation[] =>
  (part.fasteners ?? []).flatMap((row): readonly Operation[] => {
    const marks = row.marks.map((mark) => markAt(mark, tape).value);
    const [first, last] = [marks[0], marks[marks.length - 1]];
    if (!first || !last) return [];
    const setup = setupFor(row, tape);
    const face = row.in.at === 'face' ? row.in.face : undefined;
    return [
      {
        ...base(part, piece, `${cutOf(row)}~${row.id}`),
        ...(face ? { name: { ...piece.name, copy: face } } : {}),
        what: row.biscuit ? 'slot' : 'bore',
        which: { is: 'fasteners', row },
        setup,
        figure: setup.figure?.value ?? row.from,
        row: { first, last },
        placing: fastened(part, row),
      },
    ];
  });

/** How it is spelled in ids, which are kept: it never changes. */
const cutOf = ({ biscuit, slant }: FastenerRow): string => (slant ? 'slants' : biscuit ? 'slots' : 'dowels');

function setupFor({ in: where, biscuit, slant, thick, deep, from }: FastenerRow, tape: Tape): Setup {
  const { off } = where;
  const on =
    where.at === 'ends' ? ({ at: 'face', named: where.off } as const) : ({ at: 'end', named: off } as const);
  const figure = markAt(slant?.seat ?? from, fineOf(tape));
  if (slant) return setupOf({ machine: 'slant', cutter: thick, sets: 'seat-back', figure, on });
  const drilled = { sets: 'row-middle', figure, on, height: deep } as const;
  return setupOf(
    biscuit ? { machine: 'plate', ...drilled } : { machine: 'template', cutter: thick, ...drilled },
  );
}
