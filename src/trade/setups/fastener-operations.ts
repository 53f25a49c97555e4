import { fineOf, markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import { fastened } from './lies';
import type { Operation } from './operation';
import { base, type Piece } from './part-pieces';
import { setupOf } from './setup';

/**
 * Holes for what holds a butted joint of a case, a row at one setting of the template: how far its middle stands off
 * the reference face of the part, in its ends, or off an end, in the face of the mate. Each hole along the row is
 * marked from the front edge, which is flush.
 */
export const fastenersOf = (part: Part, piece: Piece, tape: Tape): readonly Operation[] =>
  (part.fasteners ?? []).flatMap((row): readonly Operation[] => {
    const marks = row.marks.map((mark) => markAt(mark, tape).value);
    const [first, last] = [marks[0], marks[marks.length - 1]];
    if (!first || !last) return [];
    const figure = markAt(row.from, fineOf(tape));
    const { off } = row.in;
    const setup = setupOf({
      machine: 'template',
      cutter: row.thick,
      height: row.deep,
      sets: 'row-middle',
      figure,
      on: row.in.at === 'ends' ? { at: 'face', named: row.in.off } : { at: 'end', named: off },
    });
    const face = row.in.at === 'face' ? row.in.face : undefined;
    return [
      {
        ...base(part, piece, `dowels~${row.id}`),
        ...(face ? { name: { ...piece.name, copy: face } } : {}),
        what: 'bore',
        which: { is: 'fasteners', row },
        setup,
        figure: figure.value,
        row: { first, last },
        placing: fastened(part, row),
      },
    ];
  });
