import { inches, type Length } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { Piece, StackBox } from '../trade/stacks/pieces';
import type { Json } from './entry';

/** What lies in the shop's drawers, kept once for every job. Inches. */
export type ShopLists = {
  readonly stack: StackBox;
  readonly shims: readonly Piece[];
  /** Lengths of the screws on the shelf. */
  readonly screws: readonly Length[];
};

const sizes = (list: readonly (readonly [bigint, bigint])[]): readonly Length[] =>
  list.map(([n, d]) => inches(n, d));

/** Until the shop says otherwise: no set and no shims, which are asked for, and screws of the usual lengths. Common practice, no source. */
export const usualLists: ShopLists = {
  stack: { pieces: [] },
  shims: [],
  screws: sizes([
    [3n, 4n],
    [1n, 1n],
    [5n, 4n],
    [3n, 2n],
    [2n, 1n],
    [5n, 2n],
    [3n, 1n],
  ]),
};

type Read = { readonly [key: string]: Json };
const isRead = (json: Json | undefined): json is Read =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

const length = (json: Json | undefined): Length | undefined => {
  const found = typeof json === 'string' ? fromStored(json) : undefined;
  return found?.ok ? found.value : undefined;
};

const list = <T>(json: Json | undefined, read: (item: Json) => T | undefined): readonly T[] | undefined =>
  Array.isArray(json) ? json.slice(0, 200).flatMap((item: Json) => read(item) ?? []) : undefined;

function piece(json: Json): Piece | undefined {
  if (!isRead(json)) return undefined;
  const size = length(json.size);
  const { count, kind } = json;
  if (!size || typeof count !== 'number' || !Number.isInteger(count) || count < 0 || count > 99)
    return undefined;
  return { size, count, kind: kind === 'chipper' ? 'chipper' : 'shim' };
}

/** The lists as kept, checked: what is not readable stands at its usual. */
export function readLists(json: Json | undefined): ShopLists {
  if (!isRead(json)) return usualLists;
  const stack = isRead(json.stack) ? json.stack : {};
  const outer = length(stack.outer);
  const arbor = length(stack.arbor);
  const correction = length(stack.correction);
  return {
    stack: {
      ...(outer ? { outer } : {}),
      pieces: list(stack.pieces, piece) ?? [],
      ...(arbor ? { arbor } : {}),
      ...(correction ? { correction } : {}),
    },
    shims: list(json.shims, piece) ?? usualLists.shims,
    screws: list(json.screws, length) ?? usualLists.screws,
  };
}

const written = (p: Piece): Json => ({ size: toStored(p.size), count: p.count, kind: p.kind });

/** The lists as kept: lengths exact, as text. */
export const writeLists = ({ stack, shims, screws }: ShopLists): Json => ({
  stack: {
    ...(stack.outer ? { outer: toStored(stack.outer) } : {}),
    pieces: stack.pieces.map(written),
    ...(stack.arbor ? { arbor: toStored(stack.arbor) } : {}),
    ...(stack.correction ? { correction: toStored(stack.correction) } : {}),
  },
  shims: shims.map(written),
  screws: screws.map(toStored),
});
