import { type Built, type Case, type Inside, newCase } from '../trade/carcass/case';
import { byStock, type Read } from './by-stock';

/** A case of its fields as read: what each piece is of is gathered into one list. */
export const caseOf = (
  id: string,
  own: Read,
  under: { readonly inside: readonly Inside[]; readonly built: Readonly<Record<string, Built>> },
): Case => ({ ...newCase(id), ...byStock(own), ...under });

/** A thing in a bay before anything is said of it. */
export const newInside = (id: string): Inside => ({ id, kind: 'loose', bay: 1 });
