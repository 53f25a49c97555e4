import type { Length, Ratio } from '../../length/length';
import type { Part } from '../carcass/part';
import type { WorkedFronts } from '../fronts/worked';
import { bandLines, type EdgedShelves } from './edging';
import { type JoinSchedule, joinLines } from './joins';
import type { BoardFeet, BuyingLine, NotListed } from './line';
import type { SheetNeed } from './need';
import { type ScrewSchedule, screwLines } from './screws';
import { layoutLines } from './sheets';
import { type ShelfSet, shelfLines } from './shelf-hardware';
import { slideLines } from './slides';
import { type BuyingStock, solidOf, solidPiecesOf } from './solid';

/** A bank as the list buys for it. Inches. */
export type BuyingBank = {
  readonly name: string;
  /** Nothing while they do not work out. */
  readonly fronts?: WorkedFronts;
  /** How thick its fronts are. */
  readonly thick?: Length;
  readonly slideLong?: Length;
  /** Its boxes hang in wood: no slides are bought. */
  readonly noSlides?: true;
  /** So much longer than the case inside allows, > 0, where that is known. */
  readonly slideTooLong?: Length;
};

export type BuyingFor = {
  readonly needs: readonly SheetNeed[];
  readonly stocks: readonly BuyingStock[];
  readonly parts: readonly Part[];
  readonly banks: readonly BuyingBank[];
  readonly screws: readonly ScrewSchedule[];
  /** Dowels and biscuits of joints. */
  readonly joins?: readonly JoinSchedule[];
  /** Loose shelves by what they lie on, and those with edging stuck on. */
  readonly loose?: readonly ShelfSet[];
  readonly edged?: readonly EdgedShelves[];
  /** Share of solid wood bought over what the parts hold, >= 0; a fifth when not said. */
  readonly waste?: Ratio;
};

/** What to buy, and what the job asks for that is not counted in it. */
type Buying = { readonly lines: readonly BuyingLine[]; readonly not: readonly NotListed[] };

/**
 * What a job needs from the yard, each line with why so many. Nothing is listed that the job does not state.
 * Wood that is laid out in sticks is not bought by the board foot as well: its board feet stand beside the sticks.
 *
 * @param what needs from the layout, stock, parts and banks; inches
 * @returns lines by group, in the order of the list; and what is left out, to be said
 * @throws RangeError if the waste is below 0: a mistake in the program
 * @example buyingOf({ needs, stocks, parts, banks: [], screws: [] }).lines[0].amount // sheets to buy
 */
export function buyingOf(what: BuyingFor): Buying {
  const { needs, parts, stocks } = what;
  const feet = new Map<string, BoardFeet>();
  for (const stock of stocks.filter((s) => s.kind === 'stick')) {
    const solid = solidOf(solidPiecesOf(parts, stock.id), stock, what.waste);
    if (solid) feet.set(stock.id, solid);
  }
  const laidOut = layoutLines(needs, (stock) => feet.get(stock));
  return {
    lines: [
      ...laidOut.filter((line) => line.group === 'sheets'),
      ...laidOut.filter((line) => line.group === 'sticks'),
      ...solidLines(what, feet),
      ...bandLines(
        what.banks.flatMap(({ name, fronts, thick }) => (fronts && thick ? [{ name, fronts, thick }] : [])),
        what.edged,
      ),
      ...shelfLines(what.loose ?? []),
      ...slideLines(what.banks.flatMap(onSlides)),
      ...screwLines(what.screws),
      ...joinLines(what.joins ?? []),
    ],
    not: notListed(what),
  };
}

function solidLines(
  { needs, stocks }: BuyingFor,
  feet: ReadonlyMap<string, BoardFeet>,
): readonly BuyingLine[] {
  const inSticks = new Set(needs.filter((n) => n.kind === 'stick').map((n) => n.stock));
  return stocks.flatMap((stock): readonly BuyingLine[] => {
    const solid = feet.get(stock.id);
    if (!solid || inSticks.has(stock.id)) return [];
    const { buy: amount } = solid;
    const why = { code: 'board-feet', solid } as const;
    return [{ id: `solid/${stock.id}`, group: 'solid', name: stock.name, amount, unit: 'board-foot', why }];
  });
}

const drawersIn = (fronts: WorkedFronts): number => fronts.columns.flatMap((c) => c.heights).length;

const onSlides = ({ name, fronts, slideLong, slideTooLong }: BuyingBank) =>
  fronts && slideLong
    ? [
        {
          name,
          drawers: drawersIn(fronts),
          long: slideLong,
          ...(slideTooLong ? { tooLong: slideTooLong } : {}),
        },
      ]
    : [];

const count = (pieces: readonly { readonly count: number }[]): number =>
  pieces.reduce((n, p) => n + p.count, 0);

function notListed({ needs, stocks, parts, banks }: BuyingFor): readonly NotListed[] {
  const laidOut = new Set(needs.map((n) => n.stock));
  const sheets = stocks.flatMap((stock): readonly NotListed[] => {
    const pieces = count(solidPiecesOf(parts, stock.id));
    const open = stock.kind === 'sheet' && pieces > 0 && !laidOut.has(stock.id);
    return open ? [{ code: 'not-laid-out', name: stock.name, pieces }] : [];
  });
  const known = new Set(stocks.map((s) => s.id));
  const loose = parts.filter((p) => p.stuff === undefined || !known.has(p.stuff));
  const pieces = loose.reduce((n, p) => n + p.copies, 0);
  return [
    ...sheets,
    ...(pieces > 0 ? [{ code: 'no-stock', pieces, names: loose.map((p) => p.name) } as const] : []),
    ...banks.flatMap(({ name, fronts, slideLong, noSlides }): readonly NotListed[] => {
      if (!fronts) return [{ code: 'bank-not-worked', name }];
      return slideLong || noSlides ? [] : [{ code: 'slides-not-said', name, drawers: drawersIn(fronts) }];
    }),
  ];
}
