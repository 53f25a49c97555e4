import { toStored } from '../length/stored';
import { machineAt } from '../trade/machines/machines';
import type { Card } from '../trade/setups/checklist';
import type { Operation } from '../trade/setups/operation';
import type { Checklist } from './checklist';

/** A setup as it is called on paper: its number in the order, and two signs that change with what is cut at it. */
export type SetupCode = { readonly no: number; readonly check: string; readonly card: Card };

/** Signs that are not taken for one another: no I, O, 0, 1. */
const signs = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';

/** Every setup in order with its code. */
export const setupCodes = ({ cards }: Pick<Checklist, 'cards'>): readonly SetupCode[] =>
  cards.map((card, k) => ({ no: k + 1, check: checkOf(card), card }));

/** Made of a setup, its figure, and its pieces in their order. */
const checkOf = ({ id, operations }: Card): string =>
  signsOf([id, ...operations.map((op) => `${op.id}=${toStored(op.figure)}`)]);

/**
 * Two signs made of all that stands on a page: one that says others was printed before something of it changed. One
 * change in 1,024 is not told by them.
 */
export function signsOf(said: readonly string[]): string {
  let sum = 0;
  for (const sign of said.join(' ')) sum = (sum * 31 + (sign.codePointAt(0) ?? 0)) % 1_000_003;
  return `${signs[sum % 32] ?? ''}${signs[Math.floor(sum / 32) % 32] ?? ''}`;
}

/** The letter of a box of a setup: A to Z, then AA, AB … @param k from 0 @example letterAt(26) // 'AA' */
export const letterAt = (k: number): string =>
  `${k >= 26 ? letterAt(Math.floor(k / 26) - 1) : ''}${String.fromCharCode(65 + (k % 26))}`;

/** Whether something is set for a card, cutter or blade, before anything is cut: it has a box of its own on paper. */
export const isSetFor = ({ operations: [op] }: Card): boolean =>
  op !== undefined &&
  !op.cannot &&
  op.setup.machine !== 'saw' &&
  ['stack', 'shoulders', 'bit', 'blade'].includes(machineAt(op.setup.machine).cuts);

/** The code of an operation: the number of its setup and its letter. */
export const opCodes = (list: Checklist): ReadonlyMap<Operation, string> =>
  new Map(
    setupCodes(list).flatMap(({ no, card }) =>
      card.operations.map((op, k) => [op, `${no} ${letterAt(k)}`] as const),
    ),
  );
