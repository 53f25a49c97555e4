import { type Length, longest } from '../../length/length';
import { whole } from '../../length/round';
import { type BuyingLine, idOf } from './line';

/** The drawers of a bank that run on slides. Inches. */
type OnSlides = {
  readonly name: string;
  /** Whole, >= 0: over all columns. */
  readonly drawers: number;
  readonly long: Length;
  /** So much longer than the case inside allows, > 0, where that is known. */
  readonly tooLong?: Length;
};

/**
 * One pair a drawer, a line for each length. By length alone: what a slide measures across is found out once it is
 * bought, and must not lose the tick.
 *
 * @param banks inches, > 0
 * @returns a line for each length, in the order they come
 * @example slideLines([{ name: 'Drawers', drawers: 5, long: inches(16n) }])[0].amount // 5 pairs
 */
export function slideLines(banks: readonly OnSlides[]): readonly BuyingLine[] {
  const byLength = new Map<string, OnSlides[]>();
  for (const bank of banks.filter((b) => b.drawers > 0))
    byLength.set(idOf(bank.long), [...(byLength.get(idOf(bank.long)) ?? []), bank]);
  return [...byLength].flatMap(([key, own]) => lineOf(key, own));
}

function lineOf(key: string, own: readonly OnSlides[]): readonly BuyingLine[] {
  const [first] = own;
  if (!first) return [];
  const drawers = own.reduce((n, b) => n + b.drawers, 0);
  const banks = own.map((b) => b.name);
  const [over, ...rest] = own.flatMap((b) => b.tooLong ?? []);
  return [
    {
      id: `slides/${key}`,
      group: 'slides',
      name: banks.join(', '),
      amount: whole(drawers),
      unit: 'pair',
      why: {
        code: 'slides',
        long: first.long,
        drawers,
        banks,
        ...(over ? { tooLong: longest(over, ...rest) } : {}),
      },
    },
  ];
}
