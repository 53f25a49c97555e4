import { evaluate, type Lookup, type Quantity, type ReckonError } from './evaluate';
import { combine, type Expr, type Op, type Token, tokensOf, writeExpr } from './expr';
import {
  countText,
  emptySlotOn,
  isBareSlot,
  isEmpty,
  pressSlot,
  type Refused,
  type SlotKey,
  slotText,
} from './keypad-slot';
import { blank, emptySlot, type Frame, type Keypad, type Slot } from './keypad-state';
import { err, ok, type Result } from './result';
import type { Tape } from './tape';

export type Key =
  | SlotKey
  | { readonly key: 'op'; readonly op: Op }
  | { readonly key: 'bracket' }
  | { readonly key: 'equals' }
  | { readonly key: 'line'; readonly id: string }
  | { readonly key: 'swap' };

/**
 * A key pressed. Keys act on the running total, as in the shop; the sum shown has brackets so that it reads the same
 * with ordinary precedence. A key that means nothing just now is refused with its reason and changes nothing.
 *
 * @example keys '27', 5/8, −, 47/64, ÷, 2 show as (27 5/8 − 47/64) ÷ 2
 */
export function press(state: Keypad, key: Key, tape: Tape): Result<Keypad, Refused> {
  switch (key.key) {
    case 'op':
      return pressOp(state, key.op);
    case 'bracket':
      return pressBracket(state);
    case 'equals':
      return pressEquals(state);
    case 'line':
      return useLine(state, key.id);
    case 'swap':
      return swap(state);
    case 'erase':
      return pressErase(state);
    default:
      return pressFigure(state, key, tape);
  }
}

const top = (state: Keypad): Frame => state.frames[state.frames.length - 1] ?? {};
const withTop = (state: Keypad, frame: Frame): Keypad => ({
  ...state,
  frames: [...state.frames.slice(0, -1), frame],
});
const hasFigure = (state: Keypad): boolean => state.line !== undefined || !isEmpty(state.slot);

function pressFigure(state: Keypad, key: SlotKey, tape: Tape): Result<Keypad, Refused> {
  const from = state.done ? blank : state;
  if (from.line !== undefined || (top(from).total && !top(from).op)) return err('sign-first');
  const slot = pressSlot(
    isEmpty(from.slot) && from.slot.unit === 'in' ? emptySlotOn(tape) : from.slot,
    key,
    tape,
  );
  return slot.ok ? ok({ ...from, slot: slot.value }) : slot;
}

function useLine(state: Keypad, id: string): Result<Keypad, Refused> {
  const from = state.done ? blank : state;
  if (top(from).total && !top(from).op) return err('sign-first');
  return ok({ ...from, slot: emptySlot, line: id });
}

/** The figure in hand as an operand: after × a bare number counts, after ÷ a whole bare one. */
function operand(state: Keypad): Expr {
  if (state.line !== undefined) return { is: 'line', id: state.line };
  const { slot } = state;
  if (countsAs(state) === 'count') return { is: 'count', text: countText(slot) };
  const bare = slot.home === 'mm' && isBareSlot(slot) ? { bare: countText(slot) } : {};
  return { is: 'length', text: slotText(slot), ...bare };
}

function countsAs(state: Keypad): 'count' | 'length' {
  const { slot } = state;
  if (!isBareSlot(slot)) return 'length';
  if (slot.as) return slot.as;
  const { op } = top(state);
  return op === '×' || (op === '÷' && !slot.digits.includes('.')) ? 'count' : 'length';
}

/** The figure in hand taken into its bracket's total. */
function taken(state: Keypad): Keypad {
  if (!hasFigure(state)) return state;
  const { total, op } = top(state);
  const value = operand(state);
  const { line: _, ...rest } = state;
  return withTop({ ...rest, slot: emptySlot }, { total: total && op ? combine(op, total, value) : value });
}

function pressOp(state: Keypad, op: Op): Result<Keypad, Refused> {
  const next = taken(state);
  const { total } = top(next);
  if (!total) return err('figure-first');
  return ok(withTop({ ...next, done: false }, { total, op }));
}

