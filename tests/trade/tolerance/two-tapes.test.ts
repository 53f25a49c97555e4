import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches, type Length } from '../../../src/length/length';
import { type TapeReadings, twoTapes } from '../../../src/trade/tolerance/two-tapes';

const mm = (tenths: number): Length => fromMillimetres(BigInt(tenths), 10n);
const read = (short: number, shortOther: number, long: number, longOther: number): TapeReadings => ({
  short: mm(short),
  shortOther: mm(shortOther),
  long: mm(long),
  longOther: mm(longOther),
});
const told = (readings: TapeReadings, reach: number) =>
  twoTapes(readings, { reach: mm(reach), tape: '1 mm' });

describe('twoTapes', () => {
  test('a long board no longer than the short one says nothing', () => {
    expect(told(read(2000, 2000, 2000, 2005), 16320)).toEqual({ ok: false, error: { code: 'boards-alike' } });
    expect(told(read(15000, 15000, 2000, 2000), 16320)).toMatchObject({ error: { code: 'boards-alike' } });
  });

  // 39 3/8 in taken for a metre is .125 mm over 1000 and passes; 1039 keyed for 1000 does not: 39 in 800 is 1 in 20
  test('a slip of the keys is no tape: over one in a hundred', () => {
    const slip = told(read(2000, 2000, 10000, 10390), 16320);
    expect(slip.ok ? undefined : slip.error).toEqual({ code: 'misread', by: mm(390) });
    // one in a hundred itself is still taken: 8 in 800
    expect(told(read(2000, 2000, 10000, 10080), 16320).ok).toBe(true);
  });

  test('two errors that cancel at the longest of the job do not make the tapes alike', () => {
    // 260 reads 260.8, 1560 reads 1559.8: rate 1299/1300, offset 260.8 - 259.8 = 1; at 1300 apart 1 - 1 = 0
    const found = told(read(2600, 2608, 15600, 15598), 13000);
    expect(found.ok && found.value.offset.equals(mm(10))).toBe(true);
    expect(found.ok && found.value.apart.n).toBe(0n);
    expect(found.ok && found.value.verdict).toBe('apart');
  });

  // .8 mm is the limit of a job in millimetres, where 1/32 in would be .79375. Common practice, no source
  test('just the limit is not over it', () => {
    const at = (other: number) => told(read(2000, other, 15000, 13000 + other), 15000);
    expect(at(2008).ok && at(2008)).toMatchObject({ value: { verdict: 'unsure' } });
    expect(at(2009).ok && at(2009)).toMatchObject({ value: { verdict: 'apart' } });
    expect(inches(1n, 32n).lt(mm(8))).toBe(true);
  });
});
