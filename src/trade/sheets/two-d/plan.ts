import type { State } from './state';
import { treeOf } from './tree';
import type { Laid, TwoD } from './two-d';

type Sheets = Laid['sheets'];

/** Work to make the tree of a sheet of so many nodes and to measure it. Measured, no source. */
export const workOfTree = (nodes: number): number => 1000 + 120 * nodes;

/** The sheets as they lie now, as plans to cut by. */
export function sheetsOf(state: State, problem: TwoD): Sheets {
  return state.lays.flatMap((lay) => {
    const kind = state.kinds[lay.kind]?.of ?? -1;
    const size = problem.sheets[kind];
    if (size) state.work += workOfTree(lay.n);
    return size ? [{ kind, tree: treeOf(lay, size) }] : [];
  });
}

/** What the sheets cost together: times by kind, so that one order of adding holds for all plans. */
export function costOf(problem: TwoD, sheets: Sheets): number {
  return problem.sheets.reduce(
    (sum, s, kind) => sum + s.cost * sheets.filter((x) => x.kind === kind).length,
    0,
  );
}
