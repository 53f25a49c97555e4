import { fineOf, markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import { type Operation, opId } from './operation';
import { setupOf } from './setup';

type Piece = { readonly id: string; readonly name: PieceName };

/**
 * Holes for dowels, a row at one setting of the template: how far its middle stands off the face or the end it is held
 * to. Where each hole is along the row is marked from the top edge, which is flush.
 */
export const dowelsOf = (part: Part, piece: Piece, tape: Tape): readonly Operation[] =>
  (part.dowels ?? []).map((row) => {
    const figure = markAt(row.from, fineOf(tape));
    const setup = setupOf({
      machine: 'template',
      cutter: row.thick,
      height: row.deep,
      sets: 'row-middle',
      figure,
      on: { at: 'dowels', in: row.in },
    });
    return {
      id: opId(part.id, `dowels~${row.at}`, piece.id),
      part: part.id,
      copy: piece.id,
      name: piece.name,
      what: 'bore',
      which: { is: 'dowels', row, marks: row.marks.map((mark) => markAt(mark, tape).value) },
      setup,
      figure: figure.value,
      after: [],
      placing: {
        face: { named: row.in === 'face' ? 'inside' : 'outside', lies: row.in === 'face' ? 'up' : 'out' },
      },
    };
  });
