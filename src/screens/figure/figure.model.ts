import { noLines } from '../../length/evaluate';
import { type Expr, writeExpr } from '../../length/expr';
import { type Key, type KeypadLook, look, press, resumed } from '../../length/keypad';
import { blank, emptySlot, type Keypad } from '../../length/keypad-state';
import type { Length } from '../../length/length';
import { parseLine } from '../../length/parse-line';
import { readLength } from '../../length/read';
import type { Tape } from '../../length/tape';
import type { Units } from '../../length/units';
import { type Before, type FigureState, mostLines, type StripBack, undoDepth } from './figure.state';
import { builtOn, type Line, lineValue, sumOfLengths } from './lines';
import type { NotDone } from './not-done';
import { theLot } from './words';

export type Pressed = { readonly state: FigureState; readonly refused?: NotDone };

export const lookAt = (state: FigureState): KeypadLook =>
  look(state.keys, (id) => lineValue(state.lines, id));

function remember(state: FigureState, next: FigureState): FigureState {
  const before: Before = {
    keys: state.keys,
    current: state.current,
    made: state.made,
    ...(state.lines === next.lines ? {} : { strip: backTo(state.lines, next.lines) }),
    ...(state.from === next.from ? {} : { from: state.from }),
    ...(state.sums === next.sums ? {} : { sums: state.sums }),
    ...(state.typed === next.typed ? {} : { typed: state.typed }),
  };
  return { ...next, undo: [...state.undo, before].slice(-undoDepth), steps: state.steps + 1 };
}

function backTo(before: readonly Line[], after: readonly Line[]): StripBack {
  return {
    drop: after.filter(({ id }) => !before.some((line) => line.id === id)).map(({ id }) => id),
    put: before.flatMap((line, at) => (after.includes(line) ? [] : [{ line, at }])),
  };
}

function takenBack(lines: readonly Line[], { drop, put }: StripBack): readonly Line[] {
  const found = lines.filter(({ id }) => !drop.includes(id));
  for (const { line, at } of put) {
    const k = found.findIndex(({ id }) => id === line.id);
    found.splice(k < 0 ? at : k, k < 0 ? 0 : 1, line);
  }
  return found;
}

export function undoFigure(state: FigureState): FigureState {
  const before = state.undo[state.undo.length - 1];
  if (!before) return state;
  return {
    ...state,
    keys: before.keys,
    current: before.current,
    made: before.made,
    lines: before.strip ? takenBack(state.lines, before.strip) : state.lines,
    from: before.from ?? state.from,
    sums: before.sums ?? state.sums,
    typed: before.typed ?? state.typed,
    undo: state.undo.slice(0, -1),
    steps: state.steps - 1,
  };
}

/**
 * A key pressed. Equals writes the line to the strip, or, when one is being changed, over it: what is built on it
 * follows.
 */
export function pressKey(state: FigureState, key: Key, tape: Tape): Pressed {
  const changing = state.current !== '' && !state.keys.done;
  if (changing && key.key === 'line' && ringsBack(state, key.id))
    return { state, refused: 'built-on-itself' };
  const next = press(state.keys, key, tape);
  if (!next.ok) return { state, refused: next.error };
  if (key.key === 'equals') return finished(state, next.value);
  if (isTooLong(next.value)) return { state, refused: 'sum-too-long' };
  const goingOn = state.keys.done && key.key === 'op' && state.current !== '';
  const keys = goingOn ? onFrom(next.value, state.current) : next.value;
  return { state: remember(state, { ...state, keys, current: changing ? state.current : '' }) };
}

/** More than one line of the strip can hold, or more brackets than anyone reads. */
function isTooLong(keys: Keypad): boolean {
  const { text } = look(keys, noLines);
  return keys.frames.length > 20 || (text !== undefined && !parseLine(text).ok);
}

const ringsBack = (state: FigureState, id: string): boolean =>
  id === state.current || builtOn(state.lines, state.current).some((line) => line.id === id);

/** A sum gone on from the answer stands on the line just finished, so that it follows when that one changes. */
function onFrom(keys: Keypad, line: string): Keypad {
  const top = keys.frames[0];
  return top?.op ? { ...keys, frames: [{ total: { is: 'line', id: line }, op: top.op }] } : keys;
}

function finished(state: FigureState, keys: Keypad): Pressed {
  const { text } = look(keys, (id) => lineValue(state.lines, id));
  return text === undefined ? { state } : written(state, { ...state, keys }, text);
}

/** The sum put on the strip: over the line being changed, else as a new one. */
function written(before: FigureState, state: FigureState, text: string, name = ''): Pressed {
  if (!parseLine(text).ok) return { state: before, refused: 'sum-too-long' };
  const at = state.lines.find((line) => line.id === state.current);
  if (at) {
    const lines = state.lines.map((line) => (line === at ? { ...line, text } : line));
    return { state: remember(before, { ...state, lines }) };
  }
  const added = withLine(state, { name, text });
  return added
    ? { state: remember(before, { ...added, current: lastMade(added) }) }
    : { state: before, refused: 'strip-full' };
}

