import { inches, isPositive, type Length } from '../../length/length';
import { whole } from '../../length/round';
import { soldStrips } from '../shelves/sold-strips';
import { type BuyingLine, idOf } from './line';

/** A set of loose shelves, and what it lies on. Counts whole; lengths in inches. */
export type ShelfSet = {
  /** The case it stands in, by name. */
  readonly place: string;
  readonly shelves: number;
  /** Pins or clips over the four of each shelf. */
  readonly spares: number;
  readonly on: OnPins | OnStrips;
};

/** Holes so wide, where they are laid out. */
type OnPins = { readonly is: 'pins'; readonly dia?: Length };

type OnStrips = {
  readonly is: 'strips';
  readonly width: Length;
  readonly thick: Length;
  /** The longest of each opening, one of four alike. */
  readonly pieces: readonly Length[];
  /** How long one is as sold, where that is said. */
  readonly sold?: Length | undefined;
};

/** A shelf lies on four, one near each corner. */
const eachShelf = 4;

/** Grooves of a bay: two in either wall. */
const grooves = 4;

/** What a saw takes between two pieces of a strip. Common practice, no source. Inches. */
const cut = inches(1n, 16n);

/**
 * Pins, clips and metal strips for the loose shelves of a job: a line for each size, every set in it.
 *
 * @param sets inches; counts whole, >= 0
 * @example shelfLines([{ place: 'Case', shelves: 3, spares: 2, on: { is: 'pins' } }])[0].amount // 14
 */
export const shelfLines = (sets: readonly ShelfSet[]): readonly BuyingLine[] => [
  ...byKey(sets, ({ on }) => (on.is === 'pins' ? `pins/${on.dia ? idOf(on.dia) : 'any'}` : undefined), held),
  ...byKey(sets, ({ on }) => (on.is === 'strips' ? `clips/${idOf(on.width)}` : undefined), held),
  ...byKey(sets, stripKey, strips),
];

/** Strips of which it is known how long they are sold are counted so, the others by the piece. */
function stripKey({ on }: ShelfSet): string | undefined {
  if (on.is !== 'strips' || on.pieces.length === 0) return undefined;
  const size = `strips/${idOf(on.width)}x${idOf(on.thick)}`;
  return on.sold && isPositive(on.sold) ? `${size}x${idOf(on.sold)}` : size;
}

type Line = (id: string, first: ShelfSet, own: readonly ShelfSet[]) => BuyingLine;

function byKey(
  sets: readonly ShelfSet[],
  keyOf: (set: ShelfSet) => string | undefined,
  line: Line,
): readonly BuyingLine[] {
  const found = new Map<string, readonly ShelfSet[]>();
  for (const set of sets) {
    const key = keyOf(set);
    if (key) found.set(key, [...(found.get(key) ?? []), set]);
  }
  return [...found].flatMap(([key, own]) => (own[0] ? [line(key, own[0], own)] : []));
}

const total = (own: readonly ShelfSet[], of: 'shelves' | 'spares'): number =>
  own.reduce((n, set) => n + set[of], 0);

const named = (own: readonly ShelfSet[]): string => [...new Set(own.map(({ place }) => place))].join(', ');

function held(id: string, { on }: ShelfSet, own: readonly ShelfSet[]): BuyingLine {
  const spares = total(own, 'spares');
  const uses = own.map(({ place, shelves }) => ({ place, count: shelves }));
  const amount = whole(eachShelf * total(own, 'shelves') + spares);
  const line = { id, name: named(own), amount };
  return on.is === 'pins'
    ? {
        ...line,
        group: 'pins',
        unit: 'pin',
        why: { code: 'pins', ...(on.dia ? { dia: on.dia } : {}), uses, spares },
      }
    : { ...line, group: 'clips', unit: 'clip', why: { code: 'clips', width: on.width, uses, spares } };
}

const piecesOf = ({ on }: ShelfSet): readonly Length[] => (on.is === 'strips' ? on.pieces : []);

function strips(id: string, { on }: ShelfSet, own: readonly ShelfSet[]): BuyingLine {
  const pieces = own.flatMap(piecesOf);
  const { width, thick, sold } = on as OnStrips;
  const taken = sold && isPositive(sold) ? soldStrips({ pieces, sold, cut }) : undefined;
  return {
    id,
    group: 'strips',
    name: named(own),
    amount: whole(grooves * (taken ? taken.count : pieces.length)),
    unit: 'strip',
    why: {
      code: 'strips',
      width,
      thick,
      pieces,
      each: grooves,
      ...(sold && taken ? { from: { sold, cut, left: taken.left } } : {}),
    },
  };
}
