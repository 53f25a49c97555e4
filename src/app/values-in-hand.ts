import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Json } from '../job/entry';
import { readSettings, type Settings, shelfKey } from '../job/settings';
import type { ShopTools } from '../job/shop-tools';
import type { Length } from '../length/length';
import type { Result } from '../length/result';
import type { SaveError } from '../store/db';
import type { Store } from '../store/store';
import type { Shop, ShopField } from '../trade/machines/shop';
import type { UnsavedBox } from './unsaved';

/** This phone's ways and the shop's figures: as kept, and over that what is on its way. */
export type ValuesInHand = {
  readonly settings: ReadonlySignal<Settings>;
  readonly shop: ReadonlySignal<Shop>;
  /** The half sum of Figure, the lines of its strip and the steps back, each by its key. */
  readonly figure: ReadonlySignal<Readonly<Record<string, Json>>>;
  /** Whether figures or things of the shop are on their way to storage. */
  readonly underWay: ReadonlySignal<boolean>;
  readonly keep: (patch: Partial<Settings>) => Promise<void>;
  readonly keepShop: (field: ShopField, value: Length | undefined) => Promise<void>;
  /** Things of the shop's drawers, each by its own key. */
  readonly keepOnShelf: (patch: Readonly<Record<string, Json>>) => Promise<void>;
  readonly keepFigure: (rows: Readonly<Record<string, Json>>) => void;
  /** Everything as it is kept now. */
  readonly load: () => Promise<void>;
  /** What other pages write too: figures, the shop's drawers, what other phones have. The rest is this page's own. */
  readonly catchUp: () => Promise<void>;
};

type Row =
  | { readonly of: 'settings'; readonly key: string; readonly value: Json }
  | { readonly of: 'shop'; readonly key: ShopField; readonly value: Length | undefined };

const nameOf = ({ of, key }: Row): string => `${of} ${key}`;

/** Kept for the next start alone: nobody asked for them. */
const quiet: readonly string[] = ['here', 'saw', 'job', 'handed'];

type Rows = Readonly<Record<string, Json>>;
const only = (rows: Rows, is: (key: string) => boolean): Rows =>
  Object.fromEntries(Object.entries(rows).filter(([key]) => is(key)));

const isLine = (key: string): boolean => key.startsWith('strip/');
const isStepBack = (key: string): boolean => key.startsWith('undo/');
const isFigure = (key: string): boolean => key === 'figure' || isLine(key) || isStepBack(key);

/** Written by every page, and shown by every page; the half sum and the rest of the settings are each page's own. */
const shared = (key: string): boolean =>
  key === 'lists' || key === 'handed' || shelfKey(key) !== undefined || isLine(key);

/** As kept, and what is on its way over it. */
type Held = {
  readonly shop: Signal<Shop>;
  readonly settings: Signal<Rows>;
  readonly waiting: Signal<readonly Row[]>;
  /** Reads which machines the shop has, and in what order they are tried, once that part of the app is here. */
  readonly reads: Signal<((rows: Rows) => ShopTools) | undefined>;
};

type Planning = Promise<{ readonly shopTools: (rows: Rows) => ShopTools }>;

export async function valuesInHand(
  store: Store,
  unsaved: Pick<UnsavedBox, 'failed' | 'saved'>,
  planning: Planning,
): Promise<ValuesInHand> {
  const reads: Held['reads'] = signal(undefined);
  // before what works out a job is here, so that no plan is made without them
  void planning.then(
    ({ shopTools }) => {
      reads.value = shopTools;
    },
    () => undefined,
  );
  const read = () => Promise.all([store.shop(), store.settings()]);
  const [figures, found] = await read();
  const held: Held = { shop: signal(figures), settings: signal(found), waiting: signal([]), reads };
  const { keepRow, since } = writesInto(held, unsaved);

  async function keepAll(patch: Rows): Promise<void> {
    await Promise.all(
      Object.entries(patch).map(([key, value]) =>
        keepRow({ of: 'settings', key, value }, () => store.keep(key, value)),
      ),
    );
  }

  /** What is kept, read now; what came to be kept meanwhile the reading may not have seen. */
  async function readOver(takes: (key: string) => boolean): Promise<void> {
    const isFresh = since();
    const [figures, now] = await read();
    batch(() => {
      held.shop.value = { ...figures, ...only(held.shop.value as Rows, isFresh('shop')) };
      const taken = (key: string) => takes(key) && !isFresh('settings')(key);
      held.settings.value = { ...only(held.settings.value, (key) => !taken(key)), ...only(now, taken) };
    });
  }

  return {
    ...shown(held),
    keep: (patch) => keepAll(patch as Rows),
    keepShop: async (key, value) => {
      await keepRow({ of: 'shop', key, value }, () => store.keepShop(key, value));
    },
    keepOnShelf: keepAll,
    keepFigure: (rows) => void keepAll(rows),
    load: () => readOver(() => true),
    catchUp: () => readOver(shared),
  };
}

