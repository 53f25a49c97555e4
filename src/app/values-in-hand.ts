import { batch, type Signal, signal } from '@preact/signals';
import type { Length } from '../length/length';
import type { SaveError } from '../store/db';
import type { Json } from '../store/entry';
import { readSettings, type Settings } from '../store/settings';
import type { Store } from '../store/store';
import type { Shop } from '../trade/grooves/board';

/** This phone's ways and the shop's figures, as they are kept. */
export type ValuesInHand = {
  readonly settings: Signal<Settings>;
  readonly shop: Signal<Shop>;
  /** The sum of Figure, as it keeps itself. */
  readonly figure: Signal<Json | undefined>;
  readonly keep: (patch: Partial<Settings>) => Promise<void>;
  readonly keepShop: (field: keyof Shop, value: Length | undefined) => Promise<void>;
  readonly keepFigure: (state: Json) => void;
  /** Everything as it is kept now. */
  readonly load: () => Promise<void>;
  /** What other pages write too: figures, lists, what other phones have. The rest is this page's own. */
  readonly catchUp: () => Promise<void>;
};

export async function valuesInHand(
  store: Store,
  noteTrouble: (error: SaveError | undefined) => void,
): Promise<ValuesInHand> {
  const read = () => Promise.all([store.shop(), store.settings()]);
  const [figures, kept] = await read();
  const settings = signal<Settings>(readSettings(kept));
  const shop = signal<Shop>(figures);
  const figure = signal<Json | undefined>(kept.figure);
  /** Asked for and not kept yet: what is read meanwhile is older. */
  let onTheWay: Partial<Settings> = {};

  async function keep(patch: Partial<Settings>): Promise<void> {
    settings.value = { ...settings.value, ...patch };
    onTheWay = { ...onTheWay, ...patch };
    for (const [key, value] of Object.entries(patch)) {
      const done = await store.keep(key, value);
      if (!done.ok) noteTrouble(done.error);
    }
    const still = Object.entries(onTheWay).filter(([key, value]) => patch[key as keyof Settings] !== value);
    onTheWay = Object.fromEntries(still);
  }

  async function keepShop(field: keyof Shop, value: Length | undefined): Promise<void> {
    shop.value = { ...shop.value, [field]: value };
    const done = await store.keepShop(field, value);
    if (!done.ok) noteTrouble(done.error);
  }

  function keepFigure(state: Json): void {
    figure.value = state;
    void store.keep('figure', state).then((done) => !done.ok && noteTrouble(done.error));
  }

  async function load(): Promise<void> {
    const [figures, now] = await read();
    batch(() => {
      shop.value = figures;
      settings.value = { ...readSettings(now), ...onTheWay };
      figure.value = now.figure;
    });
  }

  async function catchUp(): Promise<void> {
    const [figures, now] = await read();
    const { lists, handed } = readSettings(now);
    batch(() => {
      shop.value = figures;
      settings.value = {
        ...settings.value,
        ...(lists === undefined ? {} : { lists }),
        ...(handed === undefined ? {} : { handed }),
      };
    });
  }

  return { settings, shop, figure, keep, keepShop, keepFigure, load, catchUp };
}
