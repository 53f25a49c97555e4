import { compare, inches, type Length } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { OwnId, OwnMachine, Tool } from '../trade/machines/shop';
import type { Piece, StackBox } from '../trade/stacks/pieces';
import type { Json } from './entry';
import { ownMachines, ownRows, rowsOfOwn } from './own-machines';
import { orderOf, toolOrderKey } from './tool-order';

/** What lies in the shop's drawers, kept once for every job. Inches. */
export type ShopLists = {
  readonly stack: StackBox;
  readonly shims: readonly Piece[];
  /** Lengths of the screws on the shelf. */
  readonly screws: readonly Length[];
  /** In what order the tools of the shop are tried, where that was said. */
  readonly order?: readonly (Tool | OwnId)[] | undefined;
  /** Machines it added for itself, where there are any. */
  readonly own?: readonly OwnMachine[];
};

const sizes = (list: readonly (readonly [bigint, bigint])[]): readonly Length[] =>
  list.map(([n, d]) => inches(n, d));

/**
 * Until the shop says otherwise: no set and no shims, which are asked for, and screws of the usual lengths. Common
 * practice, no source.
 */
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

const inOrder = (json: Json | undefined): Pick<ShopLists, 'order'> => {
  const order = orderOf(json);
  return order ? { order } : {};
};

/** The lists as they were once kept whole, checked: what is not readable stands at its usual. */
function readWhole(json: Json | undefined): ShopLists {
  if (!isRead(json)) return usualLists;
  const stack = isRead(json.stack) ? json.stack : {};
  return {
    stack: { ...singlesOf((name) => length(stack[name])), pieces: list(stack.pieces, piece) ?? [] },
    shims: list(json.shims, piece) ?? usualLists.shims,
    screws: list(json.screws, length) ?? usualLists.screws,
    ...inOrder(json.order),
    ...ownIn({ lists: json }),
  };
}

const ownIn = (rows: Parameters<typeof ownRows>[0]): Pick<ShopLists, 'own'> => {
  const own = ownMachines(ownRows(rows));
  return own ? { own } : {};
};

const singles = ['outer', 'arbor', 'correction'] as const;
const singlesOf = (of: (name: string) => Length | undefined): Omit<StackBox, 'pieces'> =>
  Object.fromEntries(singles.flatMap((name) => (of(name) ? [[name, of(name)]] : [])));

/**
 * What lies in the drawers, thing by thing: `set/outer` → a length, or empty for none; `screw/3~4` → how many, or
 * whether any.
 */
type Shelf = Readonly<Record<string, Json>>;

const inKey = (size: Length): string => toStored(size).replace('/', '~');
const ofPieces = (drawer: 'set' | 'shims', pieces: readonly Piece[]) =>
  pieces.map((p): readonly [string, Piece] => [`shelf/${drawer}/${p.kind}/${inKey(p.size)}`, p]);

/** The lists thing by thing. Pieces of one kind and size are one thing. */
function shelfOf({ stack, shims, screws, order, own = [] }: ShopLists): ReadonlyMap<string, Json> {
  const shelf = new Map<string, Json>(
    singles.flatMap((name) => {
      const size = stack[name];
      return size ? [[`shelf/set/${name}`, toStored(size)] as const] : [];
    }),
  );
  for (const [key, { count }] of [...ofPieces('set', stack.pieces), ...ofPieces('shims', shims)])
    shelf.set(key, Number(shelf.get(key) ?? 0) + count);
  for (const size of screws) shelf.set(`shelf/screw/${inKey(size)}`, 1);
  if (order) shelf.set(toolOrderKey, order.join(' '));
  for (const [key, value] of own.flatMap((one) => Object.entries(rowsOfOwn(one)))) shelf.set(key, value);
  return shelf;
}

/**
 * What is to be kept for lists to come to others: the things that differ, each by itself.
 *
 * @example shelfChanges(before, { ...before, screws: [] }) // every screw there was at 0
 */
export function shelfChanges(before: ShopLists, after: ShopLists): Shelf {
  const [old, now] = [shelfOf(before), shelfOf(after)];
  const gone = [...old].flatMap(([key, value]) =>
    now.has(key) ? [] : [[key, typeof value === 'number' ? 0 : ''] as const],
  );
  return Object.fromEntries([...gone, ...[...now].filter(([key, value]) => old.get(key) !== value)]);
}

/** The lists as kept: once whole, and over that thing by thing. */
export function readLists(whole: Json | undefined, shelf: Shelf = {}): ShopLists {
  const things = shelfOf(readWhole(whole));
  const all = new Map([...things, ...Object.entries(shelf)]);
  const single = (name: string) => length(all.get(`shelf/set/${name}`));
  const pieces = (drawer: string) =>
    [...all].flatMap(([key, count]): readonly Piece[] => {
      const [, at, kind, size = ''] = key.split('/');
      const read =
        at === drawer && count !== 0
          ? piece({ size: size.replace('~', '/'), count, kind: kind ?? '' })
          : undefined;
      return read ? [read] : [];
    });
  const screws = [...all].flatMap(([key, count]) => {
    const [, at, size = ''] = key.split('/');
    return at === 'screw' && count !== 0 ? (length(size.replace('~', '/')) ?? []) : [];
  });
  return {
    stack: { ...singlesOf(single), pieces: pieces('set') },
    shims: pieces('shims'),
    screws: screws.sort(compare),
    ...inOrder(all.get(toolOrderKey)),
    ...ownIn(Object.fromEntries(all)),
  };
}

const written = (p: Piece): Json => ({ size: toStored(p.size), count: p.count, kind: p.kind });

/** The lists in one, as a copy of everything carries them: lengths exact, as text. */
export const writeLists = ({ stack, shims, screws, order, own }: ShopLists): Json => ({
  stack: {
    ...Object.fromEntries(
      singles.flatMap((name) => {
        const size = stack[name];
        return size ? [[name, toStored(size)]] : [];
      }),
    ),
    pieces: stack.pieces.map(written),
  },
  shims: shims.map(written),
  screws: screws.map(toStored),
  ...(order ? { order: order.join(' ') } : {}),
  ...(own ? { own: Object.assign({}, ...own.map(rowsOfOwn)) } : {}),
});
