import type { Length } from '../length/length';
import type { Tape } from '../length/tape';
import type { Board, Run, Wide } from '../trade/grooves/board';
import type { Change, Json } from './entry';
import { boardFields, type Field, fieldAt, jobFields, runFields, stockFields, wideFields } from './fields';

/** A sheet as measured by calipers, inches. */
export type Stock = { readonly id: string; readonly name: string; readonly readings: readonly Length[] };

/** A job as decided and measured: worked out from its log, never stored. */
export type Job = {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly note: string;
  readonly tape: Tape;
  readonly boards: readonly Board[];
  readonly stock: readonly Stock[];
  /** ISO 8601, when the job was deleted; it can come back for 30 days. */
  readonly deleted?: string;
  /** Paths whose values could not be read; their defaults stand in. */
  readonly unread: readonly string[];
};

/** Values by path as a tree. A map keeps the order things were made in, whatever their ids look like. */
type Tree = ReadonlyMap<string, Json | Tree>;
type Growing = Map<string, Json | Growing>;
type Read<T extends object> = { [K in keyof T]?: T[K] extends Field<infer V> ? V : never };

/** The typed job a log's values come to. A value missing or not readable falls back to its default. */
export function jobOf(id: string, values: ReadonlyMap<string, Json>): Job {
  const unread: string[] = [];
  const tree = grow(values, unread);
  const own = pick(jobFields, tree);
  return {
    id,
    name: own.name ?? '',
    place: own.place ?? '',
    note: own.note ?? '',
    tape: own.tape ?? '1/32',
    boards: children(tree, 'boards').flatMap(([key, node]) => board(key, node)),
    stock: children(tree, 'stock').flatMap(([key, node]) => stock(key, node)),
    unread,
    ...(own.deleted ? { deleted: own.deleted } : {}),
  };
}

/** Values as a tree, in the order they were first written; unreadable ones are named and left out. */
function grow(values: ReadonlyMap<string, Json>, unread: string[]): Tree {
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

const isTree = (node: Json | Tree | undefined): node is Tree => node instanceof Map;

function children(tree: Tree, key: string): readonly (readonly [string, Tree])[] {
  const under = tree.get(key);
  if (!isTree(under)) return [];
  return [...under].flatMap(([id, node]) => (isTree(node) ? [[id, node] as const] : []));
}

function pick<T extends object>(table: T, node: Tree): Read<T> {
  const found: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(table) as [string, Field<unknown>][]) {
    const json = node.get(name);
    const value = json === undefined || isTree(json) ? undefined : field.read(json);
    if (value !== undefined) found[name] = value;
  }
  return found as Read<T>;
}

function board(id: string, node: Tree): readonly Board[] {
  const { gone, ...own } = pick(boardFields, node);
  if (gone) return [];
  return [
    {
      ...newBoard(id),
      ...own,
      runs: children(node, 'runs').flatMap(([key, run]) => readRun(key, run)),
      wides: children(node, 'wides').flatMap(([key, wide]) => readWide(key, wide)),
    },
  ];
}

/** A board before anything is said of it. */
export const newBoard = (id: string): Board => ({
  id,
  name: '',
  made: 'alike',
  copies: 1,
  end: 'bottom',
  mateName: 'partition',
  runs: [],
  wides: [],
  machine: 'stop',
  against: 'reference',
  stopSide: 'left',
  grows: 'away',
  guide: 'reference',
});

export const newRun = (id: string): Run => ({
  id,
  spacing: 'pitch',
  face: 'A',
  point: 'near',
  centred: false,
  at: [],
});

function readRun(id: string, node: Tree): readonly Run[] {
  const { gone, ...own } = pick(runFields, node);
  return gone ? [] : [{ ...newRun(id), ...own }];
}

function readWide(id: string, node: Tree): readonly Wide[] {
  const { gone, ...own } = pick(wideFields, node);
  return gone ? [] : [{ id, face: 'A', ...own }];
}

function stock(id: string, node: Tree): readonly Stock[] {
  const { gone, ...own } = pick(stockFields, node);
  return gone ? [] : [{ id, name: '', readings: [], ...own }];
}

type Patch<T extends object> = {
  readonly [K in keyof T]?: T[K] extends Field<infer V> ? V | undefined : never;
};

function edits<T extends object>(at: string, table: T, patch: Patch<T>): readonly Change[] {
  return Object.entries(patch).map(([name, value]) => {
    const field = (table as Record<string, Field<unknown>>)[name];
    if (!field) throw new RangeError(`no field ${name}`);
    return { kind: 'edit', path: `${at}${name}`, value: value === undefined ? null : field.write(value) };
  });
}

/** The edits that change a job, a board, a run, a wide groove or a sheet; `undefined` takes a value away. */
export const editJob = (patch: Patch<typeof jobFields>) => edits('', jobFields, patch);
export const editBoard = (id: string, patch: Patch<typeof boardFields>) =>
  edits(`boards/${id}/`, boardFields, patch);
export const editRun = (boardId: string, id: string, patch: Patch<typeof runFields>) =>
  edits(`boards/${boardId}/runs/${id}/`, runFields, patch);
export const editWide = (boardId: string, id: string, patch: Patch<typeof wideFields>) =>
  edits(`boards/${boardId}/wides/${id}/`, wideFields, patch);
export const editStock = (id: string, patch: Patch<typeof stockFields>) =>
  edits(`stock/${id}/`, stockFields, patch);
