import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, subtract, sum, times } from '../../../src/length/length';
import { type Edge, frontWidth } from '../../../src/trade/fronts/width';
import type { TermCode } from '../../../src/trade/sums/term-code';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const inset: Edge = { kind: 'inset', reveal: l('5/64') };
const shared: Edge = { kind: 'shared', partition: l('23/32'), gap: l('5/64') };
const outer: Edge = { kind: 'overlay', over: l('9/16'), edge: l('23/32') };
const width = (opening: string, left: Edge, right: Edge) => {
  const made = frontWidth(l(opening), left, right);
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const said = (what: TermCode) => (typeof what === 'string' ? what : Object.values(what).join(' '));
const lines = (opening: string, left: Edge, right: Edge) =>
  width(opening, left, right).width.terms.map((t) => `${said(t.what)} ${w(t.value)}`);

describe('frontWidth', () => {
  test('Example 3 of fronts: over 18 7/64, covering 9/16 and half a partition less its gap: 18 127/128', () => {
    const made = width('18 7/64', outer, shared);
    expect([w(made.left), w(made.right), w(made.width.value)]).toEqual(['9/16', '41/128', '18 127/128']);
    expect(made.warnings).toEqual([]);
  });

  test.each([
    ['a reveal', { kind: 'inset', reveal: l('-1/64') }, inset],
    ['a gap', shared, { kind: 'shared', partition: l('23/32'), gap: l('-1/64') }],
  ] as const)('%s below nothing is refused: it would be wider than what it goes into', (_, left, right) => {
    const made = frontWidth(l('17'), left, right);
    expect(made.ok ? 'ok' : [made.error.code, w(made.error.by)]).toEqual(['side-negative', '1/64']);
  });

  test('Example 3 of fronts, step 3 of the carried cabinet: inset in 17 with reveals of 5/64 it is 16 27/32', () => {
    const made = width('17', inset, inset);
    expect([w(made.left), w(made.right), w(made.width.value)]).toEqual(['-5/64', '-5/64', '16 27/32']);
  });

  test('step 5 of the carried cabinet: inset in 17 1/32 it is 16 7/8', () => {
    expect(w(width('17 1/32', inset, inset).width.value)).toBe('16 7/8');
  });

  test('the sum names what is added and taken off, two reveals alike in one line', () => {
    expect(lines('17', inset, inset)).toEqual(['opening 17', 'reveal both -5/32']);
    expect(lines('17', inset, { kind: 'inset', reveal: l('1/16') })).toEqual([
      'opening 17',
      'reveal left -5/64',
      'reveal right -1/16',
    ]);
    expect(lines('17', inset, outer)).toEqual(['opening 17', 'reveal left -5/64', 'cover right 9/16']);
  });

  test('two covers alike are one line, unless one is of a partition', () => {
    const alike: Edge = { kind: 'overlay', over: l('41/128') };
    expect(lines('17', alike, alike)).toEqual(['opening 17', 'cover both 41/64']);
    expect(lines('17', alike, shared)).toEqual([
      'opening 17',
      'cover left 41/128',
      'half-partition right 41/128',
    ]);
    expect(lines('17', shared, shared).length).toBe(2);
  });

  test('no reveal, no line', () => {
    expect(lines('17', { kind: 'inset', reveal: l('0') }, inset)).toEqual([
      'opening 17',
      'reveal right -5/64',
    ]);
  });

  test('a gap wider than the partition stands short of the opening, and is said so', () => {
    const wide: Edge = { kind: 'shared', partition: l('1/4'), gap: l('3/8') };
    const made = width('18', outer, wide);
    expect([w(made.right), w(made.width.value)]).toEqual(['-1/16', '18 1/2']);
    expect(made.width.terms.at(-1)?.what).toEqual({ code: 'short-of-partition', at: 'right' });
    expect(w(width('18', outer, { ...wide, gap: l('1/4') }).right)).toBe('0');
  });

  test('covering more than the edge there is is said, at its side; the whole edge is not', () => {
    const past: Edge = { kind: 'overlay', over: l('47/64'), edge: l('23/32') };
    const [warning, ...others] = width('18', shared, past).warnings;
    expect(others).toEqual([]);
    expect([warning?.code, warning?.side, w(warning?.over), w(warning?.edge)]).toEqual([
      'past-the-edge',
      'right',
      '47/64',
      '23/32',
    ]);
    expect(width('18', past, past).warnings.map((x) => x.side)).toEqual(['left', 'right']);
    expect(width('18', { ...past, over: l('23/32') }, shared).warnings).toEqual([]);
  });

  test('an edge nobody measured is not warned of', () => {
    expect(width('18', { kind: 'overlay', over: l('9') }, shared).warnings).toEqual([]);
  });

  test('reveals as wide as the opening are refused by how much; a hair less is a front', () => {
    const by = (opening: string) => {
      const made = frontWidth(l(opening), inset, inset);
      return made.ok ? undefined : w(made.error.by);
    };
    expect([by('1/8'), by('5/32'), by('11/64')]).toEqual(['1/32', '0', undefined]);
  });

  test('two fronts and the gap between them fill both openings and the partition, and the terms come to the width', () => {
    const of = (n: bigint) => inches(n, 64n);
    const edge = fc.bigInt({ min: 0n, max: 64n });
    fc.assert(
      fc.property(edge, edge, edge, (over, partition, gap) => {
        const mid: Edge = { kind: 'shared', partition: of(partition), gap: of(gap) };
        const end: Edge = { kind: 'overlay', over: of(over) };
        const [a, b] = [width('18', end, mid), width('17 1/3', mid, end)];
        const both = sum([a.width.value, of(gap), b.width.value]);
        const filled = sum([l('35 1/3'), of(partition), times(of(over), 2n)]);
        expect(equals(both, filled)).toBe(true);
        expect(equals(sum(a.width.terms.map((t) => t.value)), a.width.value)).toBe(true);
        expect(equals(subtract(a.width.value, l('18')), add(a.left, a.right))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
