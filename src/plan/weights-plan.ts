import type { Job } from '../job/job';
import { add, half, type Length, type Ratio, ratio, subtract, zero } from '../length/length';
import { loadOf, loadSays } from '../trade/boxes/contents';
import { throughBack } from '../trade/carcass/back-how';
import type { Case } from '../trade/carcass/case';
import { isFiller } from '../trade/carcass/filler';
import type { Part } from '../trade/carcass/part';
import type { PartName } from '../trade/carcass/part-name';
import { setBackOf } from '../trade/carcass/toe-notch';
import { liftPlan, shopMost } from '../trade/loads/lift-plan';
import { partsToWeigh } from '../trade/loads/of-parts';
import { pulledOut, tipOver } from '../trade/loads/tipping';
import { weighAll } from '../trade/loads/weights';
import { thingsIn } from './bank-plan';
import type { Plan } from './plan';
import { weighedAs } from './stuff-of';

/** A drawer by itself: what box and front weigh, and what goes into it. Pounds, inches. */
export type DrawerLoad = {
  /** `<bank>~c<column>d<number>`, as its parts begin. */
  readonly id: string;
  readonly bank: string;
  readonly no: number;
  readonly column?: number;
  readonly empty: Ratio;
  readonly things: Ratio;
  readonly unweighed: number;
  readonly full: Ratio;
  /** Its box outside, front to back. */
  readonly deep: Length;
  /** Against what its pair carries. */
  readonly says: ReturnType<typeof loadSays>;
  /** It runs in wood: no maker says what that carries. */
  readonly inWood?: true;
};

/** What a case weighs, in the order of its parts. Pounds. */
export type CaseWeights = {
  readonly of: Case;
  /** How far behind its foremost face it stands on the floor. Inches. */
  readonly setBack: Length;
  /** How far it stands out behind its sides: a back laid on. Inches. */
  readonly behind: Length;
  readonly weights: ReturnType<typeof weighAll>;
  readonly parts: ReadonlyMap<string, Part>;
  /** Parts whose size nobody knows: their weight is missing. */
  readonly unknown: readonly Part[];
  readonly rest: Ratio | undefined;
  readonly drawers: readonly DrawerLoad[];
  /** What stands on shelves and trays, and what of it nobody weighed. */
  readonly onShelves: Ratio;
  readonly unweighed: number;
};

const none = ratio(0n);
const total = (list: readonly Ratio[]): Ratio => list.reduce((so, x) => so.add(x) as Ratio, none);

/** What one person lifts in this job. Pounds. */
export const mostOf = ({ carry }: Pick<Job, 'carry'>): Ratio => carry ?? shopMost;

/**
 * Running weight of a case: its parts, its drawers, what is loose, and the rest that is no part. Filler strips go on
 * when it stands, and are carried by themselves.
 */
export function weightsOf(plan: Plan, of: Case): CaseWeights {
  const { job } = plan;
  const banks = job.banks.filter((bank) => bank.of === of.id);
  const own = plan.parts.filter(
    (part) => (part.of === of.id && !isFiller(part)) || banks.some(({ id }) => id === part.of),
  );
  const { list, unknown } = partsToWeigh(own, weighedAs(job));
  const rest = job.lifts[of.id]?.rest;
  const all = rest ? [...list, { id: 'rest', of: 'hardware', count: 1, pounds: rest } as const] : list;
  const on = job.things.filter(({ part }) => part?.startsWith(`${of.id}~`));
  const shelves = loadOf(on);
  const found = plan.worked.get(of.id);
  return {
    of,
    setBack: found?.ok ? setBackOf(found.value.sizes) : zero,
    behind: found?.ok ? subtract(throughBack(found.value.sizes).value, found.value.sizes.depth.value) : zero,
    weights: weighAll(all),
    parts: new Map(own.map((part) => [part.id, part])),
    unknown: own.filter(({ id }) => unknown.includes(id)),
    rest,
    drawers: banks.flatMap((bank) => drawersOf(plan, bank.id)),
    onShelves: shelves.contents,
    unweighed: shelves.unweighed,
  };
}

const inCase: readonly PartName['role'][] = ['runner', 'hangstrip', 'kicker', 'stopblock'];

