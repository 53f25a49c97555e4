import { evaluate, type Quantity, type ReckonError } from '../../length/evaluate';
import { type Expr, linesIn } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { err, type Result } from '../../length/result';
import { lineCalled, lineGone } from './words';

/** A line of the strip: its working as text, built on figures and on other lines. */
export type Line = { readonly id: string; readonly name: string; readonly text: string };

type Worth = Result<Quantity, ReckonError>;

/**
 * Lines never change in place, so what they come to is worked out once: a line built on many is not worked for each.
 */
const worked = new WeakMap<readonly Line[], Map<string, Worth>>();

function worthsOf(lines: readonly Line[]): Map<string, Worth> {
  const found = worked.get(lines) ?? new Map<string, Worth>();
  worked.set(lines, found);
  return found;
}

/** What a line comes to, through the lines it is built on; a line built on itself is named. */
export function lineValue(lines: readonly Line[], id: string, through: readonly string[] = []): Worth {
  const worths = worthsOf(lines);
  const known = worths.get(id);
  if (known) return known;
  if (through.includes(id)) return err({ code: 'ring', id });
  const worth = work(lines, id, [...through, id]);
  worths.set(id, worth);
  return worth;
}

function work(lines: readonly Line[], id: string, through: readonly string[]): Worth {
  const line = lines.find((l) => l.id === id);
  if (!line) return err({ code: 'unknown-line', id });
  const expr = parseLine(line.text);
  if (!expr.ok) return err({ code: 'bad-figure', text: line.text });
  return evaluate(expr.value, (other) => lineValue(lines, other, through));
}

/** Lines built on a line, straight or through others, in the order of the strip. */
export function builtOn(lines: readonly Line[], id: string): readonly Line[] {
  const on = new Set([id]);
  for (let before = 0; before !== on.size; ) {
    before = on.size;
    for (const line of lines) if (standsOn(line).some((other) => on.has(other))) on.add(line.id);
  }
  return lines.filter((line) => line.id !== id && on.has(line.id));
}

function standsOn(line: Line): readonly string[] {
  const expr = parseLine(line.text);
  return expr.ok ? linesIn(expr.value) : [];
}

/** The lines that are lengths, added: nothing when none is. */
export function sumOfLengths(lines: readonly Line[]): Expr | undefined {
  return lines
    .filter((line) => {
      const worth = lineValue(lines, line.id);
      return worth.ok && worth.value.kind === 'length';
    })
    .map((line): Expr => ({ is: 'line', id: line.id }))
    .reduce<Expr | undefined>((a, b) => (a ? { is: 'op', op: '+', a, b } : b), undefined);
}

/** What a line is called where it is used: its name, else its place in the strip. */
export function callIt(lines: readonly Line[], id: string): string {
  const k = lines.findIndex((l) => l.id === id);
  const line = lines[k];
  return line ? lineCalled(line.name, k + 1) : lineGone;
}
