import { combine, type Expr, isBare, type Op, readsAsCount, type Token } from './expr';
import { startsWithFigure, startsWithFraction } from './fraction-signs';
import { type ReadError, readLength } from './read';
import { err, ok, type Result } from './result';
import type { Units } from './units';

export type ParseError =
  | { readonly code: 'empty' }
  | { readonly code: 'too-long'; readonly most: number }
  | {
      readonly code: 'bracket-not-closed' | 'bracket-not-open' | 'figure-missing' | 'sign-missing';
      readonly at: number;
    }
  | { readonly code: 'bad-figure'; readonly at: number; readonly error: ReadError };

/** Room for a strip of two hundred lines added up. */
const longest = 4000;
const deepest = 30;

type Lexed =
  | { readonly is: 'operand'; readonly text: string; readonly at: number }
  | { readonly is: 'op'; readonly op: Op; readonly at: number }
  | { readonly is: '('; readonly at: number }
  | { readonly is: ')'; readonly at: number };

const signs: Record<string, Op> = {
  '+': '+',
  '−': '−',
  '–': '−',
  '-': '−',
  '×': '×',
  '*': '×',
  x: '×',
  '÷': '÷',
  '/': '÷',
  ':': '÷',
};

/**
 * Reads a typed sum with ordinary precedence. A hyphen is minus unless it joins a whole number to its fraction or
 * follows a foot mark; an unspaced slash makes a fraction, any other divides.
 *
 * @param unit of a bare number that measures
 * @example parseLine('27 5/8 - 47/64 / 2') // 27 5/8 − (47/64 ÷ 2)
 */
export function parseLine(text: string, unit: Units = 'in'): Result<Expr, ParseError> {
  if (text.trim() === '') return err({ code: 'empty' });
  if (text.length > longest) return err({ code: 'too-long', most: longest });
  const reader = { tokens: lex(text), k: 0, end: text.length, depth: 0 };
  const expr = sumOf(reader);
  if (!expr.ok) return expr;
  const left = reader.tokens[reader.k];
  if (!left) return unit === 'mm' ? ok(inMillimetres(expr.value)) : expr;
  return err({ code: left.is === ')' ? 'bracket-not-open' : 'sign-missing', at: left.at });
}

/** Bare lengths marked as what they are, so that the sum reads the same wherever it is kept. */
function inMillimetres(expr: Expr): Expr {
  switch (expr.is) {
    case 'length':
      return isBare(expr.text) ? { is: 'length', text: `${expr.text} mm` } : expr;
    case 'minus':
      return { is: 'minus', a: inMillimetres(expr.a) };
    case 'op':
      return { ...expr, a: inMillimetres(expr.a), b: inMillimetres(expr.b) };
    default:
      return expr;
  }
}

function lex(text: string): readonly Lexed[] {
  const out: Lexed[] = [];
  let word = '';
  let from = 0;
  const flush = () => {
    if (word.trim())
      out.push({ is: 'operand', text: word.trim(), at: from + word.length - word.trimStart().length });
    word = '';
  };
  for (let at = 0; at < text.length; at += 1) {
    const c = text.charAt(at);
    const line = /^#\w{1,40}/.exec(c === '#' ? text.slice(at, at + 41) : '')?.[0];
    if (line) {
      flush();
      out.push({ is: 'operand', text: line, at });
      at += line.length - 1;
      continue;
    }
    if (c !== '(' && c !== ')' && !splits(text, at, word)) {
      if (word === '') from = at;
      word += c;
      continue;
    }
    flush();
    const op = signs[c.toLowerCase()];
    if (c === '(') out.push({ is: '(', at });
    else if (c === ')') out.push({ is: ')', at });
    else out.push({ is: 'op', op: op ?? '−', at });
  }
  flush();
  return out;
}

/** Whether the character is a sign of the sum rather than part of a figure. */
function splits(text: string, at: number, word: string): boolean {
  const c = text.charAt(at);
  const next = text.slice(at + 1);
  if (signs[c.toLowerCase()] === undefined) return false;
  if (c === 'x' || c === 'X') return /(^|[^a-z]|mm|cm|in|ft)$/i.test(word) && /^[\s\d.(#]/.test(next);
  if (c === '/') return !(/\d$/.test(word) && /^\d/.test(next));
  if (c !== '-') return true;
  const joins = /(^|\s|['’‘′]|ft\.?|feet|foot)\d+$/i.test(word) && startsWithFraction.test(next);
  const afterFeet = /(['’‘′]|ft\.?|feet|foot)$/i.test(word) && startsWithFigure.test(next);
  return !(joins || afterFeet);
}

type Reader = { readonly tokens: readonly Lexed[]; k: number; readonly end: number; depth: number };

const sumOf = (r: Reader) => leftToRight(r, ['+', '−'], productOf);
const productOf = (r: Reader) => leftToRight(r, ['×', '÷'], factorOf);

function leftToRight(
  r: Reader,
  own: readonly Op[],
  part: (r: Reader, before?: Op) => Result<Expr, ParseError>,
): Result<Expr, ParseError> {
  let found = part(r);
  for (;;) {
    if (!found.ok) return found;
    const token = r.tokens[r.k];
    if (token?.is !== 'op' || !own.includes(token.op)) return found;
    r.k += 1;
    const right = part(r, token.op);
    if (!right.ok) return right;
    found = ok(combine(token.op, found.value, right.value));
  }
}

function factorOf(r: Reader, before?: Op): Result<Expr, ParseError> {
  const token = r.tokens[r.k];
  if (!token || token.is === ')') return err({ code: 'figure-missing', at: token?.at ?? r.end });
  r.k += 1;
  if (token.is === 'operand') return operand(token.text, token.at, before);
  if (token.is === '(') return bracketed(r, token.at);
  if (token.op !== '−') return err({ code: 'figure-missing', at: token.at });
  r.depth += 1;
  if (r.depth > deepest) return err({ code: 'too-long', most: deepest });
  const a = factorOf(r);
  r.depth -= 1;
  return a.ok ? ok({ is: 'minus', a: a.value }) : a;
}

function bracketed(r: Reader, at: number): Result<Expr, ParseError> {
  r.depth += 1;
  if (r.depth > deepest) return err({ code: 'too-long', most: deepest });
  const inside = sumOf(r);
  r.depth -= 1;
  if (!inside.ok) return inside;
  if (r.tokens[r.k]?.is !== ')') return err({ code: 'bracket-not-closed', at });
  r.k += 1;
  return inside;
}

function operand(text: string, at: number, before: Op | undefined): Result<Expr, ParseError> {
  const line = /^#(\w{1,40})$/.exec(text);
  if (line?.[1]) return ok({ is: 'line', id: line[1] });
  const forced = /^(\S+)c$/.exec(text)?.[1];
  if (forced && isBare(forced)) return ok({ is: 'count', text: forced });
  const previous: Token | undefined = before && { is: 'op', text: before };
  if (isBare(text) && readsAsCount(text, previous)) return ok({ is: 'count', text });
  const read = readLength(text);
  if (!read.ok) return err({ code: 'bad-figure', at: at + read.error.at, error: read.error });
  return ok({ is: 'length', text });
}
