import * as v from 'valibot';
import { type Expr, ops } from '../../length/expr';
import type { Json } from '../../store/entry';
import { emptyFigure, type FigureState, mostLines, undoDepth } from './figure.model';

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
const lines = v.pipe(v.array(v.object({ id: text, name: text, text })), v.maxLength(mostLines));
const sums = v.record(v.string(), text);
const made = v.pipe(v.number(), v.integer(), v.minValue(0));
const before = v.object({
  keys,
  current: text,
  made,
  lines: some(lines),
  from: some(text),
  sums: some(sums),
  typed: some(text),
});
const figure = v.object({
  keys,
  lines,
  made,
  current: text,
  from: text,
  sums,
  typed: text,
  typing: v.boolean(),
  undo: v.pipe(v.array(before), v.maxLength(undoDepth)),
});

/** States this page made itself: they need no second look. */
const ours = new WeakSet<object>();

/** Figure as kept, every part of it looked at; anything else starts empty. */
export function readFigure(kept: Json | undefined): FigureState {
  if (typeof kept === 'object' && kept !== null && ours.has(kept)) return kept as unknown as FigureState;
  if (!v.is(figure, kept)) return emptyFigure;
  ours.add(kept);
  return kept;
}

export function asJson(state: FigureState): Json {
  ours.add(state);
  return state as unknown as Json;
}
