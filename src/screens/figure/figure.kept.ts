import * as v from 'valibot';
import type { Json } from '../../job/entry';
import { type Expr, ops } from '../../length/expr';
import { type Before, emptyFigure, type FigureState, mostLines, undoDepth } from './figure.state';
import type { Line } from './lines';

/** Pages side by side may each have filled a strip. */
const mostStored = 4 * mostLines;

const text = v.pipe(v.string(), v.maxLength(4000));
const some = v.exactOptional;

const expr: v.GenericSchema<Expr> = v.lazy(() =>
  v.variant('is', [
    v.object({ is: v.picklist(['length', 'count']), text }),
    v.object({ is: v.literal('line'), id: text }),
    v.object({ is: v.literal('minus'), a: expr }),
    v.object({ is: v.literal('op'), op: v.picklist(ops), a: expr, b: expr }),
  ]),
);

const digits = v.pipe(v.string(), v.regex(/^\d{0,9}\.?\d{0,9}$/));
const slot = v.object({
  feet: some(digits),
  digits,
  sixtyFourths: some(v.pipe(v.number(), v.integer())),
  unit: v.picklist(['in', 'mm']),
  home: some(v.literal('mm')),
  as: some(v.picklist(['count', 'length'])),
});
const keys = v.object({
  frames: v.pipe(v.array(v.object({ total: some(expr), op: some(v.picklist(ops)) })), v.minLength(1)),
  slot,
  line: some(text),
  done: v.boolean(),
});
const line = v.object({ id: text, name: text, text });
const lines = v.pipe(v.array(line), v.maxLength(mostStored));
const sums = v.record(v.string(), text);
const made = v.pipe(v.number(), v.integer(), v.minValue(0));
const before = v.object({
  keys,
  current: text,
  made,
  strip: some(v.object({ drop: v.array(text), put: v.array(v.object({ line, at: v.number() })) })),
  from: some(text),
  sums: some(sums),
  typed: some(text),
});
const figure = v.object({
  keys,
  lines,
  made,
  tag: some(v.pipe(v.string(), v.regex(/^[a-z]{0,8}$/))),
  current: text,
  from: text,
  sums,
  typed: text,
  typing: v.boolean(),
  undo: v.pipe(v.array(before), v.maxLength(undoDepth)),
  steps: some(made),
});

/**
 * Figure as it is kept: `figure` is the half sum and all that is this page's own, `strip/…` each a line of the strip,
 * `undo/…` each a step back, in a ring of fifty. So a key writes the half sum and its own step, however many steps
 * there are.
 */
export type FigureRows = Readonly<Record<string, Json>>;

const stripKey = 'strip/';
const kept = v.object({ name: text, text, at: v.number() });
type KeptLine = v.InferOutput<typeof kept>;

/** What rows came to: they never change in place. */
const known = new WeakMap<FigureRows, FigureState>();

/** Figure as kept, every part of it looked at; what does not read is left out. */
export function readFigure(rows: FigureRows): FigureState {
  const before = known.get(rows);
  if (before) return before;
  const own = ownOf(rows.figure);
  const state = { ...own, lines: linesOf(own.lines, rows), undo: undoOf(own, rows) };
  known.set(rows, state);
  return state;
}

function ownOf(half: Json | undefined): FigureState {
  if (!v.is(figure, half)) return emptyFigure;
  // undo as it was once kept took whole strips back
  const undo = half.undo.some((step) => 'lines' in step) ? [] : half.undo;
  return { ...half, undo, steps: half.steps ?? undo.length };
}

const stepKey = (step: number): string => `undo/${step % undoDepth}`;
const keptStep = v.object({ step: made, of: text, before });

type KeptStep = v.InferOutput<typeof keptStep>;

/** Steps looked at before: rows never change in place. */
const sound = new WeakSet<object>();

function isStep(row: Json | KeptStep | undefined): row is KeptStep {
  if (typeof row !== 'object' || row === null) return false;
  if (!sound.has(row) && v.is(keptStep, row)) sound.add(row);
  return sound.has(row);
}

function stepOf(rows: FigureRows, step: number, of: string): Before | undefined {
  const row = rows[stepKey(step)];
  return isStep(row) && row.step === step && row.of === of ? row.before : undefined;
}

/** The steps that lead back without a gap; once they were kept all together, with the half sum. */
function undoOf({ undo, steps, tag = '' }: FigureState, rows: FigureRows): readonly Before[] {
  if (undo.length > 0) return undo;
  const found: Before[] = [];
  for (let step = steps; step > 0 && found.length < undoDepth; step -= 1) {
    const back = stepOf(rows, step, tag);
    if (!back) break;
    found.unshift(back);
  }
  return found;
}

/** The steps that are not kept yet. */
function stepsToKeep({ undo, steps, tag = '' }: FigureState, rows: FigureRows): FigureRows {
  const first = steps - undo.length + 1;
  const missing = undo.flatMap((before, k) =>
    stepOf(rows, first + k, tag) === before ? [] : [{ step: first + k, of: tag, before }],
  );
  return Object.fromEntries(missing.map((row) => [stepKey(row.step), row as unknown as Json]));
}

/** Lines in the order they were put; once they were kept all together, with the half sum. */
function linesOf(together: readonly Line[], rows: FigureRows): readonly Line[] {
  const lines = new Map(together.map((one, at) => [one.id, { ...one, at }]));
  for (const [id, one] of keptLines(rows)) lines.set(id, { id, ...one });
  return [...lines.values()]
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
    .map(({ id, name, text }) => ({ id, name, text }));
}

const keptLines = (rows: FigureRows): ReadonlyMap<string, KeptLine> =>
  new Map(
    Object.entries(rows).flatMap(([key, one]) =>
      key.startsWith(stripKey) && v.is(kept, one) ? [[key.slice(stripKey.length), one] as const] : [],
    ),
  );

/**
 * What is to be kept for Figure to stand like this: new steps back and the lines that differ, each by itself, then
 * the half sum. What another page has put on the strip meanwhile is not touched.
 *
 * @param shown the lines that stood before the change: of them those that are not in the state were taken away
 */
export function figureChanges(
  rows: FigureRows,
  state: FigureState,
  shown: readonly Line[] = readFigure(rows).lines,
): FigureRows {
  const before = keptLines(rows);
  const changes: Record<string, Json> = {};
  for (const { id } of shown) if (!state.lines.some((one) => one.id === id)) changes[stripKey + id] = null;
  let last = 0;
  for (const [k, { id, name, text }] of state.lines.entries()) {
    const was = before.get(id);
    const following = state.lines.slice(k + 1).flatMap((one) => before.get(one.id)?.at ?? []);
    const next = Math.min(...following);
    const at = was && was.at > last ? was.at : next > last && next < Infinity ? (last + next) / 2 : last + 1;
    last = at;
    if (was?.at !== at || was.name !== name || was.text !== text) changes[stripKey + id] = { name, text, at };
  }
  const half = { ...state, lines: [], undo: [] } as unknown as Json;
  return { ...stepsToKeep(state, rows), ...changes, figure: half };
}

/** Figure in one, as a copy of everything carries it. */
export const figureWhole = (rows: FigureRows): Json => readFigure(rows) as unknown as Json;
