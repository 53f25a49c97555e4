import type { Length } from '../../../src/length/length';
import { readLength } from '../../../src/length/read';
import type { Tape } from '../../../src/length/tape';
import type { Board, Run, Wide } from '../../../src/trade/grooves/board';
import { type Layout, layOut } from '../../../src/trade/grooves/lay-out';
import { settingsFor } from '../../../src/trade/grooves/settings';
import type { Shop } from '../../../src/trade/machines/shop';

/** A length as it is written: `13 7/16`. */
export function l(text: string): Length {
  const negative = text.startsWith('-');
  const read = readLength(negative ? text.slice(1) : text);
  if (!read.ok) throw new Error(`not a length: ${text}`);
  return negative ? (read.value.value.neg() as Length) : read.value.value;
}

/** A length back in words, exact whatever its denominator: `1 91/128`. */
export const w = (x: Length | undefined): string => x?.toFraction(true) ?? 'none';

const plain: Run = { id: 'r', spacing: 'pitch', face: 'A', point: 'near', centred: false, at: [] };
export const run = (over: Partial<Run> = {}): Run => ({ ...plain, ...over });
export const wide = (over: Partial<Wide> = {}): Wide => ({ id: 'w', face: 'A', ...over });

const bare: Board = {
  id: 'b',
  name: 'Side',
  made: 'alike',
  copies: 1,
  end: 'bottom',
  mateName: 'partition',
  runs: [],
  wides: [],
  machine: 'stop',
  against: 'reference',
  stopSide: 'left',
  grows: 'toward',
  guide: 'reference',
};
export const board = (over: Partial<Board> = {}): Board => ({ ...bare, ...over });

export const nears = (layout: Layout): readonly string[] => layout.grooves.map((g) => w(g.near));
export const codes = (found: readonly { readonly code: string }[]): readonly string[] =>
  found.map((f) => f.code);

/** Settings of a board laid out. */
export function set(over: Partial<Board>, shop: Shop = {}, tape: Tape = '1/64') {
  const b = board({ length: l('64 1/4'), ...over });
  return settingsFor(layOut(b), { board: b, shop, tape });
}

/** One groove, as a list of one. */
export const one = (near: string, width: string, more: Partial<Run> = {}): Run =>
  run({ spacing: 'given', at: [l(near)], width: l(width), ...more });
