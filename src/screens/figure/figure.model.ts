import { evaluate, type Quantity, type ReckonError } from '../../length/evaluate';
import { type Expr, linesIn, writeExpr } from '../../length/expr';
import { blank, type Key, type Keypad, type KeypadLook, look, press, resumed } from '../../length/keypad';
import type { Refused } from '../../length/keypad-slot';
import type { Length } from '../../length/length';
import { parseLine } from '../../length/parse-line';
import { readLength } from '../../length/read';
import { err, type Result } from '../../length/result';
import type { Tape } from '../../length/tape';
import type { Json } from '../../store/entry';

/** A line of the roll: its working as text, built on figures and on other lines. */
export type Line = { readonly id: string; readonly name: string; readonly text: string };

/** What undo goes back to. The lines are kept only where they changed. */
type Before = { readonly keys: Keypad; readonly current?: string; readonly lines?: readonly Line[] };

/** Everything of Figure, plain JSON: kept at each key, there again after a restart. */
export type FigureState = {
  readonly keys: Keypad;
  readonly lines: readonly Line[];
  /** The line on the keys: the one just finished, or the one being changed. */
  readonly current?: string;
  /** Length that answers are also measured back from, as typed. */
  readonly from?: string;
  /** Blanks of the quick sums, as stored lengths and counts. */
  readonly sums?: Readonly<Record<string, string>>;
  readonly typed: string;
  readonly typing: boolean;
  readonly undo: readonly Before[];
};

export const emptyFigure: FigureState = { keys: blank, lines: [], typed: '', typing: false, undo: [] };

const undoDepth = 50;
const mostLines = 200;

/** Figure as kept, checked in outline; anything else starts empty. */
export function readFigure(kept: Json | undefined): FigureState {
  const state = kept as Partial<FigureState> | undefined;
  const shaped =
    typeof state === 'object' &&
    state !== null &&
    Array.isArray(state.lines) &&
    Array.isArray(state.undo) &&
    Array.isArray(state.keys?.frames) &&
    typeof state.keys?.slot?.digits === 'string' &&
    typeof state.typed === 'string' &&
    state.lines.every(
      (line) =>
        typeof line?.id === 'string' && typeof line.text === 'string' && typeof line.name === 'string',
    );
  return shaped ? (state as FigureState) : emptyFigure;
}

export const asJson = (state: FigureState): Json => state as unknown as Json;

/** What a line comes to, through the lines it is built on; a line built on itself is named. */
export function lineValue(
  lines: readonly Line[],
  id: string,
  through: readonly string[] = [],
): Result<Quantity, ReckonError> {
  if (through.includes(id)) return err({ code: 'ring', id });
  const line = lines.find((l) => l.id === id);
  if (!line) return err({ code: 'unknown-line', id });
  const expr = parseLine(line.text);
  if (!expr.ok) return err({ code: 'bad-figure', text: line.text });
  return evaluate(expr.value, (other) => lineValue(lines, other, [...through, id]));
}

export const lookAt = (state: FigureState): KeypadLook =>
  look(state.keys, (id) => lineValue(state.lines, id));

function remember(state: FigureState, next: FigureState): FigureState {
  const before: Before = {
    keys: state.keys,
    ...(state.current === undefined ? {} : { current: state.current }),
    ...(state.lines === next.lines ? {} : { lines: state.lines }),
  };
  return { ...next, undo: [...state.undo, before].slice(-undoDepth) };
}

export function undoFigure(state: FigureState): FigureState {
  const before = state.undo[state.undo.length - 1];
  if (!before) return state;
  const { current: _, ...rest } = state;
  return {
    ...rest,
    keys: before.keys,
    lines: before.lines ?? state.lines,
    ...(before.current === undefined ? {} : { current: before.current }),
    undo: state.undo.slice(0, -1),
  };
}

export type Pressed = { readonly state: FigureState; readonly refused?: Refused };

/** A key pressed. Equals writes the line to the roll, or, when one is being changed, over it: what is built on it follows. */
export function pressKey(state: FigureState, key: Key, tape: Tape, newId: () => string): Pressed {
  const next = press(state.keys, key, tape);
  if (!next.ok) return { state, refused: next.error };
  if (key.key === 'equals')
    return { state: remember(state, finished({ ...state, keys: next.value }, newId)) };
  const { current, ...rest } = state;
  const going = state.keys.done && key.key === 'op';
  const keepCurrent = current !== undefined && !state.keys.done;
  const started = going && current !== undefined ? onFrom(next.value, current) : next.value;
  return { state: remember(state, { ...rest, keys: started, ...(keepCurrent ? { current } : {}) }) };
}

