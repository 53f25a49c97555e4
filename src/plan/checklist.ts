import type { Folded } from '../job/log';
import { tickedAt } from '../job/ticked-at';
import { keeper } from '../length/keeper';
import type { Length } from '../length/length';
import { fromStored } from '../length/stored';
import type { WorkName } from '../trade/carcass/part-name';
import { backOf } from '../trade/fronts/bank';
import { type CutTo, noLongerFit } from '../trade/setups/changes';
import { type Blocked, blockedBy, type Card, cardsOf, type Doing } from '../trade/setups/checklist';
import { idsOf, type Operation } from '../trade/setups/operation';
import { feetStandOf } from './feet-set';
import type { Plan } from './plan';

/** The checklist for the screen: cards in order, and what is ticked, blocked and still wanted. */
export type Checklist = {
  readonly plan: Plan;
  readonly cards: readonly Card[];
  readonly doing: Doing;
  readonly cutTo: CutTo;
};

/** The cards of a plan: the very same at each tick. */
const cards = keeper<Plan, readonly Card[]>();

export function checklistOf(plan: Plan, { ticks }: Folded): Checklist {
  const opened = [...plan.banks.values()].filter(
    ({ fronts }) => fronts.ok && fronts.value.columns.every((c) => c.opening.measured),
  );
  const measured = new Set([
    ...plan.stuff.filter((s) => s.measured).map((s) => s.id),
    ...opened.map(({ bank }) => bank.id),
    ...opened.flatMap(({ bank, fronts }) =>
      fronts.ok && fronts.value.columns.every((c) => c.opening.backMeasured) ? [backOf(bank.id)] : [],
    ),
  ]);
  return {
    plan,
    cards: cards(plan, [], () => (plan.order.ok ? cardsOf(plan.order.value.runs, plan.byId) : [])),
    doing: {
      done: (op) => tickedUnder(plan, ticks, op) !== undefined,
      let: (op) => plan.job.let[op] !== undefined,
      measured: (stock) => measured.has(stock),
      feet: (id) => feetStandOf(plan.job, id, ticks),
    },
    cutTo: (op) => {
      const id = tickedUnder(plan, ticks, op);
      const tick = id === undefined ? undefined : ticks.get(id);
      const read = tick && fromStored(tick.figure);
      if (!read?.ok) return undefined;
      const came = cameOutAt(plan, op);
      return {
        figure: came ?? read.value,
        ...(came ? { stood: read.value } : {}),
        ...(id === undefined ? {} : plan.job.widths[id]),
      };
    },
  };
}

/** The id a tick of an operation is kept under: of what is cut for several the one cut as it is now, else any. */
function tickedUnder({ byId }: Plan, ticks: Folded['ticks'], id: string): string | undefined {
  const op = byId.get(id);
  if (!op?.also) return ticks.has(id) ? id : undefined;
  const ticked = idsOf(op).filter((one) => ticks.has(one));
  return ticked.find((one) => tickedAt(ticks, one, op.figure)) ?? ticked[0];
}

/** The size a piece was found to have, beside what its rip or its length was ticked at. */
function cameOutAt({ byId, job }: Plan, id: string): Length | undefined {
  const op = byId.get(id);
  const piece = op && job.parts[op.part]?.pieces[op.copy];
  return op?.what === 'length' ? piece?.asLength : op?.what === 'rip' ? piece?.asWidth : undefined;
}

export const cutCount = ({ plan, doing }: Checklist): { readonly cut: number; readonly of: number } => ({
  cut: plan.operations.filter((op) => doing.done(op.id)).length,
  of: plan.operations.length,
});

export const isDone = (list: Checklist, card: Card): boolean =>
  card.operations.every((op) => list.doing.done(op.id));

export const blocks = (list: Checklist, op: Operation): readonly Blocked[] =>
  blockedBy(op, list.plan.byId, list.doing);

/** The card to stand at: the one that stands on its machine while it wants anything, else the first with work ready. */
export function standingCard(list: Checklist): Card | undefined {
  const open = list.cards.filter((card) => !isDone(list, card));
  const stands = open.find((card) => card.id === list.plan.job.standing);
  const ready = (card: Card) =>
    card.operations.some((op) => !list.doing.done(op.id) && blocks(list, op).length === 0);
  return (stands && ready(stands) ? stands : undefined) ?? open.find(ready) ?? open[0];
}

/** Pieces cut to a figure they no longer want. */
export const misfits = (list: Checklist) => noLongerFit(list.plan.operations, list.cutTo);

/** Operations of a card gathered by part, each piece with its letter. */
export type Group = {
  readonly part: string;
  readonly name: WorkName;
  readonly pieces: readonly { readonly op: Operation; readonly letter: string }[];
};

export function groupsOf(card: Card, plan: Plan): readonly Group[] {
  const groups = new Map<string, Operation[]>();
  for (const op of card.operations) groups.set(groupKey(op), [...(groups.get(groupKey(op)) ?? []), op]);
  return [...groups].flatMap(([key, ops]) => {
    const [first] = ops;
    if (!first) return [];
    const part = plan.parts.find((p) => p.id === first.part);
    const single = ops.length === 1;
    return {
      part: key,
      name: single || !part ? first.name : { of: part.name },
      pieces: ops.map((op, k) => ({ op, letter: single ? '' : letterOf(op.copy, k) })),
    };
  });
}

/** Steps at the bench stand alone: each has a name of its own. */
const groupKey = (op: Operation): string =>
  op.part.endsWith('~bench') ? op.id : `${op.part}|${op.groove?.setting ?? op.what}`;

/** A copy's letter: a, b … z, then its number. @example letterOf('3', 2) // 'c' */
function letterOf(copy: string, k: number): string {
  const own = copy.split('~')[0] ?? '';
  const n = /^\d+$/.test(own) ? Number(own) : k + 1;
  return n <= 26 ? String.fromCharCode(96 + n) : `${n}`;
}
