/**
 * Operations by number, each numbered after all it waits on. `before` holds direct predecessors.
 * Several operations that can always share a run may stand as one.
 */
export type Graph = {
  readonly setupOf: readonly number[];
  readonly buildOf: readonly number[];
  readonly before: readonly (readonly number[])[];
};

/**
 * The graph run backwards: an order of it, read from its end, is an order of the other with the same runs.
 *
 * @example backwards({ setupOf: [0, 1], buildOf: [0, 0], before: [[], [0]] }).setupOf // [1, 0]
 */
export function backwards({ setupOf, buildOf, before }: Graph): Graph {
  const last = setupOf.length - 1;
  const after: number[][] = setupOf.map(() => []);
  before.forEach((list, k) => {
    for (const p of list) after[last - p]?.push(last - k);
  });
  return { setupOf: [...setupOf].reverse(), buildOf: [...buildOf].reverse(), before: after };
}

/** What each operation stands as, what these wait on, and for which operation each was looked at last. */
type Stands = { readonly of: number[]; readonly before: number[][]; readonly looked: Int32Array };

/**
 * What must be done in other setups before an operation. An earlier step of its own setup
 * gives way to what that one waits on: once those are done, both are done in one run.
 */
function waitsOn(graph: Graph, k: number, { of, before, looked }: Stands): number[] {
  const found: number[] = [];
  const add = (one: number): void => {
    if (looked[one] === k) return;
    looked[one] = k;
    found.push(one);
  };
  for (const p of graph.before[k] ?? []) {
    const one = of[p] ?? 0;
    if (graph.setupOf[p] !== graph.setupOf[k]) add(one);
    else for (const q of before[one] ?? []) add(q);
  }
  return found.length < 2 ? found : found.sort((a, b) => a - b);
}

/** A number by which lists are looked up: equal lists have the same, and few others do. */
const signOf = (setup: number, waits: readonly number[]): number =>
  waits.reduce((sign, k) => Math.imul(sign ^ k, 0x01000193), setup + 1);

const same = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((x, k) => x === b[k]);

/**
 * Operations of one setup that wait on the same become one. It never costs a run: an order that does everything ready
 * in the standing setup is as good as any (moving a ready operation of the standing setup up to now breaks no run
 * and starts none), and in such an order these are done in the same run.
 */
function mergeOnce(graph: Graph): Graph {
  const { setupOf } = graph;
  const known = new Map<number, number[]>();
  const stands: Stands = { of: [], before: [], looked: new Int32Array(setupOf.length).fill(-1) };
  const { before } = stands;
  const first: number[] = [];
  const setupAt = (one: number) => setupOf[first[one] ?? 0];
  setupOf.forEach((setup, k) => {
    const waits = waitsOn(graph, k, stands);
    const sign = signOf(setup, waits);
    const like = known.get(sign) ?? [];
    const found = like.find((one) => setupAt(one) === setup && same(before[one] ?? [], waits));
    stands.of.push(found ?? before.length);
    if (found !== undefined) return;
    if (like.push(before.length) === 1) known.set(sign, like);
    before.push(waits);
    first.push(k);
  });
  const pick = (values: readonly number[]) => first.map((k) => values[k] ?? 0);
  return { setupOf: pick(setupOf), buildOf: pick(graph.buildOf), before };
}

/**
 * The same question with fewer operations: merged by what they wait on, and, since an order read backwards has the
 * same runs, by what waits on them; again until nothing merges.
 *
 * @example merged({ setupOf: [0, 0], buildOf: [0, 0], before: [[], []] }).setupOf // [0]
 */
export function merged(graph: Graph): Graph {
  let now = mergeOnce(graph);
  for (;;) {
    const next = mergeOnce(backwards(mergeOnce(backwards(now))));
    if (next.setupOf.length === now.setupOf.length) return next;
    now = next;
  }
}

/** Which colours have work right before work of which others. */
function feeds(graph: Graph, colourOf: readonly number[]): ReadonlyMap<number, ReadonlySet<number>> {
  const out = new Map<number, Set<number>>();
  for (const c of colourOf) if (!out.has(c)) out.set(c, new Set());
  graph.before.forEach((list, k) => {
    const to = colourOf[k] ?? 0;
    for (const p of list) {
      const from = colourOf[p] ?? 0;
      if (from !== to) out.get(from)?.add(to);
    }
  });
  return out;
}

/** Colours that feed each other in a round, together; a group comes after all it feeds (Tarjan's strong components). */
function rounds(out: ReadonlyMap<number, ReadonlySet<number>>): number[][] {
  const seen = new Map<number, number>();
  const closed = new Set<number>();
  const standing: number[] = [];
  const groups: number[][] = [];
  const visit = (c: number): number => {
    const mine = seen.size;
    seen.set(c, mine);
    standing.push(c);
    let least = mine;
    for (const d of out.get(c) ?? []) {
      if (!closed.has(d)) least = Math.min(least, seen.get(d) ?? visit(d));
    }
    if (least === mine) {
      const group = standing.splice(standing.indexOf(c));
      for (const d of group) closed.add(d);
      groups.push(group);
    }
    return least;
  };
  for (const c of out.keys()) if (!seen.has(c)) visit(c);
  return groups;
}

/** Some of the operations, with what they wait on among themselves. @example only(graph, [0, 2]) */
export function only(graph: Graph, keep: readonly number[]): Graph {
  return parted(graph, [keep])[0] ?? { setupOf: [], buildOf: [], before: [] };
}

/** Some parts of the operations, none in two of them, each with what it waits on within its part. */
function parted(graph: Graph, parts: readonly (readonly number[])[]): Graph[] {
  const partOf = new Int32Array(graph.setupOf.length).fill(-1);
  const place = new Int32Array(graph.setupOf.length);
  parts.forEach((keep, part) => {
    keep.forEach((k, i) => {
      partOf[k] = part;
      place[k] = i;
    });
  });
  return parts.map((keep, part) => {
    const pick = (values: readonly number[]) => keep.map((k) => values[k] ?? 0);
    const within = (p: number) => partOf[p] === part;
    const before = keep.map((k) => (graph.before[k] ?? []).filter(within).map((p) => place[p] ?? 0));
    return { setupOf: pick(graph.setupOf), buildOf: pick(graph.buildOf), before };
  });
}

/**
 * Parts that can be worked one after the other: colours (setups or builds) that feed each other in a round stay
 * together. Exact: any order, picked apart by part and put end to end, keeps every `before` and breaks no run.
 *
 * @param colourOf the setup, or the build, of each operation
 * @returns the parts in an order that can be worked
 * @example split({ setupOf: [0, 1], buildOf: [0, 0], before: [[], [0]] }, [0, 1]).length // 2
 */
export function split(graph: Graph, colourOf: readonly number[]): Graph[] {
  const groups = rounds(feeds(graph, colourOf)).reverse();
  const groupOf = new Map(groups.flatMap((group, g) => group.map((c) => [c, g])));
  const kept: number[][] = groups.map(() => []);
  colourOf.forEach((c, k) => {
    kept[groupOf.get(c) ?? 0]?.push(k);
  });
  return parted(graph, kept);
}

/** The same operations with builds for setups, for a bound on builds alone. @example byBuild(graph) */
export const byBuild = ({ buildOf, before }: Graph): Graph => ({
  setupOf: buildOf,
  buildOf: buildOf.map(() => 0),
  before,
});

/** The same operations with builds left out of account, for a bound on runs alone. @example bySetup(graph) */
export const bySetup = ({ setupOf, before }: Graph): Graph => ({
  setupOf,
  buildOf: setupOf.map(() => 0),
  before,
});
