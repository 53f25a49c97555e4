import type { Json } from './entry';
import type { Field } from './fields';
import { fieldAt } from './paths';

/** Values by path as a tree. A map keeps the order things were made in, whatever their ids look like. */
export type Tree = ReadonlyMap<string, Json | Tree>;
type Growing = Map<string, Json | Growing>;
type Read<T extends object> = { [K in keyof T]?: T[K] extends Field<infer V> ? V : never };

/** Values as a tree, in the order they were first written; unreadable ones are named and left out. */
export function grow(values: ReadonlyMap<string, Json>, unread: string[]): Tree {
  const tree: Growing = new Map();
  for (const [path, json] of values) {
    if (fieldAt(path)?.read(json) === undefined) {
      unread.push(path);
      continue;
    }
    const steps = path.split('/');
    const leaf = steps.pop() ?? '';
    steps.reduce(branch, tree).set(leaf, json);
  }
  return tree;
}

function branch(node: Growing, step: string): Growing {
  const found = node.get(step);
  if (found instanceof Map) return found;
  const made: Growing = new Map();
  node.set(step, made);
  return made;
}

export const isTree = (node: Json | Tree | undefined): node is Tree => node instanceof Map;

export function children(tree: Tree, key: string): readonly (readonly [string, Tree])[] {
  const under = tree.get(key);
  if (!isTree(under)) return [];
  return [...under].flatMap(([id, node]) => (isTree(node) ? [[id, node] as const] : []));
}

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
    for (const [cut, copies] of [...cuts].flatMap(([key, node]) =>
      isTree(node) ? [[key, node] as const] : [],
    ))
      for (const [copy, leaf] of copies) {
        const value = isTree(leaf) ? read(leaf) : undefined;
        if (value !== undefined) found[`cut/${part}/${cut}/${copy}`] = value;
      }
  return found;
}