/** The drawers of a bank as its parts weigh, column by column, each with what goes into it. */
function drawersOf(plan: Plan, bank: string): readonly DrawerLoad[] {
  const found = plan.banks.get(bank);
  if (!found?.drawers?.ok) return [];
  // what it hangs on stays in the case
  const own = found.parts.filter(({ name }) => !inCase.includes(name.role));
  const { list } = partsToWeigh(own, weighedAs(plan.job));
  const weighed = weighAll(list);
  const pieces = weighed.ok ? weighed.value.pieces : [];
  const { columns } = found.drawers.value.fronts;
  return found.drawers.value.drawers.map(({ no, column, plan: { depth } }) => {
    const id = `${bank}~c${column}d${no}`;
    const empty = total(
      pieces.flatMap((x) => (x.id.startsWith(id) && !/^\d/.test(x.id.slice(id.length)) ? [x.all] : [])),
    );
    const { contents, unweighed } = loadOf(thingsIn(plan.job, bank, { no, column }));
    const full = empty.add(contents) as Ratio;
    return {
      id,
      bank,
      no,
      ...(columns.length > 1 ? { column } : {}),
      empty,
      things: contents,
      unweighed,
      full,
      deep: depth,
      says: loadSays(full, found.bank.hung ? undefined : found.bank.rating),
      ...(found.bank.hung ? { inWood: true as const } : {}),
    };
  });
}

/** Cases from the floor up: what this one stands on, and what stands on it. A circle ends where it closes. */
export function stackOf(job: Job, of: Case): readonly Case[] {
  const under = (c: Case): Case | undefined => job.cases.find(({ id }) => id === job.lifts[c.id]?.on);
  const over = (c: Case): Case | undefined => job.cases.find(({ id }) => job.lifts[id]?.on === c.id);
  const down = chain(of, under);
  return [...down.slice(1).reverse(), ...chain(of, over).filter((c) => c === of || !down.includes(c))];
}

function chain(from: Case, next: (c: Case) => Case | undefined): readonly Case[] {
  const found: Case[] = [];
  for (let c: Case | undefined = from; c && !found.includes(c); c = next(c)) found.push(c);
  return found;
}

const sumOf = ({ weights }: CaseWeights, groups: readonly ('case' | 'loose' | 'hardware')[]): Ratio =>
  weights.ok ? total(groups.map((group) => weights.value.sums[group])) : none;

/** How the cases of a stack are moved in, empty: what comes out, what is set, what goes back. */
export function movingIn(plan: Plan, of: Case): ReturnType<typeof liftPlan> {
  const units = stackOf(plan.job, of).map((c) => {
    const own = weightsOf(plan, c);
    const pieces = own.weights.ok ? own.weights.value.pieces : [];
    return {
      id: c.id,
      pounds: sumOf(own, ['case', 'hardware']),
      drawers: own.drawers.map(({ id, empty }) => ({ id, pounds: empty })),
      loose: pieces.filter((x) => x.of === 'loose').map(({ id, one }) => ({ id, pounds: one })),
    };
  });
  return liftPlan(units, mostOf(plan.job));
}

/** Drawers pulled all the way against what stands behind the front of the case; none without drawers or depth. */
type Tipping = {
  readonly all: ReturnType<typeof tipOver>;
  readonly one: ReturnType<typeof tipOver>;
  /** Loose shelves, trays and what stands on them: they may be out, and hold nothing. Pounds. */
  readonly loose: Ratio;
  /** Things in the drawers that nobody weighed. */
  readonly unweighed: number;
};

/** All drawers out, and the heaviest alone, each with what is in it. What is loose is not counted on. */
export function tippingOf(own: CaseWeights): Tipping | undefined {
  const { of, drawers } = own;
  if (drawers.length === 0 || !of.depth) return undefined;
  const { setBack } = own;
  const middle = half(add(of.depth, own.behind));
  const behind = [{ id: of.id, pounds: sumOf(own, ['case', 'hardware']), from: middle }];
  const heaviest = drawers.reduce((a, b) => (a.full.lt(b.full) ? b : a));
  const out = (isOut: (drawer: DrawerLoad) => boolean) => {
    const placed = pulledOut(
      drawers.map((x) => ({ id: x.id, pounds: x.full, deep: x.deep, pulled: isOut(x) ? x.deep : zero })),
    );
    return tipOver({
      ahead: placed.ok ? placed.value.ahead : [],
      behind: [...behind, ...(placed.ok ? placed.value.behind : [])],
      setBack,
    });
  };
  return {
    all: out(() => true),
    one: out((x) => x === heaviest),
    loose: sumOf(own, ['loose']).add(own.onShelves) as Ratio,
    unweighed: drawers.reduce((n, x) => n + x.unweighed, 0),
  };
}
