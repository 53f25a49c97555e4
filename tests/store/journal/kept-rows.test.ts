import { describe, expect, test } from 'vitest';
import { keptOf, rowsOf, sumOf } from '../../../src/store/journal/kept-rows';
import { rowKey } from '../../../src/store/journal/row';
import { pairsIn } from '../../../src/store/values';
import { entry, logged } from './rows';

describe('what rows come to', () => {
  test('the last word of a setting, none once taken away, and no entry of a job taken out for good', () => {
    const kept = keptOf([
      logged(1),
      ['settings', 'theme', 'satin'],
      ['settings', 'theme', 'blued'],
      ['shop', 'kerf', '1/8'],
      ['shop', 'kerf', null],
      logged(1, 'j2'),
      ['purge', 'j1'],
    ]);
    expect([...kept.log.values()].map((e) => e.job)).toEqual(['j2']);
    expect([...pairsIn(kept.settings)]).toEqual([['theme', 'blued']]);
    expect(pairsIn(kept.shop).size).toBe(0);
    expect(keptOf(rowsOf(kept))).toEqual(kept);
  });

  test('a sum does not depend on order, and differs for one entry more, fewer or other', () => {
    const keys = Array.from({ length: 200 }, (_, k) => rowKey(entry(k + 1)));
    const sum = sumOf(keys);
    expect(sumOf([...keys].reverse())).toEqual(sum);
    for (let k = 0; k < keys.length; k += 1) {
      const fewer = keys.filter((_, n) => n !== k);
      expect(sumOf(fewer).hash).not.toBe(sum.hash);
      expect(sumOf([...fewer, rowKey(entry(k + 1, 'j9'))]).hash).not.toBe(sum.hash);
    }
  });
});
