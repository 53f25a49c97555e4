import { describe, expect, test } from 'vitest';
import { jobOf } from '../../src/job/job';
import { inches } from '../../src/length/length';
import { liesIn, roughAt } from '../../src/plan/rough-at';
import { part, plainCase, work } from '../trade/carcass/sample-case';

const side = part(work(plainCase), 'left');
const job = (values: readonly (readonly [string, string])[]) => jobOf('j', new Map(values));

describe('roughAt', () => {
  test('is the usual until the job says its own', () => {
    const usual = roughAt(job([]));
    expect([usual.over, usual.overStick]).toEqual([inches(1n, 4n), inches(0n)]);
    const own = roughAt(
      job([
        ['over', '1/8'],
        ['overStick', '1/2'],
      ]),
    );
    expect([own.over, own.overStick]).toEqual([inches(1n, 8n), inches(1n, 2n)]);
  });
});

describe('liesIn', () => {
  const sheet = [
    ['stock/a/kind', 'sheet'],
    ['stock/a/name', 'A'],
  ] as const;
  const across = [`parts/${side.id}/lies`, 'across'] as const;

  test.each([
    ['its length along the grain when nothing is said', [...sheet], 'along'],
    ['as said of the part', [...sheet, across], 'across'],
    ['either way on a sheet without a grain', [...sheet, across, ['stock/a/grain', 'none'] as const], 'free'],
    ['along a stick, whatever is said', [['stock/a/kind', 'stick'] as const, across], 'along'],
  ])('%s', (_, values, want) => expect(liesIn(job(values), side)).toBe(want));
});