/** A sum gone on from the answer stands on the line just finished, so that it follows when that one changes. */
function onFrom(keys: Keypad, line: string): Keypad {
  const top = keys.frames[0];
  return top?.op ? { ...keys, frames: [{ total: { is: 'line', id: line }, op: top.op }] } : keys;
}

function finished(state: FigureState, newId: () => string): FigureState {
  const { text } = look(state.keys, (id) => lineValue(state.lines, id));
  if (text === undefined) return state;
  return withLine(state, text, newId);
}

function withLine(state: FigureState, text: string, newId: () => string): FigureState {
  const at = state.lines.find((line) => line.id === state.current);
  if (at) return { ...state, lines: state.lines.map((line) => (line === at ? { ...line, text } : line)) };
  const id = newId();
  return { ...state, current: id, lines: [...state.lines, { id, name: '', text }].slice(-mostLines) };
}

/** A typed line, once read, goes to the roll like a keyed one. */
export function takeTyped(state: FigureState, unit: 'in' | 'mm', newId: () => string): FigureState {
  const expr = parseLine(state.typed, unit);
  if (!expr.ok) return state;
  const { current: _, ...rest } = state;
  const next = withLine({ ...rest, keys: resumed(expr.value), typed: '' }, writeExpr(expr.value), newId);
  return remember(state, next);
}

/** A line of the roll used in the sum on the keys. */
export const useLine = (state: FigureState, id: string, tape: Tape, newId: () => string): Pressed =>
  pressKey(state, { key: 'line', id }, tape, newId);

/** A line taken back onto the keys to be changed; equals writes over it. */
export function changeLine(state: FigureState, id: string): FigureState {
  const line = state.lines.find((l) => l.id === id);
  const expr = line && parseLine(line.text);
  if (!expr?.ok) return state;
  return remember(state, { ...state, keys: { ...resumed(expr.value), done: false }, current: id });
}

export function nameLine(state: FigureState, id: string, name: string): FigureState {
  return remember(state, { ...state, lines: state.lines.map((l) => (l.id === id ? { ...l, name } : l)) });
}

export function dropLine(state: FigureState, id: string): FigureState {
  const { current, ...rest } = state;
  const gone = current === id;
  return remember(state, {
    ...rest,
    ...(gone || current === undefined ? {} : { current }),
    keys: gone ? blank : state.keys,
    lines: state.lines.filter((l) => l.id !== id),
  });
}

export function newStrip(state: FigureState): FigureState {
  const { current: _, ...rest } = state;
  return remember(state, { ...rest, keys: blank, lines: [] });
}

/** The strip totalled: one more line, built on all the others that are lengths. */
export function addTheLot(state: FigureState, newId: () => string): FigureState {
  const lengths = state.lines.filter((line) => {
    const value = lineValue(state.lines, line.id);
    return value.ok && value.value.kind === 'length';
  });
  const [first, ...rest] = lengths.map((line): Expr => ({ is: 'line', id: line.id }));
  if (!first) return state;
  const sum = rest.reduce((a, b): Expr => ({ is: 'op', op: '+', a, b }), first);
  const { current: _, ...others } = state;
  const text = lengths.map((line) => `#${line.id}`).join(' + ');
  const next = withLine({ ...others, keys: resumed(sum) }, text, newId);
  return remember(state, {
    ...next,
    lines: next.lines.map((l) => (l.id === next.current ? { ...l, name: 'The lot' } : l)),
  });
}

/** Lines built on a line, straight or through others. */
export function builtOn(lines: readonly Line[], id: string): readonly Line[] {
  const straight = lines.filter((line) => {
    const expr = parseLine(line.text);
    return expr.ok && linesIn(expr.value).includes(id);
  });
  return [
    ...new Set(
      straight.flatMap((line) => [
        line,
        ...(line.id === id
          ? []
          : builtOn(
              lines.filter((l) => l !== line),
              line.id,
            )),
      ]),
    ),
  ];
}

/** The length answers are measured back from, when one is set. */
export function fromLength(state: FigureState): Length | undefined {
  const read = state.from === undefined ? undefined : readLength(state.from);
  return read?.ok ? read.value.value : undefined;
}

/** What a line is called where it is used: its name, else its place in the roll. */
export function callIt(lines: readonly Line[], id: string): string {
  const k = lines.findIndex((l) => l.id === id);
  const line = lines[k];
  if (!line) return 'a line that is gone';
  return line.name || `line ${k + 1}`;
}
