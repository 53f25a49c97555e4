import type { Graph } from './graph';
import { solve } from './solve';

type Known = { readonly graph: Graph; readonly effort: number; readonly solved: ReturnType<typeof solve> };

/** What was solved last, the newest first. */
const known: Known[] = [];
const most = 4;

const same = (a: readonly number[], b: readonly number[] = []): boolean =>
  a.length === b.length && a.every((x, k) => x === b[k]);

const sameGraph = (a: Graph, b: Graph): boolean =>
  same(a.setupOf, b.setupOf) &&
  same(a.buildOf, b.buildOf) &&
  a.before.length === b.before.length &&
  a.before.every((list, k) => same(list, b.before[k]));

/**
 * What `solve` comes to. A graph has numbers alone, no figures and no names: after most readings it is the graph that
 * was solved before, and so is its order.
 *
 * @param effort states that may be opened
 */
export function solveOnce(graph: Graph, effort: number): Known['solved'] {
  const before = known.find((one) => one.effort === effort && sameGraph(one.graph, graph));
  if (before) return before.solved;
  const solved = solve(graph, { left: effort });
  known.unshift({ graph, effort, solved });
  known.length = Math.min(known.length, most);
  return solved;
}
