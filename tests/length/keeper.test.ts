import { expect, test } from 'vitest';
import { keeper } from '../../src/length/keeper';

/** A keeper that counts what it worked out. */
function counted() {
  const kept = keeper<object, string>();
  let made = 0;
  const ask = (thing: object, of: readonly unknown[], says: string) =>
    kept(thing, of, () => {
      made += 1;
      return says;
    });
  return { ask, made: () => made };
}

test('what is asked of the same thing beside the same values is worked out once', () => {
  const { ask, made } = counted();
  const [thing, other, beside] = [{}, {}, {}];
  expect(ask(thing, [beside, 1], 'a')).toBe('a');
  expect(ask(thing, [beside, 1], 'never')).toBe('a');
  expect(made()).toBe(1);
  expect(ask(other, [beside, 1], 'b')).toBe('b');
  expect(ask(thing, [beside, 2], 'c')).toBe('c');
  expect(ask(thing, [{}, 1], 'd')).toBe('d');
  expect(ask(thing, [beside], 'e')).toBe('e');
  expect(made()).toBe(5);
});

test('of one thing the last few ways are kept, so that what might be does not push out what is', () => {
  const { ask, made } = counted();
  const thing = {};
  for (const n of [1, 2, 3, 4]) ask(thing, [n], `${n}`);
  expect(ask(thing, [1], 'never')).toBe('1');
  ask(thing, [5], '5');
  expect(made()).toBe(5);
  expect(ask(thing, [1], 'anew')).toBe('anew');
});
