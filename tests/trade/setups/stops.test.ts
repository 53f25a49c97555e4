import { describe, expect, test } from 'vitest';
import { markAt } from '../../../src/length/tape';
import type { Operation } from '../../../src/trade/setups/operation';
import { setupOf } from '../../../src/trade/setups/setup';
import { sameStop, stopsOf } from '../../../src/trade/setups/stops';
import { l } from '../../length/write-figures';

/** A piece cut to length at 1/32. */
const cut = (id: string, long: string): Operation => {
  const figure = markAt(l(long), '1/32');
  const on = { at: 'squared-end' } as const;
  const setup = setupOf({ machine: 'crosscut', sets: 'length-stop', figure, on });
  return {
    id,
    part: id,
    copy: '1',
    name: { of: { role: 'scrap' } },
    what: 'length',
    setup,
    figure: figure.value,
    after: [],
  };
};

describe('stopsOf', () => {
  const [a, b, other] = [cut('a', '29.084'), cut('b', '29.084'), cut('c', '29.09')] as const;

  test('equal exact lengths share one stop, those equal only after rounding do not', () => {
    const [ofA, ofB, ofOther] = stopsOf([a, b, other]);
    expect(a.figure.equals(other.figure)).toBe(true);
    expect(ofA).toBe(a.setup.key);
    expect(ofB).toBe(a.setup.key);
    expect(ofOther).not.toBe(a.setup.key);
    expect([sameStop(a.setup, b.setup), sameStop(a.setup, other.setup)]).toEqual([true, false]);
  });

  test('a stop that stands alone under its figure has the key of its setup', () =>
    expect(stopsOf([other])).toEqual([other.setup.key]));
});
