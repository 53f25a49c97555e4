import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { headersFor, readHeaders, rulesIn } from '../../e2e/headers.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const rules = rulesIn(path.join(root, 'public'));

describe('readHeaders', () => {
  test('reads patterns with the headers set in below them, past comments and blank lines', () => {
    const text =
      '# said first\n\n/*\n  X-One: a: b, c\n\n  # of that pattern\n\tX-Two:2\n/sw.js\n  X-Three: 3\n';
    expect(readHeaders(text)).toEqual([
      {
        pattern: '/*',
        headers: [
          ['x-one', 'a: b, c'],
          ['x-two', '2'],
        ],
      },
      { pattern: '/sw.js', headers: [['x-three', '3']] },
    ]);
  });

  test('refuses a line that is no header', () => {
    expect(() => readHeaders('/*\n  nosniff\n')).toThrow('without a colon');
  });
});

describe('headersFor', () => {
  const two = readHeaders('/*\n  A: 1\n/assets/*\n  B: 2\n/index.html\n  C: 3\n');
  test.each([
    ['/index.html', { a: '1', c: '3' }],
    ['/assets/x.js', { a: '1', b: '2' }],
    ['/more/index.html', { a: '1' }],
    ['/assets', { a: '1' }],
  ])('%s', (at, want) => expect(headersFor(two, at)).toEqual(want));
});

describe('public/_headers', () => {
  const all = headersFor(rules, '/');

  test('asks for the policy the page has, and that no page may frame it', () => {
    const page = readFileSync(path.join(root, 'src/index.html'), 'utf8');
    const own = /content="(default-src[^"]+)"/.exec(page)?.[1];
    // a page cannot say frame-ancestors of itself: only the header counts
    expect(all['content-security-policy']).toBe(`${own}; frame-ancestors 'none'`);
  });

  test('asks for no guessing of types and no referrer', () => {
    expect(all['x-content-type-options']).toBe('nosniff');
    expect(all['referrer-policy']).toBe('no-referrer');
  });

  test('leaves to the page what the sources use, and nothing else', () => {
    const uses: Readonly<Record<string, RegExp>> = {
      camera: /getUserMedia/,
      'clipboard-write': /navigator\.clipboard\.writeText/,
      'screen-wake-lock': /navigator\.wakeLock/,
      'web-share': /navigator\.share\(/,
      'clipboard-read': /clipboard\.read/,
      'display-capture': /getDisplayMedia/,
      fullscreen: /requestFullscreen/,
      geolocation: /geolocation/,
      serial: /navigator\.serial/,
      usb: /navigator\.usb/,
      hid: /navigator\.hid/,
    };
    const src = path.join(root, 'src');
    const texts = readdirSync(src, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => readFileSync(path.join(src, file), 'utf8'));
    const policy = new Map(
      (all['permissions-policy'] ?? '').split(', ').map((part) => part.split('=') as [string, string]),
    );
    for (const [feature, used] of Object.entries(uses)) {
      expect(policy.get(feature), feature).toBe(texts.some((text) => used.test(text)) ? '(self)' : '()');
    }
    const left = [...policy].filter(([, to]) => to !== '()').map(([feature]) => feature);
    expect(left.filter((feature) => !(feature in uses))).toEqual([]);
  });

  test('gives no header twice to one file', () => {
    for (const at of ['/', '/index.html', '/sw.js', '/manifest.webmanifest', '/assets/a.js', '/icon.svg']) {
      const given = rules
        .filter(({ pattern }) => headersFor([{ pattern, headers: [['x', '1']] }], at).x === '1')
        .flatMap(({ headers }) => headers.map(([name]) => name));
      expect(new Set(given).size, at).toBe(given.length);
    }
  });
});
