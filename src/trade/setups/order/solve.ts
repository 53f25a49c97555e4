import { backwards, byBuild, bySetup, type Graph, merged, only, split } from './graph';
import { type Purse, search, sweep } from './search';
import { better, type Cost, type Field, fieldOf, type State } from './state';
import { visitsOf } from './visits';

/** Setups in the order they are run. `least`: no order has fewer builds, and none fewer runs. */
type Solved = {
  readonly sequence: readonly number[];
  readonly cost: Cost;
  readonly least: Cost;
  readonly proved: boolean;
};

/** A field being solved: the best order in hand, and what is known that no order can beat. */
type Hand = { sequence: readonly number[]; cost: Cost; floor: Cost };

const widest = 64;
const endless: Cost = { builds: Number.POSITIVE_INFINITY, runs: Number.POSITIVE_INFINITY };

const lowest = ({ builds, setups }: Field): Cost => ({ builds: builds.least, runs: setups.least });

const higher = (a: Cost, b: Cost): Cost => ({
  builds: Math.max(a.builds, b.builds),
  runs: Math.max(a.runs, b.runs),
});

/** Setups by the numbers given, last run first. */
function lastFirst({ core }: Field, state: State): number[] {
  const found: number[] = [];
  for (let t = state.trail; t; t = t.before) found.push(core.setupNames[t.setup] ?? 0);
  return found;
}

function take(hand: Hand, best: { readonly state: State; readonly sequence: readonly number[] }): void {
  if (!better(best.state.spent, hand.cost)) return;
  hand.sequence = best.sequence;
  hand.cost = best.state.spent;
}

const isBest = ({ cost, floor }: Hand): boolean => !better(floor, cost);

/** One quick order forward and, when that is not sure to be the best, one from the end. Returns how long it was. */
function dive(field: Field, graph: Graph, hand: Hand): number {
  const purse = { left: 0 };
  const ahead = sweep(field, { floor: hand.floor, beat: hand.cost }, { wide: 1, purse });
  if (ahead) take(hand, { state: ahead, sequence: lastFirst(field, ahead).reverse() });
  const long = -purse.left;
  if (isBest(hand)) return long;
  const mirror = fieldOf(merged(backwards(graph)));
  hand.floor = higher(hand.floor, lowest(mirror));
  const back = sweep(mirror, { floor: hand.floor, beat: hand.cost }, { wide: 1, purse });
  if (back) take(hand, { state: back, sequence: lastFirst(mirror, back) });
  return long;
}

/** Spends at most a part of the purse. */
function partly<T>(purse: Purse, part: number, act: (purse: Purse) => T): T {
  const own = { left: Math.floor(purse.left * part) };
  const all = own.left;
  const result = act(own);
  purse.left -= all - own.left;
  return result;
}

/** Closing a gap takes about as many states as it has runs, times the operations: no use beginning with fewer. */
const worthwhile = (field: Field, { cost, floor }: Hand, purse: Purse): boolean =>
  (cost.runs - floor.runs + cost.builds - floor.builds) * field.core.count <= purse.left;

/** An order of builds first, found and mostly proved by itself; then what to do at each visit. */
function visit(field: Field, graph: Graph, hand: Hand, purse: Purse): void {
  const builds = partly(purse, 1 / 4, (own) => solveOneBuild(byBuild(graph), own));
  hand.floor = higher(hand.floor, { builds: builds.least.runs, runs: 0 });
  const { core } = field;
  const local = builds.sequence.map((name) => core.buildNames.indexOf(name));
  const work = partly(purse, 1 / 4, (own) => visitsOf({ core, apart: field.builds.apart }, local, own));
  const own = { setupOf: [...core.setupOf], buildOf: [...core.buildOf], before: core.nearest };
  const done = joined(
    work.filter((list) => list.length > 0).map((list) => solveOneBuild(only(own, list), purse)),
  );
  hand.sequence = done.sequence.map((s) => core.setupNames[s] ?? 0);
  hand.cost = done.cost;
}

