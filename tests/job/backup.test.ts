import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Backup, backupVersion, isBackup, readBackup, writeBackup } from '../../src/job/backup';
import { newsOf, waysToTake } from '../../src/job/backup-news';
import { compareWith, readJobFile } from '../../src/job/file';
import { inches } from '../../src/length/length';
import { ok } from '../../src/length/result';
import { runs } from '../runs';

const sample = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
const jobFile = (text: string) => {
  const file = readJobFile(text);
  if (!file.ok) throw new Error(file.error.code);
  return file.value;
};
const first = jobFile(sample);
const second = jobFile(sample.replaceAll('mineralshell', 'othercase'));
const whole: Backup = {
  jobs: [first, second],
  shop: { kerf: inches(3n, 32n), block: inches(7n, 64n) },
  likes: { hand: 'left', lists: { screws: ['3/4'] } },
};
const written = async (backup: Backup): Promise<string> => {
  const text = await writeBackup(backup);
  if (!text.ok) throw new Error(text.error.code);
  return text.value;
};

describe('writeBackup', () => {
  test('reads back to the same jobs, figures and likings, and writes again to the letter', async () => {
    const text = await written(whole);
    const read = await readBackup(text);
    expect(read).toEqual(ok(whole));
    expect(read.ok && (await written(read.value))).toBe(text);
  });

  test('an empty phone makes a copy too, and a job without entries says nothing', async () => {
    const text = await written({ jobs: [{ job: 'a', entries: [] }], shop: {}, likes: {} });
    expect(await readBackup(text)).toEqual(ok({ jobs: [], shop: {}, likes: {} }));
  });

  test('keeps each job as its own file has it', async () => {
    const text = await written(whole);
    for (const line of sample
      .trimEnd()
      .split('\n')
      .filter((l) => l.includes('"device"')))
      expect(text).toContain(line);
  });

  test('its check is the SHA-256 that any other tool reckons', async () => {
    const { createHash } = await import('node:crypto');
    const { shop, likes, jobs, sha256 } = JSON.parse(await written(whole));
    const sum = createHash('sha256')
      .update(JSON.stringify([shop, likes, jobs]))
      .digest('hex');
    expect(sha256).toBe(sum);
  });
});