type Shown = Pick<ValuesInHand, 'settings' | 'shop' | 'figure' | 'underWay'>;

/** What the screens are shown. */
function shown({ shop, settings, waiting, reads }: Held): Shown {
  const all = computed(() => ({
    ...settings.value,
    ...Object.fromEntries(waiting.value.flatMap((row) => (row.of === 'shop' ? [] : [[row.key, row.value]]))),
  }));
  // each page that is gone to is kept: the shop is no other for it, and what was worked out from it stands
  const tools = computed(() => reads.value?.(all.value));
  const figures = computed(() => {
    const rows = waiting.value.flatMap((row) => (row.of === 'shop' ? [[row.key, row.value]] : []));
    return rows.length > 0 ? { ...shop.value, ...Object.fromEntries(rows) } : shop.value;
  });
  return {
    settings: computed(() => readSettings(all.value)),
    shop: computed<Shop>(() => ({ ...figures.value, ...tools.value })),
    figure: computed(() => only(all.value, isFigure)),
    underWay: computed(() =>
      waiting.value.some(({ of, key }) => of === 'shop' || shelfKey(key) !== undefined || isFigure(key)),
    ),
  };
}

type Writes = {
  readonly keepRow: (row: Row, write: () => Promise<Result<null, SaveError>>) => Promise<boolean>;
  /** From now on: whether a row was on its way, or came to be kept since. */
  readonly since: () => (of: Row['of']) => (key: string) => boolean;
};

/** Writes to storage: shown at once, then kept, or named among what could not be. */
function writesInto(
  { shop, settings, waiting }: Held,
  unsaved: Pick<UnsavedBox, 'failed' | 'saved'>,
): Writes {
  /** Of each key, which of all writes was the last that came to an end. */
  const ended = new Map<string, number>();
  let writes = 0;

  /**
   * Shown at once; refused, it is as it was, and named until it is kept after all. One that comes to an end after a
   * later one of its key says nothing any more: a write that was tried again must not put an older word over a newer.
   */
  const keepRow: Writes['keepRow'] = async (row, write) => {
    writes += 1;
    const no = writes;
    waiting.value = [...waiting.value, row];
    const done = await write();
    const key = nameOf(row);
    batch(() => {
      const at = waiting.value.indexOf(row);
      // what was asked for before it is over
      waiting.value = waiting.value.filter((one, k) => k > at || nameOf(one) !== key);
      if ((ended.get(key) ?? 0) > no) return;
      ended.set(key, no);
      if (done.ok) {
        if (row.of === 'shop') shop.value = { ...shop.value, [row.key]: row.value };
        else settings.value = { ...settings.value, [row.key]: row.value };
        unsaved.saved({ key });
      } else if (!quiet.includes(row.key) && !isStepBack(row.key)) {
        unsaved.failed({ why: done.error, key, again: () => keepRow(row, write) });
      }
    });
    return done.ok;
  };

  const since = () => {
    const from = writes;
    const under = waiting.value;
    return (of: Row['of']) => (key: string) =>
      (ended.get(`${of} ${key}`) ?? 0) > from || under.some((row) => row.of === of && row.key === key);
  };
  return { keepRow, since };
}
