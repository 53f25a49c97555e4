import type { Length } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import { isClear, lacksOf, type Need, type Way } from '../machines/limits';
import type { OwnMachine, ShopField } from '../machines/shop';
import { isDoubtful } from '../machines/small-shop';
import { takerOf, waysFor } from '../machines/taker';
import { type Bore, type BoredWith, rowTape } from '../shelves/bore';
import { chosenFor } from './joint-machine';
import { bored } from './lies';
import { type Operation, opId } from './operation';
import { setupOf } from './setup';
import type { MachineAt } from './through-machine';

type Piece = { readonly id: string; readonly name: PieceName };

type BoreNeed = Need & { readonly cut: 'bore' };

type At = MachineAt & { readonly tape: Tape };

/**
 * What a row is bored with where a drill press was said: the one that takes it, by its column, its stroke and its
 * largest bit; where none does, a drill in a template. One nobody measured is asked for once the smallest would not do.
 */
function boredOn(bore: Bore, part: Part, at: MachineAt): OnWhat {
  const { shop } = at;
  if (bore.by !== 'press') return { by: bore.by };
  const need: BoreNeed = { cut: 'bore', off: bore.off, depth: bore.deep, dia: bore.dia };
  const named = chosenFor(part, need, at);
  const [usual, ...others] = waysFor(need, 'press', shop);
  const doubtful = (way: Way | undefined) => way?.asks.find(isDoubtful)?.field;
  const taker = named ?? takerOf(need, 'press', shop);
  if (typeof taker !== 'string')
    return { by: 'press', own: taker, asks: doubtful(lacksOf(need, taker, shop)) };
  const wanting = usual && (usual.lacks.length > 0 || doubtful(usual) !== undefined);
  const own = wanting && named === undefined ? others.find(isClear)?.own : undefined;
  if (own) return { by: 'press', own };
  if (!usual || usual.lacks.length === 0) return { by: 'press', asks: doubtful(usual) };
  const far = usual.lacks.find((lack) => lack.code === 'short' && lack.field === 'pressThroat');
  const passed = [...(far && usual.lacks.length === 1 ? [] : [usual]), ...others];
  return {
    by: 'template',
    ...(far && 'by' in far ? { short: far.by } : {}),
    passed: passed.filter(({ lacks }) => lacks.length > 0),
  };
}

/** `short`: how much farther in the row is than the press reaches, inches; `passed`: what else presses lack. */
type OnWhat = {
  readonly by: BoredWith;
  readonly own?: OwnMachine | undefined;
  readonly short?: Length;
  readonly passed?: readonly Way[];
  readonly asks?: ShopField | undefined;
};

/**
 * The rows of holes of a piece, each bored at one setting: left and right walls of a bay share it. Its figure is how
 * far the row stands from its edge; where each hole is along the piece is marked.
 */
export const boresOf = (part: Part, piece: Piece, at: At): readonly Operation[] =>
  (part.bores ?? []).flatMap((said) => {
    const { tape } = at;
    const { asks, short, passed = [], by, own } = boredOn(said, part, at);
    const bore = { ...said, by };
    const [first, last] = [bore.holes[0], bore.holes[bore.holes.length - 1]];
    if (!first || !last) return [];
    const marks = rowTape(bore, tape);
    const figure = markAt(bore.off, marks);
    const face = part.name.role === 'partition' ? bore.face : undefined;
    const setup = setupOf({
      machine: bore.by,
      own,
      cutter: bore.dia,
      height: bore.deep,
      sets: bore.by === 'press' ? 'fence-to-bit' : 'row-from-front',
      figure,
      on: { at: 'edge', named: bore.edge ?? 'front' },
    });
    return {
      id: opId(part.id, `bore~${bore.id}`, piece.id),
      ...(bore.also ? { also: bore.also.map((id) => opId(part.id, `bore~${id}`, piece.id)) } : {}),
      part: part.id,
      copy: piece.id,
      name: face ? { ...piece.name, copy: face } : piece.name,
      what: 'bore',
      which: {
        is: 'row',
        bore,
        ...(face ? { face } : {}),
        ...(short ? { short } : {}),
        ...(passed.length > 0 ? { passed } : {}),
      },
      setup,
      figure: figure.value,
      after: [],
      row: { first: markAt(first.at, marks).value, last: markAt(last.at, marks).value },
      placing: bored(part, { ...bore, copy: piece.name.copy }),
      ...(asks ? { asks, cannot: true } : {}),
    };
  });
