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

/**
 * What must be done in other setups before an operation. An earlier step of its own setup
 * gives way to what that one waits on: once those are done, both are done in one run.
 */
function waitsOn(graph: Graph, k: number, stands: { of: number[]; before: number[][] }): number[] {
  const found = new Set<number>();
  for (const p of graph.before[k] ?? []) {
    const one = stands.of[p] ?? 0;
    if (graph.setupOf[p] !== graph.setupOf[k]) found.add(one);
    else for (const q of stands.before[one] ?? []) found.add(q);
  }
  return [...found].sort((a, b) => a - b);
}

/**
 * Operations of one setup that wait on the same become one. It never costs a run: an order that does everything ready
 * in the standing setup is as good as any (moving a ready operation of the standing setup up to now breaks no run
 * and starts none), and in such an order these are done in the same run.
 */
function mergeOnce(graph: Graph): Graph {
  const known = new Map<string, number>();
  const of: number[] = [];
  const before: number[][] = [];
  const first: number[] = [];
  graph.setupOf.forEach((setup, k) => {
    const waits = waitsOn(graph, k, { of, before });
    const key = `${setup}:${waits.join()}`;
    const one = known.get(key) ?? before.length;
    of.push(one);
    if (one < before.length) return;
    known.set(key, one);
    before.push(waits);
    first.push(k);
  });
  const pick = (values: readonly number[]) => first.map((k) => values[k] ?? 0);
  return { setupOf: pick(graph.setupOf), buildOf: pick(graph.buildOf), before };
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
  const place = new Map(keep.map((k, i) => [k, i]));
  const pick = (values: readonly number[]) => keep.map((k) => values[k] ?? 0);
  const before = keep.map((k) =>
    (graph.before[k] ?? []).flatMap((p) => {
      const i = place.get(p);
      return i === undefined ? [] : [i];
    }),
  );
  return { setupOf: pick(graph.setupOf), buildOf: pick(graph.buildOf), before };
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
  return kept.map((keep) => only(graph, keep));
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