describe('readBackup', () => {
  test('a job file is no copy, and a copy says so in its first letters', async () => {
    expect(isBackup(sample)).toBe(false);
    expect(await readBackup(sample)).toMatchObject({ error: { code: 'not-a-copy' } });
    expect(isBackup(await written(whole))).toBe(true);
  });

  test('a newer copy is refused by its version', async () => {
    const text = (await written(whole)).replace(`"knifeline-all": ${backupVersion}`, '"knifeline-all": 99');
    expect(await readBackup(text)).toMatchObject({ error: { code: 'newer-copy', version: 99 } });
  });

  test('line ends and blanks changed on the way change nothing', async () => {
    const text = await written(whole);
    expect(await readBackup(text.replaceAll('\n', '\r\n'))).toEqual(ok(whole));
    expect(await readBackup(JSON.stringify(JSON.parse(text), null, 4))).toEqual(ok(whole));
  });

  test('cut at any place but its last blank, it is refused whole', async () => {
    const text = await written({ ...whole, jobs: [first] });
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: text.trimEnd().length - 1 }), async (at) => {
        expect((await readBackup(text.slice(0, at))).ok).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });

  test('one letter changed anywhere that matters is refused', async () => {
    const text = await written({ ...whole, jobs: [first] });
    const meaning = JSON.stringify(JSON.parse(text));
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 0, max: text.length - 1 }),
        fc.integer({ min: 33, max: 126 }),
        async (at, c) => {
          const changed = text.slice(0, at) + String.fromCharCode(c) + text.slice(at + 1);
          const same = sameMeaning(changed, meaning);
          expect((await readBackup(changed)).ok).toBe(same);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  test('a piece taken out, doubled or moved is refused, and none throws', async () => {
    const text = await written({ ...whole, jobs: [first] });
    const meaning = JSON.stringify(JSON.parse(text));
    const place = fc.integer({ min: 0, max: text.length });
    await fc.assert(
      fc.asyncProperty(place, place, place, async (a, b, c) => {
        const changed = text.slice(0, a) + text.slice(b, c) + text.slice(Math.min(a + 40, text.length));
        expect((await readBackup(changed)).ok).toBe(sameMeaning(changed, meaning));
      }),
      { numRuns: runs(100) },
    );
  });

  test.each([
    ['a job that is no job', (b: Record<string, unknown>) => ({ ...b, jobs: [{ knifeline: 1 }] }), 'bad-job'],
    ['a job twice', (b: Record<string, unknown>) => ({ ...b, jobs: [b.jobs, b.jobs].flat() }), 'job-twice'],
    [
      'a figure nobody knows',
      (b: Record<string, unknown>) => ({ ...b, shop: { door: '3/4' } }),
      'bad-figure',
    ],
    ['a decimal figure', (b: Record<string, unknown>) => ({ ...b, shop: { kerf: 0.125 } }), 'bad-figure'],
    [
      'a liking nobody knows',
      (b: Record<string, unknown>) => ({ ...b, likes: { device: 'x' } }),
      'bad-figure',
    ],
    ['jobs that are no list', (b: Record<string, unknown>) => ({ ...b, jobs: {} }), 'not-a-copy'],
    ['a key nobody knows', (b: Record<string, unknown>) => ({ ...b, more: 1 }), 'torn'],
  ])('%s is refused, though the check fits', async (_, change, code) => {
    const changed = change(JSON.parse(await written({ ...whole, jobs: [first] })));
    const { createHash } = await import('node:crypto');
    const { shop, likes, jobs } = changed as { shop: unknown; likes: unknown; jobs: unknown };
    const sha256 = createHash('sha256')
      .update(JSON.stringify([shop, likes, jobs]))
      .digest('hex');
    expect(await readBackup(JSON.stringify({ ...changed, sha256 }))).toMatchObject({
      ok: false,
      error: { code },
    });
  });
});

function sameMeaning(text: string, meaning: string): boolean {
  try {
    return JSON.stringify(JSON.parse(text)) === meaning;
  } catch {
    return false;
  }
}

describe('newsOf', () => {
  const here = {
    shop: { kerf: inches(1n, 8n), bit: inches(1n, 4n) },
    likes: { hand: 'left', theme: 'satin' },
  };
  const less = { ...first, entries: first.entries.slice(0, -3) };
  const known = { file: first, against: compareWith(less.entries, first.entries) };

  test('counts what is new, where the two differ, and what this phone lacks', () => {
    const news = newsOf(whole, [known, { file: second }], here);
    expect(news).toMatchObject({ entries: 3 + second.entries.length, touched: 2, differing: 0 });
    expect(news.places).toEqual(['kerf']);
    expect(news.lacking).toEqual(['block', 'lists']);
  });

  test('the same again is no news', () => {
    const same = { file: first, against: compareWith(first.entries, first.entries) };
    expect(newsOf({ ...whole, jobs: [first] }, [same], whole)).toMatchObject({
      entries: 0,
      touched: 0,
      places: [],
      lacking: [],
    });
  });

  test('ours stand unless the file’s are asked for; what is lacking comes either way', () => {
    const news = newsOf(whole, [], here);
    expect(waysToTake(news, 'ours')).toEqual({
      shop: { block: inches(7n, 64n) },
      likes: { lists: { screws: ['3/4'] } },
    });
    expect(waysToTake(news, 'theirs').shop).toEqual({ block: inches(7n, 64n), kerf: inches(3n, 32n) });
  });

  test('a strip of Figure fills an empty one and never writes over another', () => {
    const strip = { ...whole, likes: { figure: { lines: 1 } } };
    expect(newsOf(strip, [], here).lacking).toContain('figure');
    const ours = { shop: {}, likes: { figure: { lines: 2 } } };
    const news = newsOf(strip, [], ours);
    expect(news.places).toEqual([]);
    expect(waysToTake(news, 'theirs').likes).toEqual({});
  });
});
