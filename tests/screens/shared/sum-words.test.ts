import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readJobFile } from '../../../src/job/file';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { planOf } from '../../../src/plan/plan';
import { termWords } from '../../../src/screens/shared/sum-words';
import type { Sum } from '../../../src/trade/sums/sum';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error(file.error.code);
const plan = planOf(jobOf(file.value.job, fold(file.value.entries).values), {});
const wordsIn = (sum: Sum): readonly string[] =>
  sum.terms.flatMap((term) => [termWords(term.what), ...(term.from ? wordsIn(term.from) : [])]);

describe('termWords', () => {
  test.each([
    [{ code: 'gaps', count: 1 }, 'one gap between'],
    [{ code: 'gaps', count: 3 }, '3 gaps between'],
    [{ code: 'partitions', count: 1 }, 'a partition'],
    [{ code: 'partitions', count: 2 }, 'partitions'],
    [{ code: 'mitred-ends', count: 1 }, 'a mitred end'],
    [{ code: 'mitred-ends', count: 2 }, 'two mitred ends'],
  ] as const)('%o is one or several: %s', (what, words) => expect(termWords(what)).toBe(words));

  test.each([
    [{ code: 'reveal', at: 'top' }, 'reveal at the top'],
    [{ code: 'reveal', at: 'both' }, 'two side reveals'],
    [{ code: 'cover', at: 'left' }, 'covers at the left'],
    [{ code: 'cover', at: 'both' }, 'covers at both sides'],
    [{ code: 'half-partition', at: 'right' }, 'half the partition less the gap at the right'],
    [{ code: 'short-of-partition', at: 'right' }, 'short of the partition at the right'],
  ] as const)('%o says where: %s', (what, words) => expect(termWords(what)).toBe(words));

  test('every line of every size of the sample job reads as words, none as a code', () => {
    const lines = plan.parts.flatMap((part) =>
      [part.length, part.width].flatMap((size) => wordsIn(size.sum)),
    );
    expect(lines).toContain('inside depth');
    for (const words of lines) expect(words).toMatch(/^[a-z0-9][a-z0-9 ,]+$/);
  });
});