/** The best order that can be searched for, when that looks possible, else the best of a wide sweep. */
function improve(field: Field, hand: Hand, purse: Purse): boolean {
  if (!worthwhile(field, hand, purse)) return false;
  const known = { floor: hand.floor, beat: hand.cost };
  const found = partly(purse, 2 / 3, (own) => search(field, known, own));
  if (found.best) take(hand, { state: found.best, sequence: lastFirst(field, found.best).reverse() });
  const { builds, runs } = found.least;
  const one = field.core.builds.length === 1;
  hand.floor = higher(hand.floor, { builds, runs: one ? runs : 0 });
  return found.proved;
}

function widen(field: Field, hand: Hand, { purse, long }: { purse: Purse; long: number }): void {
  const wide = Math.min(widest, Math.floor(purse.left / Math.max(1, long)));
  if (wide < 2) return;
  const swept = sweep(field, { floor: hand.floor, beat: hand.cost }, { wide, purse });
  if (swept) take(hand, { state: swept, sequence: lastFirst(field, swept).reverse() });
}

const hasOneSetup = ({ setupOf }: Graph): boolean => setupOf.every((setup) => setup === setupOf[0]);

/** One setup is one run: whatever waits within it is done in it. */
function oneRun({ setupOf }: Graph): Solved {
  const cost = { builds: 1, runs: 1 };
  return { sequence: setupOf.slice(0, 1), cost, least: cost, proved: true };
}

function solveField(given: Graph, purse: Purse): Solved {
  if (hasOneSetup(given)) return oneRun(given);
  const graph = merged(given);
  const field = fieldOf(graph);
  const hand: Hand = { sequence: [], cost: endless, floor: lowest(field) };
  const one = field.core.builds.length === 1;
  let long = 0;
  if (one) long = dive(field, graph, hand);
  else visit(field, graph, hand, purse);
  if (!one && !isBest(hand) && worthwhile(field, hand, purse)) {
    const { least } = partly(purse, 1 / 4, (own) => solveOneBuild(bySetup(graph), own));
    hand.floor = higher(hand.floor, { builds: 0, runs: least.runs });
  }
  const proved = isBest(hand) || improve(field, hand, purse);
  if (!proved && one) widen(field, hand, { purse, long });
  return { ...hand, least: hand.floor, proved: proved || isBest(hand) };
}

function joined(parts: readonly Solved[]): Solved {
  const add = (a: Cost, b: Cost): Cost => ({ builds: a.builds + b.builds, runs: a.runs + b.runs });
  const none: Cost = { builds: 0, runs: 0 };
  return {
    sequence: parts.flatMap((p) => p.sequence),
    cost: parts.reduce((sum, p) => add(sum, p.cost), none),
    least: parts.reduce((sum, p) => add(sum, p.least), none),
    proved: parts.every((p) => p.proved),
  };
}

/** What has one build only is parted by setups; the build is set once for all of it. */
function solveOneBuild(graph: Graph, purse: Purse): Solved {
  if (hasOneSetup(graph)) return oneRun(graph);
  const one = merged(graph);
  const all = joined(split(one, one.setupOf).map((part) => solveField(part, purse)));
  return { ...all, cost: { builds: 1, runs: all.cost.runs }, least: { builds: 1, runs: all.least.runs } };
}

/**
 * The setups to run, fewest builds first, then fewest runs.
 *
 * @param graph operations by number; nothing waits on itself
 * @param purse states that may be opened
 * @returns at each setup of `sequence`, everything of it that is ready is to be done
 * @example solve(graph, { left: 1000 }).sequence
 */
export function solve(graph: Graph, purse: Purse): Solved {
  const one = merged(graph);
  return joined(
    split(one, one.buildOf).map((part) =>
      new Set(part.buildOf).size === 1 ? solveOneBuild(part, purse) : solveField(part, purse),
    ),
  );
}