function withLine(
  state: FigureState,
  line: { readonly name: string; readonly text: string },
): FigureState | undefined {
  if (state.lines.length >= mostLines) return undefined;
  const made = state.made + 1;
  return { ...state, made, lines: [...state.lines, { id: lastMade({ ...state, made }), ...line }] };
}

/** Id of the line made last; no other page makes the same. */
const lastMade = ({ tag = '', made }: FigureState): string => `${tag}${made}`;

const onKeys = (state: FigureState, expr: Expr): FigureState => ({
  ...state,
  keys: resumed(expr),
  current: '',
});

/** A typed line, once read, goes to the strip like a keyed one. */
export function takeTyped(state: FigureState, unit: Units): Pressed {
  const expr = parseLine(state.typed, unit);
  if (!expr.ok) return { state };
  return written(state, { ...onKeys(state, expr.value), typed: '' }, writeExpr(expr.value));
}

/** A reading typed by calipers: it stands as the figure in hand, whatever was being keyed, and is always a length. */
export function takeReading(
  state: FigureState,
  { text, unit }: { readonly text: string; readonly unit: Units },
  tape: Tape,
): Pressed {
  let keys: Keypad = state.keys.done ? state.keys : { ...state.keys, slot: emptySlot };
  for (const sign of text.replace(',', '.').replace('+', '')) {
    const next = press(keys, sign === '.' ? { key: 'point' } : { key: 'digit', digit: Number(sign) }, tape);
    if (!next.ok) return { state, refused: next.error };
    keys = next.value;
  }
  if (keys.slot.unit !== unit) {
    const next = press(keys, { key: 'mm' }, tape);
    if (!next.ok) return { state, refused: next.error };
    keys = next.value;
  }
  const changing = state.current !== '' && !state.keys.done;
  const next = { ...state, keys: { ...keys, slot: { ...keys.slot, as: 'length' as const } } };
  return { state: remember(state, { ...next, current: changing ? state.current : '' }) };
}

/** A measured figure used in the sum, as a named line of the strip, so that the sum says where it came from. */
export function useFigure(state: FigureState, name: string, value: Length, tape: Tape): Pressed {
  const text = value.d === 1n ? `${value.n}"` : `${value.n}/${value.d}`;
  const there = state.lines.find((line) => line.name === name && line.text === text);
  const lined = there ? state : withLine(state, { name, text });
  if (!lined) return { state, refused: 'strip-full' };
  const next = pressKey(lined, { key: 'line', id: there?.id ?? lastMade(lined) }, tape);
  return next.refused ? { ...next, state } : { state: remember(state, { ...next.state, undo: state.undo }) };
}

/** A line taken back onto the keys to be changed; equals writes over it. */
export function changeLine(state: FigureState, id: string): FigureState {
  const line = state.lines.find((l) => l.id === id);
  const expr = line && parseLine(line.text);
  if (!expr?.ok) return state;
  return remember(state, { ...state, keys: { ...resumed(expr.value), done: false }, current: id });
}

export const nameLine = (state: FigureState, id: string, name: string): FigureState =>
  remember(state, { ...state, lines: state.lines.map((l) => (l.id === id ? { ...l, name } : l)) });

export function dropLine(state: FigureState, id: string): FigureState {
  const gone = state.current === id;
  return remember(state, {
    ...state,
    current: gone ? '' : state.current,
    keys: gone ? blank : state.keys,
    lines: state.lines.filter((l) => l.id !== id),
  });
}

export const newStrip = (state: FigureState): FigureState =>
  remember(state, { ...state, keys: blank, current: '', lines: [] });

/** The strip totalled: one more line, built on all the others that are lengths. */
export function addTheLot(state: FigureState): Pressed {
  const sum = sumOfLengths(state.lines);
  return sum ? written(state, onKeys(state, sum), writeExpr(sum), theLot) : { state };
}

/** Answers measured back from a length too; from nothing when the text is empty. */
export const measureBack = (state: FigureState, from: string): FigureState =>
  remember(state, { ...state, from });

/** A blank of a quick sum filled or emptied. The length of a part is also what answers are measured back from. */
export function fillBlank(state: FigureState, blankName: string, text: string | undefined): FigureState {
  const { [blankName]: _, ...others } = state.sums;
  const from = blankName === 'other-end.length' ? (text ?? '') : state.from;
  return remember(state, {
    ...state,
    from,
    sums: text === undefined ? others : { ...others, [blankName]: text },
  });
}

/** The length answers are measured back from, when one is set. */
export function fromLength(state: FigureState): Length | undefined {
  if (state.from.startsWith('#')) {
    const worth = lineValue(state.lines, state.from.slice(1));
    return worth.ok && worth.value.kind === 'length' ? worth.value.value : undefined;
  }
  const read = readLength(state.from);
  return read.ok ? read.value.value : undefined;
}
