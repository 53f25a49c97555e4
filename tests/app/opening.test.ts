import { describe, expect, test } from 'vitest';
import { besides, openingIn } from '../../src/app/opening';

/** What a browser keeps from start to start. */
function notes(): () => Storage {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
  return () => storage as unknown as Storage;
}

const minute = 60_000;

describe('openingIn', () => {
  test('a first start, and one after a start that stood, opens where one was', () => {
    const kept = notes();
    const first = openingIn(kept, 0);
    first.stands();
    expect([first.froze, openingIn(kept, minute).froze]).toEqual([false, false]);
  });

  test('a start after one that never stood does not; the one after that does', () => {
    const kept = notes();
    openingIn(kept, 0);
    const second = openingIn(kept, minute);
    second.stands();
    expect([second.froze, openingIn(kept, 2 * minute).froze]).toEqual([true, false]);
  });

  test('two pages that start at one time are no start that froze', () => {
    const kept = notes();
    openingIn(kept, minute);
    expect(openingIn(kept, minute + 900).froze).toBe(false);
  });

  test('without a place for notes every start opens where one was', () => {
    const none = () => {
      throw new DOMException('blocked', 'SecurityError');
    };
    const { froze, stands } = openingIn(none, 0);
    expect([froze, stands()]).toEqual([false, undefined]);
  });
});

test('the list of jobs stands in for a screen that froze, and this phone’s page for the list', () =>
  expect([besides('#/cuts'), besides('#/'), besides('#/jobs')]).toEqual(['#/jobs', '#/jobs', '#/phone']));
