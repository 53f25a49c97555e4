import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Json } from '../../src/job/entry';
import { type Grown, grow, isTree, type Tree } from '../../src/job/tree';
import { runs } from '../runs';

/** A tree with the order of its branches, which maps alone do not compare. */
const inOrder = (tree: Tree): unknown =>
  [...tree].map(([key, node]) => [key, isTree(node) ? inOrder(node) : node]);

const said = ({ tree, unread }: Grown) => ({ tree: inOrder(tree), unread });

/** Few paths, so that they are written again; some values cannot be read there. */
const paths = [
  ...['name', 'tape', 'boards/b1/name', 'boards/b1/length', 'boards/b1/runs/r1/pitch', 'boards/b2/copies'],
  ...['cases/c1/width', 'cases/c1/inside/i1/at', 'nowhere/at/all', 'let/c1~left/rip/1/why'],
];
const edit = fc.record({
  path: fc.constantFrom(...paths),
  json: fc.constantFrom<Json>('1/32', '7/2', 'never a tape', 2, 3, true, null, ['1/2']),
});

test('grown on from the tree before, it is the tree grown alone, branch by branch in the same order', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 25 }), (edits) => {
      const values = new Map<string, Json>();
      let before: Grown | undefined;
      for (const { path, json } of edits) {
        if (json === null) values.delete(path);
        else values.set(path, json);
        before = grow(values, before);
        expect(said(before)).toEqual(said(grow(values)));
      }
    }),
    { numRuns: runs(300) },
  );
});

test('what was not written anew is the same tree, and where nothing was, so is all', () => {
  const values = new Map<string, Json>([
    ['boards/b1/length', '7/2'],
    ['boards/b1/runs/r1/pitch', '1/2'],
    ['boards/b2/length', '9/2'],
  ]);
  const first = grow(values);
  expect(grow(new Map(values), first).tree).toBe(first.tree);
  values.set('boards/b2/length', '11/2');
  const second = grow(values, first);
  const at = ({ tree }: Grown, id: string) => (tree.get('boards') as Tree).get(id);
  expect(at(second, 'b1')).toBe(at(first, 'b1'));
  expect(at(second, 'b2')).not.toBe(at(first, 'b2'));
  expect(inOrder(first.tree)).toEqual(inOrder(grow(new Map([...values, ['boards/b2/length', '9/2']])).tree));
});