function pressBracket(state: Keypad): Result<Keypad, Refused> {
  if (state.done) return ok({ ...blank, frames: [{}, {}] });
  if (!hasFigure(state) && (!top(state).total || top(state).op))
    return ok({ ...state, frames: [...state.frames, {}] });
  return state.frames.length > 1 ? ok(closed(taken(state))) : err('nothing-to-close');
}

/** The innermost bracket closed: its total goes to the one outside it. A sign without a figure is let go. */
function closed(state: Keypad): Keypad {
  const inner = top(state).total;
  const outside = { ...state, frames: state.frames.slice(0, -1) };
  const { total, op } = top(outside);
  if (!inner) return outside;
  return withTop(outside, { total: total && op ? combine(op, total, inner) : inner });
}

function pressEquals(state: Keypad): Result<Keypad, Refused> {
  let next = taken(state);
  while (next.frames.length > 1) next = closed(next);
  const { total } = top(next);
  if (!total) return err('figure-first');
  return ok({ ...next, frames: [{ total }], done: true });
}

function swap(state: Keypad): Result<Keypad, Refused> {
  if (state.done || state.line !== undefined || !isBareSlot(state.slot)) return err('nothing-to-swap');
  return ok({ ...state, slot: { ...state.slot, as: countsAs(state) === 'count' ? 'length' : 'count' } });
}

/** The last thing: a key of the figure, the line, the sign, the bracket. After equals, the whole sum. */
function pressErase(state: Keypad): Result<Keypad, Refused> {
  if (state.done) return ok(blank);
  const { line, ...rest } = state;
  if (line !== undefined) return ok(rest);
  if (!isEmpty(state.slot)) {
    const slot = pressSlot(state.slot, { key: 'erase' }, '1/32');
    return slot.ok ? ok({ ...state, slot: slot.value }) : slot;
  }
  const { total, op } = top(state);
  if (op && total) return ok(withTop(state, { total }));
  if (total) return ok(unTaken(state, total));
  return state.frames.length > 1
    ? ok({ ...state, frames: state.frames.slice(0, -1) })
    : err('nothing-to-erase');
}

/** The last operand of a total given up; what stood before it stays. */
function unTaken(state: Keypad, total: Expr): Keypad {
  return total.is === 'op' ? withTop(state, { total: total.a, op: total.op }) : withTop(state, {});
}

export type KeypadLook = {
  /** The sum so far, brackets visible, open ones left open. */
  readonly tokens: readonly Token[];
  readonly slot: Slot;
  /** What the bare figure in hand is taken as; undefined when there is nothing to swap. */
  readonly takenAs?: 'count' | 'length';
  /** Running total, or the answer after equals; undefined before any figure. */
  readonly result?: Result<Quantity, ReckonError>;
  readonly done: boolean;
  /** The finished sum as text that `parseLine` reads back. */
  readonly text?: string;
};

/** What the keys have come to, for the screen. */
export function look(state: Keypad, lookup: Lookup): KeypadLook {
  const whole = pressEquals(state);
  const expr = whole.ok ? top(whole.value).total : undefined;
  const swappable =
    !state.done && state.line === undefined && isBareSlot(state.slot) && top(state).op !== undefined;
  return {
    tokens: shown(state),
    slot: state.slot,
    done: state.done,
    ...(swappable ? { takenAs: countsAs(state) } : {}),
    ...(expr ? { result: evaluate(expr, lookup), text: writeExpr(expr) } : {}),
  };
}

function shown(state: Keypad): readonly Token[] {
  const figure: readonly Token[] = hasFigure(state) ? tokensOf(operand(state)) : [];
  const last = state.frames.length - 1;
  return state.frames.flatMap((frame, k): readonly Token[] => [
    ...(k > 0 ? [{ is: 'bracket', text: '(' } as const] : []),
    ...shownFrame(frame),
    ...(k === last ? figure : []),
  ]);
}

/** A total with a stronger or weaker sign waiting shows the bracket it will have. */
function shownFrame({ total, op }: Frame): readonly Token[] {
  if (!total) return [];
  if (!op) return tokensOf(total);
  const joined = tokensOf({ is: 'op', op, a: total, b: { is: 'length', text: '' } });
  return joined.slice(0, -1);
}

/** A finished sum back on the keys, to go on from it. */
export const resumed = (expr: Expr): Keypad => ({ frames: [{ total: expr }], slot: emptySlot, done: true });
