import { expect, test } from 'vitest';
import { makeUnsaved } from '../../src/app/unsaved';
import { valuesInHand } from '../../src/app/values-in-hand';
import { usualLists } from '../../src/job/shop-lists';
import { shopTools } from '../../src/job/shop-tools';
import { inches } from '../../src/length/length';
import type { Store } from '../../src/store/store';

test('a setting tapped while what is kept is read again stays as tapped, and is the kept one after', async () => {
  const kept: Record<string, unknown> = { theme: 'satin' };
  const held: (() => void)[] = [];
  const store = {
    shop: async () => ({}),
    settings: async () => ({ ...kept }),
    keep: (key: string, value: unknown) =>
      new Promise((done) => {
        held.push(() => {
          kept[key] = value;
          done({ ok: true, value: null });
        });
      }),
  } as unknown as Store;
  const hand = await valuesInHand(store, makeUnsaved(), Promise.resolve({ shopTools }));
  const tapped = hand.keep({ theme: 'blued' });
  await hand.load();
  expect(hand.settings.value.theme).toBe('blued');
  for (const end of held) end();
  await tapped;
  kept.theme = 'phone'; // as another page sets it
  await hand.load();
  expect(hand.settings.value.theme).toBe('phone');
});

/** A store whose writes end when they are told to, in any order. */
function heldStore() {
  const kept: Record<string, unknown> = {};
  const ends: ((fails?: boolean) => void)[] = [];
  const store = {
    shop: async () => ({}),
    settings: async () => ({ ...kept }),
    keep: (key: string, value: unknown) =>
      new Promise((done) => {
        ends.push((fails) => {
          kept[key] = value; // the later word stands, whichever ends first
          done(fails ? { ok: false, error: { code: 'full' } } : { ok: true, value: null });
        });
      }),
  } as unknown as Store;
  return { store, ends, kept };
}
const turn = () => new Promise((done) => setTimeout(done));

test('a write that ends after a later one of its key puts no older word over the newer', async () => {
  const { store, ends } = heldStore();
  const unsaved = makeUnsaved();
  const hand = await valuesInHand(store, unsaved, Promise.resolve({ shopTools }));
  for (const made of [1, 2, 3]) hand.keepFigure({ figure: { made } });
  ends[2]?.();
  await turn();
  expect(hand.figure.value).toEqual({ figure: { made: 3 } });
  ends[0]?.();
  ends[1]?.(true);
  await turn();
  expect(hand.figure.value).toEqual({ figure: { made: 3 } });
  expect(unsaved.now.value).toEqual([]);
});

test('a line kept while the pages are read again stays, though the reading began before it', async () => {
  const { store, ends, kept } = heldStore();
  const hand = await valuesInHand(store, makeUnsaved(), Promise.resolve({ shopTools }));
  kept['strip/b1'] = 'theirs';
  let read = (): void => undefined;
  const before = { ...kept };
  const settings = () =>
    new Promise((done) => {
      read = () => done(before);
    });
  Object.assign(store, { settings });
  const reading = hand.catchUp();
  hand.keepFigure({ 'strip/a1': 'mine' });
  ends[0]?.();
  await turn();
  read();
  await reading;
  expect(hand.figure.value).toEqual({ 'strip/a1': 'mine', 'strip/b1': 'theirs' });
});

test('a page gone to is kept, and the shop stays the very same while it is, and after; a figure makes another', async () => {
  const { store, ends } = heldStore();
  const write = store.keep;
  Object.assign(store, { keepShop: write });
  const hand = await valuesInHand(store, makeUnsaved(), Promise.resolve({ shopTools }));
  await Promise.all([hand.keepOnShelf({ 'shelf/tools': 'sled router' }), ends[0]?.()]);
  const before = hand.shop.value;
  expect(before.order).toEqual(['sled', 'router']);
  const going = hand.keep({ here: '#/cuts' });
  expect(hand.shop.value).toBe(before);
  ends[1]?.();
  await going;
  expect(hand.shop.value).toBe(before);
  const kerf = inches(1n, 8n);
  // of a shop that said none the usual ones
  const { screws } = usualLists;
  const measured = hand.keepShop('kerf', kerf);
  expect(hand.shop.value).toEqual({ order: ['sled', 'router'], screws, kerf });
  ends[2]?.();
  await measured;
  expect(hand.shop.value).toEqual({ order: ['sled', 'router'], screws, kerf });
  const reordered = hand.keepOnShelf({ 'shelf/tools': 'router' });
  expect(hand.shop.value.order).toEqual(['router']);
  ends[3]?.();
  await reordered;
  expect(hand.shop.value).toEqual({ order: ['router'], screws, kerf });
});
