import { ratio } from '../../length/length';
import { whole } from '../../length/round';
import { type BoardFeet, type BuyingLine, idOf } from './line';
import type { SheetNeed } from './need';

/**
 * How many sheets or sticks to buy: those the layout takes, less those at hand.
 *
 * @param need counts whole, >= 0
 * @returns whole, >= 0
 * @example toBuy({ ...need, count: 3, have: 1 }) // 2
 */
export const toBuy = ({ count, have }: Pick<SheetNeed, 'count' | 'have'>): number =>
  Math.max(0, count - have);

/**
 * Whether one sheet more is worth offering: a part's worth of scrap is wanted for test cuts. Not where a piece is
 * left, nor where a whole sheet stays at hand, nor while nothing is laid out: what is left is then not known.
 *
 * @param need counts whole, >= 0
 * @example wantsTestSheet({ ...need, count: 2, have: 0, how: 'laid' }) // true: no spare in what is left
 */
export const wantsTestSheet = (need: SheetNeed): boolean =>
  need.kind === 'sheet' && need.count > 0 && need.how !== 'least' && !need.spare && need.have <= need.count;

/**
 * Lines for sheets and sticks, one a stock, and one more sheet offered where nothing is left for test cuts. What is at
 * hand is not listed.
 *
 * @param needs counts whole, >= 0; lengths in inches, > 0
 * @param solid the same wood by the board foot, by its stock, to be said beside sticks
 * @returns lines in sheets and sticks
 * @example layoutLines([{ ...need, count: 3, have: 1 }], () => undefined)[0].amount // 2
 */
export function layoutLines(
  needs: readonly SheetNeed[],
  solid: (stock: string) => BoardFeet | undefined,
): readonly BuyingLine[] {
  return needs.flatMap((need) => {
    const id = idFor(need, needs);
    const feet = need.kind === 'stick' ? solid(need.stock) : undefined;
    return [...own(id, need, feet), ...(wantsTestSheet(need) ? [testLine(id, need)] : [])];
  });
}

/** A stock that comes in two lengths has two lines; its sizes tell them apart. */
function idFor(need: SheetNeed, all: readonly SheetNeed[]): string {
  const alike = all.filter((n) => n.stock === need.stock && n.kind === need.kind);
  const size = need.wide ? `${idOf(need.long)}x${idOf(need.wide)}` : idOf(need.long);
  return alike.length > 1 ? `${need.stock}~${size}` : need.stock;
}

function own(id: string, need: SheetNeed, solid: BoardFeet | undefined): readonly BuyingLine[] {
  const count = toBuy(need);
  if (count === 0) return [];
  const group = need.kind === 'sheet' ? 'sheets' : 'sticks';
  return [
    {
      id: `${group}/${id}`,
      group,
      name: need.name,
      amount: whole(count),
      unit: need.kind,
      why: { code: 'layout', need, ...(solid ? { solid } : {}) },
    },
  ];
}

const testLine = (id: string, { name }: SheetNeed): BuyingLine => ({
  id: `sheets/${id}~tests`,
  group: 'sheets',
  name,
  amount: ratio(1n),
  unit: 'sheet',
  why: { code: 'tests' },
});
