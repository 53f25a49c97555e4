import type { Length } from '../../length/length';
import { whole } from '../../length/round';
import { type Boxes, type BuyingLine, idOf } from './line';

/** Screws of one length where the job states how many. Inches; counts whole, >= 0. */
export type ScrewSchedule = {
  /** The bank whose fronts they hold, or the place they go, by name. */
  readonly bank: string;
  readonly long: Length;
  /** Its number, where that is said. */
  readonly gauge?: 6 | 8 | 10;
  readonly pieces: number;
  /** In each piece. */
  readonly each: number;
  /** At one place of a case, and not in fronts. */
  readonly along?: true;
};

/**
 * So many screws in boxes of a hundred and of fifty, with as few over as those allow. Common practice, no source.
 *
 * @param count whole, >= 0
 * @example boxesFor(130) // one of a hundred, one of fifty
 */
export function boxesFor(count: number): Boxes {
  const rest = count % 100;
  const fifties = rest > 0 && rest <= 50 ? 1 : 0;
  return { hundreds: Math.floor(count / 100) + (rest > 50 ? 1 : 0), fifties };
}

/** Screws in so many boxes. @example screwsIn({ hundreds: 1, fifties: 1 }) // 150 */
export const screwsIn = ({ hundreds, fifties }: Boxes): number => 100 * hundreds + 50 * fifties;

/**
 * A line for each length and number of screw, every schedule of the two in it, up to whole boxes.
 *
 * @param schedules inches; counts whole, >= 0
 * @example screwLines([{ bank: 'Drawers', long: inches(1n), pieces: 5, each: 4 }])[0].amount // 50
 */
export function screwLines(schedules: readonly ScrewSchedule[]): readonly BuyingLine[] {
  const byKind = new Map<string, ScrewSchedule[]>();
  for (const s of schedules.filter((x) => x.pieces * x.each > 0))
    byKind.set(keyOf(s), [...(byKind.get(keyOf(s)) ?? []), s]);
  return [...byKind].flatMap(([key, own]) => lineOf(key, own));
}

/** @example keyOf({ long: inches(5n, 2n), gauge: 8, ...rest }) // '5~2~no8' */
const keyOf = ({ long, gauge }: ScrewSchedule): string => `${idOf(long)}${gauge ? `~no${gauge}` : ''}`;

function lineOf(key: string, own: readonly ScrewSchedule[]): readonly BuyingLine[] {
  const [first] = own;
  if (!first) return [];
  const count = own.reduce((n, s) => n + s.pieces * s.each, 0);
  const boxes = boxesFor(count);
  const uses = own.map(({ bank, pieces, each, along }) => ({
    bank,
    pieces,
    each,
    ...(along ? { along } : {}),
  }));
  return [
    {
      id: `screws/${key}`,
      group: 'screws',
      name: own.map((s) => s.bank).join(', '),
      amount: whole(screwsIn(boxes)),
      unit: 'screw',
      why: {
        code: 'screws',
        long: first.long,
        ...(first.gauge ? { gauge: first.gauge } : {}),
        count,
        uses,
        boxes,
      },
    },
  ];
}
