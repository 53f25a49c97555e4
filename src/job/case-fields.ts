import { type Built, type Case, type Inside, newCase, type StockRole as Of } from '../trade/carcass/case';

type Read = Readonly<Record<string, unknown>>;

const stocks: readonly Of[] = [
  'side',
  'bottom',
  'top',
  'partition',
  'shelf',
  'tray',
  'back',
  'cleat',
  'frame',
  'loose',
  'edging',
  'toe',
  'base',
  'cross',
  'filler',
];

/** A case of its fields as read: what each piece is of is gathered into one list. */
export function caseOf(
  id: string,
  own: Read,
  under: { readonly inside: readonly Inside[]; readonly built: Readonly<Record<string, Built>> },
): Case {
  const of = stocks.flatMap((stock) => {
    const value = own[`${stock}Stock`];
    return typeof value === 'string' && value !== '' ? [[stock, value] as const] : [];
  });
  const rest = Object.fromEntries(Object.entries(own).filter(([name]) => !name.endsWith('Stock')));
  return { ...newCase(id), ...rest, ...under, stocks: Object.fromEntries(of) };
}

/** A thing in a bay before anything is said of it. */
export const newInside = (id: string): Inside => ({ id, kind: 'loose', bay: 1 });
