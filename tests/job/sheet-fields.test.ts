import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Json } from '../../src/job/entry';
import { branchField } from '../../src/job/sheet-fields';
import { inches } from '../../src/length/length';
import type { Branch } from '../../src/trade/sheets/tree';
import { runs } from '../runs';

const length = fc.tuple(fc.bigInt(0n, 4096n), fc.bigInt(1n, 64n)).map(([n, d]) => inches(n, d));
const name = fc.stringMatching(/^[a-z0-9~]{1,12}\/[a-z0-9~]{1,6}$/);

const { tree } = fc.letrec<{ tree: Branch }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 6 },
    fc.constantFrom<Branch>({ is: 'left' }, { is: 'waste' }),
    fc.record({ is: fc.constant('piece' as const), piece: name, turned: fc.boolean() }),
    fc.record({
      is: fc.constant('cut' as const),
      way: fc.constantFrom('rip' as const, 'cross' as const),
      at: length,
      near: tie('tree'),
      far: tie('tree'),
    }),
  ),
}));

describe('how a sheet falls apart, as kept', () => {
  test('reads back what was written, through text', () => {
    fc.assert(
      fc.property(tree, (branch) => {
        const kept = JSON.parse(JSON.stringify(branchField.write(branch))) as Json;
        const read = branchField.read(kept);
        expect(read && branchField.write(read)).toEqual(kept);
        expect(JSON.stringify(read, show)).toBe(JSON.stringify(branch, show));
      }),
      { numRuns: runs(200) },
    );
  });

  test.each<[string, Json]>([
    ['a word', 'left'],
    ['nothing', []],
    ['another word', ['gone']],
    ['left with more', ['left', 1]],
    ['a piece without a copy', ['piece', 'side']],
    ['a piece turned otherwise', ['piece', 'side/1', 'maybe']],
    ['a cut at a decimal', ['rip', '1.5', ['left'], ['left']]],
    ['a cut before the edge', ['rip', '-1/2', ['left'], ['left']]],
    ['a cut with one side', ['rip', '1/2', ['left']]],
    ['a cut another way', ['saw', '1/2', ['left'], ['left']]],
    ['a bad branch below a good one', ['rip', '1/2', ['left'], ['rip', '1/2', ['left'], null]]],
  ])('%s is not readable', (_, json) => {
    expect(branchField.read(json)).toBeUndefined();
  });

  test('a tree deeper than any saw goes, or of more cuts than any sheet gets, is not readable', () => {
    const deep = (n: number): Json => (n === 0 ? ['left'] : ['rip', '1/2', ['left'], deep(n - 1)]);
    expect(branchField.read(deep(390))).toBeDefined();
    expect(branchField.read(deep(500))).toBeUndefined();
    const full = (n: number): Json => (n === 0 ? ['left'] : ['rip', '1/2', full(n - 1), full(n - 1)]);
    expect(branchField.read(full(12))).toBeUndefined();
  });
});

const show = (_: string, value: unknown): unknown => (typeof value === 'bigint' ? `${value}` : value);
