import { describe, expect, test } from 'vitest';
import { type Case, legendOf, tableOf } from '../../e2e/kills/table.mjs';

const good: Case = { name: 'wipe, between', verdict: 'good', sum: { wipes: 3, healed: 3 } };
const one: Case = { name: 'wipe, under', verdict: 'ONE COPY', sum: { wipes: 1, healed: 0 } };

describe('legendOf', () => {
  test('says what a single copy means where a case came to that', () => {
    expect(legendOf([good, one])).toMatch(/^ONE COPY: /m);
  });

  test('says nothing of it where none did', () => {
    expect(legendOf([good])).not.toContain('ONE COPY');
    expect(legendOf([good])).toMatch(/^acts: /);
  });
});

describe('tableOf', () => {
  test('gives each case a line with its verdict, a dash where nothing was counted', () => {
    const [head, ...lines] = tableOf([good, { ...one, sum: { wipes: 1 } }]).split('\n');
    expect(head?.trim().split(/\s+/)).toEqual(['wipes', 'healed']);
    expect(lines.map((line) => line.trim().split(/\s{2,}/))).toEqual([
      ['wipe, between', 'good', '3', '3'],
      ['wipe, under', 'ONE COPY', '1', '-'],
    ]);
  });
});
