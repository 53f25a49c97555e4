import { type Length, less, subtract } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import type { Shop, ShopField } from '../machines/shop';
import { isDoubtful } from '../machines/small-shop';
import { type Bore, type BoredWith, rowTape } from '../shelves/bore';
import { bored } from './lies';
import { type Operation, opId } from './operation';
import { setupOf } from './setup';

type Piece = { readonly id: string; readonly name: PieceName };

type At = { readonly tape: Tape; readonly shop: Shop };

/**
 * What a row is bored with: the drill press that was said where its column lets the front edge so far in, else a drill
 * in a template. A press nobody measured is asked for once the smallest would not do.
 */
function boredOn({ by, off }: Bore, { pressThroat }: Shop): OnWhat {
  if (by !== 'press') return { by };
  if (!pressThroat)
    return isDoubtful({ field: 'pressThroat', wants: off }) ? { by, asks: 'pressThroat' } : { by };
  return less(pressThroat, off) ? { by: 'template', short: subtract(off, pressThroat) } : { by };
}

/** `short`: how much farther in the row is than the press reaches, inches. */
type OnWhat = { readonly by: BoredWith; readonly short?: Length; readonly asks?: ShopField };

/**
 * The rows of holes of a piece, each bored at one setting: left and right walls of a bay share it. Its figure is how
 * far the row stands from the front edge; where each hole is along the piece is marked.
 */
export const boresOf = (part: Part, piece: Piece, { tape, shop }: At): readonly Operation[] =>
  (part.bores ?? []).flatMap((said) => {
    const { asks, short, by } = boredOn(said, shop);
    const bore = { ...said, by };
    const [first, last] = [bore.holes[0], bore.holes[bore.holes.length - 1]];
    if (!first || !last) return [];
    const marks = rowTape(bore, tape);
    const figure = markAt(bore.off, marks);
    const face = part.name.role === 'partition' ? bore.face : undefined;
    const setup = setupOf({
      machine: bore.by,
      cutter: bore.dia,
      height: bore.deep,
      sets: bore.by === 'press' ? 'fence-to-bit' : 'row-from-front',
      figure,
      on: { at: 'edge', named: 'front' },
    });
    return {
      id: opId(part.id, `bore~${bore.id}`, piece.id),
      part: part.id,
      copy: piece.id,
      name: face ? { ...piece.name, copy: face } : piece.name,
      what: 'bore',
      which: { is: 'row', bore, ...(face ? { face } : {}), ...(short ? { short } : {}) },
      setup,
      figure: figure.value,
      after: [],
      row: { first: markAt(first.at, marks).value, last: markAt(last.at, marks).value },
      placing: bored(part, bore),
      ...(asks ? { asks, cannot: true } : {}),
    };
  });
