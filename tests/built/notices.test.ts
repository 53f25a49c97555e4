import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { packageOf } from '../../build/notices';

const dist = path.resolve(import.meta.dirname, '../../dist');
const files = readdirSync(dist, { recursive: true, encoding: 'utf8' });
const read = (file: string): string => readFileSync(path.join(dist, file), 'utf8');
const notices = read('notices.txt');

type SourceMap = { readonly sources: readonly string[] };

/** The packages the scripts were made of, as their source maps have it. */
const inMaps = [
  ...new Set(
    files
      .filter((file) => file.endsWith('.js.map'))
      .flatMap((file) => (JSON.parse(read(file)) as SourceMap).sources)
      .flatMap((source) => packageOf(source) ?? []),
  ),
];

describe('notices.txt', () => {
  test('has a line for each package in the scripts, with its version', () => {
    expect(inMaps).toEqual(expect.arrayContaining(['preact', 'idb', 'qr', 'workbox-precaching']));
    for (const name of inMaps) {
      const about = path.join(dist, '../node_modules', name, 'package.json');
      const { version } = JSON.parse(readFileSync(about, 'utf8'));
      expect(notices).toMatch(new RegExp(`^${name} ${version.replaceAll('.', '\\.')}\n {2}Copyright `, 'm'));
    }
  });

  test('names nothing that is not in them, but for the bundler’s own helper', () => {
    const named = [...notices.matchAll(/^(\S+) \d+\.\d+\.\d+\S*$/gm)].map((m) => m[1]);
    const helpers = named.filter((name) => !inMaps.includes(name ?? ''));
    expect(['vite', 'rolldown']).toEqual(expect.arrayContaining(helpers));
    expect(named.length).toBeGreaterThanOrEqual(inMaps.length);
  });

  test('has the terms whole, and is kept on the phone', () => {
    for (const part of ['Permission is hereby granted, free of charge', 'Permission to use, copy, modify'])
      expect(notices.replace(/\s+/g, ' ')).toContain(part);
    expect(notices.match(/PROVIDED\s"AS IS"/g)?.length).toBe(2);
    expect(Math.max(...notices.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(read('sw.js')).toContain('notices.txt');
  });
});
