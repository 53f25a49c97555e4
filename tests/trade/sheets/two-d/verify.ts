import type { Laid, Tree, TwoD } from '../../../../src/trade/sheets/two-d/two-d';

type Found = {
  readonly counts: number[];
  readonly groups: Map<number, Set<number>>;
  readonly faults: string[];
};

const whole = (x: number): boolean => Number.isSafeInteger(x) && x > 0;

function walkCut(tree: Tree & { readonly is: 'cut' }, on: (tree: Tree) => void): string | undefined {
  const { a, b, at, across, w, h } = tree;
  on(a);
  on(b);
  if (!(at > 0 && at < (across ? h : w))) return `cut at ${at} is outside ${w} x ${h}`;
  const fits = across
    ? a.w === w && b.w === w && a.h === at && a.h + b.h === h
    : a.h === h && b.h === h && a.w === at && a.w + b.w === w;
  return fits ? undefined : `${a.w} x ${a.h} and ${b.w} x ${b.h} do not make ${w} x ${h} cut at ${at}`;
}

function walk(problem: TwoD, tree: Tree, sheet: number, { counts, groups, faults }: Found): void {
  const stack = [tree];
  for (let t = stack.pop(); t; t = stack.pop()) {
    if (!whole(t.w) || !whole(t.h)) faults.push(`${t.is} ${t.w} x ${t.h} is no rectangle`);
    if (t.is === 'cut') {
      const fault = walkCut(t, (next) => stack.push(next));
      if (fault) faults.push(fault);
    }
    if (t.is !== 'piece') continue;
    const piece = problem.pieces[t.piece];
    if (!piece) {
      faults.push(`there is no piece ${t.piece}`);
      continue;
    }
    counts[t.piece] = (counts[t.piece] ?? 0) + 1;
    const [w, h] = t.turned ? [piece.h, piece.w] : [piece.w, piece.h];
    if (t.w !== w || t.h !== h) faults.push(`piece ${t.piece} is ${w} x ${h}, not ${t.w} x ${t.h}`);
    if (t.turned && !piece.turn) faults.push(`piece ${t.piece} may not be turned`);
    if (piece.together === undefined) continue;
    groups.set(piece.together, (groups.get(piece.together) ?? new Set()).add(sheet));
  }
}

/**
 * Cuts a plan again, sheet by sheet, and says everything that is wrong with it. Shares no line with the planner.
 *
 * @example faultsOf(problem, laid) // [] when the plan is sound
 */
export function faultsOf(problem: TwoD, laid: Laid): readonly string[] {
  const found: Found = { counts: problem.pieces.map(() => 0), groups: new Map(), faults: [] };
  const used = problem.sheets.map(() => 0);
  let cost = 0;
  for (const [place, { kind, tree }] of laid.sheets.entries()) {
    const sheet = problem.sheets[kind];
    if (!sheet) return [...found.faults, `there is no sheet ${kind}`];
    used[kind] = (used[kind] ?? 0) + 1;
    cost += sheet.cost;
    if (tree.w !== sheet.w || tree.h !== sheet.h)
      found.faults.push(`sheet ${place} is ${sheet.w} x ${sheet.h}, not ${tree.w} x ${tree.h}`);
    walk(problem, tree, place, found);
  }
  for (const [k, { count }] of problem.pieces.entries())
    if (found.counts[k] !== count)
      found.faults.push(`piece ${k} is there ${found.counts[k]} times, not ${count}`);
  for (const [k, { count }] of problem.sheets.entries())
    if ((used[k] ?? 0) > (count ?? Number.POSITIVE_INFINITY))
      found.faults.push(`sheet ${k} is used ${used[k]} times`);
  for (const [group, sheets] of found.groups)
    if (sheets.size > 1) found.faults.push(`group ${group} is parted`);
  if (Math.abs(cost - laid.cost) > 1e-9 * cost) found.faults.push(`the cost is ${cost}, not ${laid.cost}`);
  if (laid.bound > laid.cost) found.faults.push(`the bound ${laid.bound} is above the cost`);
  if (laid.proved !== (laid.cost === laid.bound)) found.faults.push('proved is not what cost and bound say');
  return found.faults;
}
