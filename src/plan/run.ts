import { machineAt } from '../trade/machines/machines';
import { type Card, lastCall } from '../trade/setups/checklist';
import type { Operation } from '../trade/setups/operation';
import { type Checklist, isDone } from './checklist';

/** Cards in order, gathered while one cutter at one height serves them. */
export function runsOfBuild(cards: readonly Card[]): readonly (readonly Card[])[] {
  const runs: Card[][] = [];
  for (const card of cards) {
    const last = runs[runs.length - 1];
    if (last && buildOf(last[0]) === buildOf(card)) last.push(card);
    else runs.push([card]);
  }
  return runs;
}

const buildOf = (card: Card | undefined): string | undefined => card?.operations[0]?.setup.build;

/** The cards that are cut before cutter or height is changed again, with the card in hand among them. */
export const runOf = (list: Checklist, card: Card): readonly Card[] =>
  runsOfBuild(list.cards).find((run) => run.includes(card)) ?? [card];

/** The card a groove of a board is cut at: that of one setting, else the first of the board that wants work. */
export function cardOfGroove(list: Checklist, board: string, setting: string | undefined): Card | undefined {
  const cards = list.cards.filter((card) =>
    card.operations.some(
      ({ groove }) => groove?.board === board && (setting === undefined || groove.setting === setting),
    ),
  );
  return cards.find((card) => !isDone(list, card)) ?? cards[0];
}

/** The operation whose cutter and height stand on the machine, by what the job was last set to. */
export function standingOn({ plan }: Checklist): Operation | undefined {
  const { standing } = plan.job;
  if (standing === undefined) return undefined;
  const key = standing.split('~~')[0];
  return (
    plan.operations.find(({ setup }) => setup.key === key) ??
    // its figure has changed since: the cutter is still on
    plan.operations.find(({ setup: { build } }) => standing === build || standing.startsWith(`${build}~`))
  );
}

const isCutter = ({ setup }: Operation): boolean =>
  ['stack', 'shoulders', 'bit'].includes(machineAt(setup.machine).cuts);
/** A circular saw keeps its own blade, whatever stands on a table; a stick is marked or cut beside what stands. */
const isBlade = ({ setup: { machine } }: Operation): boolean =>
  machineAt(machine).cuts === 'blade' && machine !== 'saw' && machine !== 'stick';

/** What a change of cutter or height begins with, and what it ends with. */
export type BuildChange = { readonly from: Operation | undefined; readonly to: Operation };

/**
 * Whether a card wants another stack, bit or height than what stands. That is a step of its own: nothing is cut at the
 * card before it is taken. A single blade that follows a single blade is none.
 */
export function changeFor(list: Checklist, card: Card): BuildChange | undefined {
  const [to] = card.operations;
  if (!to || to.cannot) return undefined;
  const from = standingOn(list);
  if (from?.setup.build === to.setup.build) return undefined;
  return isCutter(to) || (isBlade(to) && from && isCutter(from)) ? { from, to } : undefined;
}

/** The card that stands on the machine, where it is still in the plan. */
export const cardStanding = (list: Checklist): Card | undefined =>
  list.cards.find((card) => card.id === list.plan.job.standing);

/**
 * What is unmade when a card is left: everything open that wants this very figure, blocked ones too, once something has
 * been cut at it. Nothing where nothing was begun, or all is cut.
 */
export function unmadeAt({ plan, doing }: Checklist, card: Card): readonly Operation[] {
  const [first] = card.operations;
  const begun = card.operations.some((op) => doing.done(op.id) && op.what !== 'test');
  return first?.setup.figure && begun ? lastCall(first.setup, plan.operations, doing.done).sameSetup : [];
}

/** Cards of a run that were passed by: open ones that stand before the last one begun. */
export function passedBy(list: Checklist, run: readonly Card[]): readonly Card[] {
  const begun = run.map((card) => card.operations.some((op) => list.doing.done(op.id)));
  return run.filter((card, k) => k < begun.lastIndexOf(true) && !isDone(list, card));
}
