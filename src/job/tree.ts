import type { Json } from './entry';
import type { Field } from './fields';
import { fieldAt } from './paths';

/** Values by path as a tree. A map keeps the order things were made in, whatever their ids look like. */
export type Tree = ReadonlyMap<string, Json | Tree>;
type Growing = Map<string, Json | Growing>;
type Values = ReadonlyMap<string, Json>;
type Read<T extends object> = { [K in keyof T]?: T[K] extends Field<infer V> ? V : never };

/** Values as a tree, the paths of those that cannot be read, and the values it was grown of. */
export type Grown = {
  readonly tree: Tree;
  readonly unread: readonly string[];
  readonly of: readonly (readonly [path: string, json: Json])[];
};

/**
 * Values as a tree, in the order they were first written; unreadable ones are named and left out.
 *
 * @param before what was grown last: what is the same in it is the same tree
 */
export function grow(values: Values, before?: Grown): Grown {
  return (before && regrown(values, before)) ?? grown(values, before?.tree);
}

function grown(values: Values, before: Tree | undefined): Grown {
  const unread: string[] = [];
  const tree: Growing = new Map();
  for (const [path, json] of values) {
    if (!isRead(path, json)) {
      unread.push(path);
      continue;
    }
    const steps = path.split('/');
    const leaf = steps.pop() ?? '';
    steps.reduce(branch, tree).set(leaf, json);
  }
  return { tree: shared(tree, before), unread, of: [...values] };
}

const isRead = (path: string, json: Json): boolean => fieldAt(path)?.read(json) !== undefined;

/** The tree of before with the few leaves that were written anew; nothing where more than leaves became others. */
function regrown(values: Values, before: Grown): Grown | undefined {
  if (values.size !== before.of.length) return undefined;
  const anew: (readonly [string, Json])[] = [];
  let at = 0;
  for (const [path, json] of values) {
    const [oldPath, oldJson] = before.of[at] ?? [];
    if (path !== oldPath) return undefined;
    if (json !== oldJson) anew.push([path, json]);
    at += 1;
  }
  if (anew.length === 0) return before;
  const unread = new Set(before.unread);
  let tree: Tree | undefined = before.tree;
  for (const [path, json] of anew)
    tree =
      tree && !unread.has(path) && isRead(path, json) ? withLeaf(tree, path.split('/'), json) : undefined;
  return tree && { tree, unread: before.unread, of: [...values] };
}

/** A tree with another leaf where it had one; nothing where it had none there. */
function withLeaf(tree: Tree, [step = '', ...rest]: readonly string[], json: Json): Tree | undefined {
  const old = tree.get(step);
  const is = rest.length === 0;
  if (old === undefined || isTree(old) === is) return undefined;
  const node = isTree(old) ? withLeaf(old, rest, json) : json;
  return node === undefined ? undefined : new Map(tree).set(step, node);
}

function branch(node: Growing, step: string): Growing {
  const found = node.get(step);
  if (found instanceof Map) return found;
  const made: Growing = new Map();
  node.set(step, made);
  return made;
}

/** A tree with the branches of the one before where they are the same, in the same order; all of it where all are. */
function shared(tree: Growing, before: Json | Tree | undefined): Growing {
  if (!isTree(before)) return tree;
  let same = `${[...tree.keys()]}` === `${[...before.keys()]}`;
  for (const [key, node] of tree) {
    const old = before.get(key);
    if (isTree(node)) tree.set(key, shared(node as Growing, old));
    same &&= tree.get(key) === old;
  }
  return same ? (before as Growing) : tree;
}

export const isTree = (node: Json | Tree | undefined): node is Tree => node instanceof Map;

export function children(tree: Tree, key: string): readonly (readonly [string, Tree])[] {
  const under = tree.get(key);
  if (!isTree(under)) return [];
  return treesIn(under);
}

const treesIn = (node: Tree): readonly (readonly [string, Tree])[] =>
  [...node].flatMap(([id, under]) => (isTree(under) ? [[id, under] as const] : []));

export function pick<T extends object>(table: T, node: Tree): Read<T> {
  const found: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(table) as [string, Field<unknown>][]) {
    const json = node.get(name);
    const value = json === undefined || isTree(json) ? undefined : field.read(json);
    if (value !== undefined) found[name] = value;
  }
  return found as Read<T>;
}

export const named = <T>(
  nodes: readonly (readonly [string, Tree])[],
  read: (node: Tree) => T,
): Readonly<Record<string, T>> =>
  // no prototype: a name like `constructor` is a name and nothing else
  Object.assign(Object.create(null), Object.fromEntries(nodes.map(([key, node]) => [key, read(node)])));

/** What is kept by operation: part, cut and copy are three steps of the path. */
export function byOperation<T>(
  tree: Tree,
  table: string,
  read: (leaf: Tree) => T | undefined,
): Readonly<Record<string, T>> {
  const found: Record<string, T> = {};
  for (const [part, cuts] of children(tree, table))
    for (const [cut, copies] of treesIn(cuts))
      for (const [copy, leaf] of treesIn(copies)) {
        const value = read(leaf);
        if (value !== undefined) found[`cut/${part}/${cut}/${copy}`] = value;
      }
  return found;
}
