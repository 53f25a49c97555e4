import { expect, test } from 'vitest';
import { makeUnsaved } from '../../src/app/unsaved';
import { type ValueNames, valuesInHand } from '../../src/app/values-in-hand';
import type { Store } from '../../src/store/store';

const names: ValueNames = { shop: (field) => field, setting: (key) => key };

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
  const hand = await valuesInHand(store, makeUnsaved(), names);
  const tapped = hand.keep({ theme: 'blued' });
  await hand.load();
  expect(hand.settings.value.theme).toBe('blued');
  for (const end of held) end();
  await tapped;
  kept.theme = 'phone'; // as another page sets it
  await hand.load();
  expect(hand.settings.value.theme).toBe('phone');
});
