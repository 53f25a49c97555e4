import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';

const dist = path.resolve(import.meta.dirname, '../../dist');
const page = readFileSync(path.join(dist, 'index.html'), 'utf8');
const zipped = (file: string) => gzipSync(readFileSync(path.join(dist, file)), { level: 9 }).length;

/** A script and all that it cannot start without, and so on. */
function withImports(file: string): readonly string[] {
  const all = new Set([file]);
  for (const one of all) for (const other of importsOf(one)) all.add(other);
  return [...all];
}

function importsOf(file: string): readonly string[] {
  const text = readFileSync(path.join(dist, file), 'utf8');
  const named = [...text.matchAll(/(?<![\w$.])(\w+)\(["`]\.\/([^"`]+\.js)["`]\)/g)].filter(
    (m) => m[1] !== 'bring_',
  );
  return named.map((m) => `assets/${m[2]}`);
}

/** The scripts that the page names, and what they cannot start without. */
function firstScripts(): readonly string[] {
  const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((m) => m[1] ?? '');
  return [...new Set(named.flatMap(withImports))];
}

const sum = (files: readonly string[]): number => files.reduce((sum, file) => sum + zipped(file), 0);

/** Every file the service worker keeps. */
function precached(): readonly string[] {
  const worker = readFileSync(path.join(dist, 'sw.js'), 'utf8');
  return [...worker.matchAll(/url:\s*[`"']([^`"']+)[`"']|"url":"([^"]+)"/g)].map((m) => m[1] ?? m[2] ?? '');
}

describe('bytes of the built app', () => {
  test('the scripts of the first load are at most 40 KB gzip', () => {
    expect(firstScripts().some((file) => file.includes('/main-'))).toBe(true);
    expect(sum(firstScripts())).toBeLessThanOrEqual(40 * 1024);
  });

  test('what paints the screen that was left is at most 8 KB gzip, and waits for nothing else', () => {
    const script = /<script defer src="\.\/(assets\/[^"]+\.js)"/.exec(page)?.[1] ?? '';
    expect(withImports(script)).toEqual([script]);
    expect(zipped(script)).toBeLessThanOrEqual(8 * 1024);
  });

  test('what says why nothing opens, and shares out what is kept, waits for no screen and for no plan', () => {
    const refusal =
      readdirSync(path.join(dist, 'assets')).find((name) => /^refusal-.*\.js$/.test(name)) ?? '';
    const needed = withImports(`assets/${refusal}`);
    expect(needed.some((file) => file.includes('/main-'))).toBe(true); // it is there: it asked for this one
    expect(needed.filter((file) => /\/(home|planning|later)-/.test(file))).toEqual([]);
    expect(sum(needed.filter((file) => !firstScripts().includes(file)))).toBeLessThanOrEqual(10 * 1024);
  });

  test('the page of the job brings at most 23.2 KB gzip more', () => {
    const home = readdirSync(path.join(dist, 'assets')).find((name) => /^home-.*\.js$/.test(name)) ?? '';
    const first = firstScripts();
    const more = withImports(`assets/${home}`).filter((file) => !first.includes(file));
    expect(sum(more)).toBeLessThanOrEqual(23.2 * 1024);
  });

  test('everything kept on the phone is at most 1,730 KB, and is everything', () => {
    const files = precached();
    const bytes = files.reduce((sum, file) => sum + statSync(path.join(dist, file)).size, 0);
    expect(bytes).toBeLessThanOrEqual(1730 * 1024);
    for (const asset of readdirSync(path.join(dist, 'assets'))) {
      if (!asset.endsWith('.map')) expect(files).toContain(`assets/${asset}`);
    }
    expect(files).toContain('index.html');
    expect(files).toContain('fonts-OFL.txt');
    // and nothing that no page asks for
    for (const file of ['_headers', 'robots.txt', 'icon-maskable.svg', 'sw.js'])
      expect(files).not.toContain(file);
  });
});

describe('the style sheets', () => {
  const css = (file: string) => readFileSync(path.join(dist, 'assets', file), 'utf8');
  const layersOf = (text: string) => [...new Set([...text.matchAll(/@layer ([\w-]+)\{/g)].map((m) => m[1]))];

  test('the first one names every layer in its order: a later sheet cannot bring one in before another', () => {
    const first = /href="\.\/assets\/([^"]+\.css)"/.exec(page)?.[1] ?? '';
    expect(layersOf(css(first))).toEqual(['base', 'kit', 'shared', 'screens']);
    for (const file of readdirSync(path.join(dist, 'assets')).filter((name) => name.endsWith('.css')))
      expect(['base', 'kit', 'shared', 'screens']).toEqual(expect.arrayContaining(layersOf(css(file))));
  });
});

describe('the page', () => {
  test('names no other origin, and runs no script or style of its own writing', () => {
    expect(page).not.toMatch(/https?:\/\//);
    expect(page).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>/);
    expect(page).not.toMatch(/<style|\sstyle=|\son\w+=/);
    const policy = /content="(default-src[^"]+)"/.exec(page)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
  });
});
