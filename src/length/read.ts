import { startsWithFigure, startsWithFraction, startsWithVulgar, vulgar } from './fraction-signs';
import { add, fromMillimetres, inches, isNegative, type Length, less, negate, times, zero } from './length';
import { err, ok, type Result } from './result';
import type { Units } from './units';
import { writeLength } from './write';

type Unit = 'in' | 'mm' | 'cm' | 'ft';

/** A reading that is taken, but worth a look. */
export type Note =
  | { readonly code: 'odd-denominator'; readonly denominator: bigint }
  | { readonly code: 'negative' }
  /** `1,234`: read as a decimal, and may be a thousand. */
  | { readonly code: 'comma-of-thousands' }
  | { readonly code: 'over-120-inches' };

export type Reading = {
  readonly value: Length;
  /** How it was read: `5 ft 3 3/4`, `18 mm`, `1 17/16 = 2 1/16`. */
  readonly echo: string;
  readonly unit: Unit;
  /** No unit was written. */
  readonly bare: boolean;
  /** A fraction was written. */
  readonly fraction: boolean;
  readonly notes: readonly Note[];
};

type ReadCode =
  | 'empty'
  | 'not-a-length'
  | 'zero-denominator'
  | 'two-points'
  | 'two-fractions'
  | 'feet-after-inches'
  | 'no-denominator'
  | 'too-long'
  | 'fraction-of-a-decimal';

/** Why a text is no length, and where in it. */
export type ReadError = { readonly code: ReadCode; readonly text: string; readonly at: number };

type ReadOptions = { readonly unit?: Units };

/** Most characters a length may have, and figures a number, so hostile text cannot stall the phone. */
const longest = 60;
const mostFigures = 12;

type Mark = { readonly is: 'mark'; readonly unit: Unit; readonly at: number };
type Num = { readonly is: 'whole' | 'decimal' | 'fraction'; readonly text: string; readonly at: number };
type Piece = Mark | Num;

/**
 * Reads one length as a person writes it: `23/32`, `18-7/64`, `3' 2 3/8"`, `38.375`, `18 mm`, `0,7085`.
 * A bare number has the unit asked for; it is never guessed from its size. An unspaced hyphen between a whole number
 * and its fraction, or after a foot mark, means "and"; any other is a minus, which no single length has inside it.
 *
 * @param text as typed
 * @param options `unit` of a bare number (inches when not said)
 * @example readLength('18-7/64') // 18 7/64
 */
export function readLength(text: string, options: ReadOptions = {}): Result<Reading, ReadError> {
  const fail = (code: ReadCode, at: number) => err({ code, text, at });
  if (text.trim() === '') return fail('empty', 0);
  if (text.length > longest) return fail('too-long', longest);
  const { body, sign, start } = takeSign(text);
  const pieces = split(body, start);
  if (!pieces.ok) return fail(pieces.error.code, pieces.error.at);
  const read = assemble(pieces.value, options.unit ?? 'in');
  if (!read.ok) return fail(read.error.code, read.error.at);
  const value = sign < 0 ? negate(read.value.value) : read.value.value;
  const echo = `${sign < 0 ? '-' : ''}${read.value.echo}`;
  const notes: readonly Note[] = [
    ...(thousandsComma.test(text) ? ([{ code: 'comma-of-thousands' }] as const) : []),
    ...notesOn(value, read.value),
  ];
  const { unit, bare, fraction } = read.value;
  return ok({ value, echo, unit, bare, fraction, notes });
}

function takeSign(text: string): { readonly body: string; readonly sign: number; readonly start: number } {
  const found = /^\s*([-−–])\s*/.exec(text);
  return found
    ? { body: text.slice(found[0].length), sign: -1, start: found[0].length }
    : { body: text, sign: 1, start: 0 };
}

const patterns: readonly {
  readonly re: RegExp;
  readonly make: (m: RegExpExecArray, at: number) => Piece | ReadCode;
}[] = [
  { re: /^(\d*[.,]\d*)[.,]/, make: () => 'two-points' },
  {
    re: /^(\d+)[/⁄∕](\d+)/,
    make: ([, n, d], at) =>
      /^0+$/.test(d ?? '') ? 'zero-denominator' : { is: 'fraction', text: `${n}/${d}`, at },
  },
  { re: startsWithVulgar, make: ([c = ''], at) => ({ is: 'fraction', text: vulgar[c] ?? '', at }) },
  { re: /^\d+[/⁄∕]/, make: () => 'no-denominator' },
  { re: /^(\d+[.,]\d*|[.,]\d+)/, make: ([all], at) => ({ is: 'decimal', text: all.replace(',', '.'), at }) },
  { re: /^\d+/, make: ([all], at) => ({ is: 'whole', text: all, at }) },
  { re: /^(mm|millimet(?:er|re)s?)(?![a-z])/i, make: (_, at) => ({ is: 'mark', unit: 'mm', at }) },
  { re: /^(cm|centimet(?:er|re)s?)(?![a-z])/i, make: (_, at) => ({ is: 'mark', unit: 'cm', at }) },
  {
    re: /^(''|''|["”“″]|inch(?:es)?(?![a-z])|in(?![a-z])\.?)/i,
    make: (_, at) => ({ is: 'mark', unit: 'in', at }),
  },
  {
    re: /^(['’‘′]|feet(?![a-z])|foot(?![a-z])|ft(?![a-z])\.?)/i,
    make: (_, at) => ({ is: 'mark', unit: 'ft', at }),
  },
];

/** The unspaced hyphen of `18-7/64` and `3'-2`. */
function andHyphen(last: Piece | undefined, rest: string): boolean {
  if (!rest.startsWith('-')) return false;
  if (last?.is === 'mark') return last.unit === 'ft' && startsWithFigure.test(rest.slice(1));
  return last?.is === 'whole' && startsWithFraction.test(rest.slice(1));
}

function split(body: string, start: number): Result<readonly Piece[], { code: ReadCode; at: number }> {
  const pieces: Piece[] = [];
  let spaced = true;
  let at = 0;
  while (at < body.length) {
    const space = /^\s+/.exec(body.slice(at))?.[0].length ?? 0;
    if (space > 0) {
      at += space;
      spaced = true;
      continue;
    }
    if (!spaced && andHyphen(pieces[pieces.length - 1], body.slice(at))) at += 1;
    const next = take(body.slice(at), start + at);
    if (typeof next.piece === 'string') return err({ code: next.piece, at: start + at });
    pieces.push(next.piece);
    at += next.length;
    spaced = false;
  }
  return ok(pieces);
}

function take(rest: string, at: number): { readonly piece: Piece | ReadCode; readonly length: number } {
  for (const { re, make } of patterns) {
    const found = re.exec(rest);
    if (found) return { piece: fitting(make(found, at)), length: found[0].length };
  }
  return { piece: 'not-a-length', length: 0 };
}

/** A number of more figures than anyone measures is refused before it is reckoned with. */
function fitting(piece: Piece | ReadCode): Piece | ReadCode {
  if (typeof piece === 'string' || piece.is === 'mark') return piece;
  const tooLong = piece.text.split('/').some((part) => part.replace('.', '').length > mostFigures);
  return tooLong ? 'too-long' : piece;
}

type Assembled = {
  readonly value: Length;
  readonly echo: string;
  readonly unit: Unit;
  readonly bare: boolean;
  readonly fraction: boolean;
  readonly denominator: bigint;
};

const isNumber = (p: Piece | undefined): p is Num => p !== undefined && p.is !== 'mark';

/** feet? then whole? fraction? (or a decimal) then a unit mark. */
function assemble(
  pieces: readonly Piece[],
  bareUnit: Units,
): Result<Assembled, { code: ReadCode; at: number }> {
  const firstMark = pieces.findIndex((p) => p.is === 'mark');
  const mark = pieces[firstMark];
  if (mark?.is === 'mark' && mark.unit === 'ft') return withFeet(pieces, firstMark);
  const late = pieces.find((p, k) => k > firstMark && firstMark >= 0 && p.is === 'mark' && p.unit === 'ft');
  if (late) return err({ code: 'feet-after-inches', at: late.at });
  return plain(pieces, bareUnit);
}

function withFeet(pieces: readonly Piece[], k: number): Result<Assembled, { code: ReadCode; at: number }> {
  const feet = plain(pieces.slice(0, k), 'in');
  if (!feet.ok) return feet;
  const whole = times(feet.value.value, 12n);
  const tail = pieces.slice(k + 1);
  if (tail.length === 0)
    return ok({ ...feet.value, value: whole, echo: `${feet.value.echo} ft`, unit: 'ft', bare: false });
  const feetAgain = tail.find((p) => p.is === 'mark' && p.unit !== 'in');
  if (feetAgain) return err({ code: 'not-a-length', at: feetAgain.at });
  const rest = plain(tail, 'in');
  if (!rest.ok) return rest;
  const value = add(whole, rest.value.value);
  return ok({
    ...rest.value,
    value,
    echo: `${feet.value.echo} ft ${rest.value.echo}`,
    unit: 'ft',
    bare: false,
  });
}

function plain(pieces: readonly Piece[], bareUnit: Units): Result<Assembled, { code: ReadCode; at: number }> {
  const numbers = pieces.filter(isNumber);
  const marks = pieces.slice(numbers.length);
  const shape = shapeError(pieces, numbers, marks);
  if (shape) return err(shape);
  const mark = marks[0];
  const unit: Unit = mark?.is === 'mark' ? mark.unit : bareUnit;
  const value = numbers.reduce((sum, p) => add(sum, scaled(p.text, unit)), zero);
  const last = numbers[numbers.length - 1];
  const denominator = last?.is === 'fraction' ? BigInt(last.text.split('/')[1] ?? '1') : 1n;
  const fraction = last?.is === 'fraction';
  return ok({
    value,
    echo: echoOf(numbers, value, unit),
    unit,
    bare: mark === undefined,
    fraction,
    denominator,
  });
}

function shapeError(
  pieces: readonly Piece[],
  numbers: readonly Num[],
  marks: readonly Piece[],
): { code: ReadCode; at: number } | undefined {
  const [first, second, third] = numbers;
  if (!first) return { code: 'not-a-length', at: pieces[0]?.at ?? 0 };
  const stray = marks.find(isNumber) ?? marks[1];
  if (second && first.is === 'fraction')
    return { code: second.is === 'fraction' ? 'two-fractions' : 'not-a-length', at: second.at };
  if (second && first.is === 'decimal') return { code: 'fraction-of-a-decimal', at: second.at };
  if (second && second.is !== 'fraction') return { code: 'not-a-length', at: second.at };
  if (third) return { code: third.is === 'fraction' ? 'two-fractions' : 'not-a-length', at: third.at };
  return stray ? { code: 'not-a-length', at: stray.at } : undefined;
}

/** A comma, one to three figures before it and just three behind, as in a thousand; `0,734` is none. */
const thousandsComma = /(?<![\d.,])[1-9]\d{0,2},\d{3}(?![\d.,])/;

/** A number's text, exactly, in its unit. */
function scaled(text: string, unit: Unit): Length {
  const [n, d] = ratioOf(text);
  if (unit === 'mm') return fromMillimetres(n, d);
  if (unit === 'cm') return fromMillimetres(n * 10n, d);
  return inches(n, d);
}

function ratioOf(text: string): readonly [bigint, bigint] {
  const [n = '0', d = '1'] = text.split('/');
  if (!n.includes('.')) return [BigInt(n), BigInt(d)];
  const [whole = '', part = ''] = n.split('.');
  return [BigInt(`${whole}${part}` || '0'), 10n ** BigInt(part.length)];
}

function echoOf(numbers: readonly Num[], value: Length, unit: Unit): string {
  const typed = numbers.map((p) => p.text.replace(/^\./, '0.').replace(/\.$/, '')).join(' ');
  if (unit === 'mm' || unit === 'cm') return `${typed} ${unit}`;
  const last = numbers[numbers.length - 1];
  const proper = writeLength(value);
  return last?.is === 'fraction' && typed !== proper ? `${typed} = ${proper}` : typed;
}

const usualDenominators: readonly bigint[] = [1n, 2n, 4n, 8n, 16n, 32n, 64n];

function notesOn(value: Length, read: Assembled): readonly Note[] {
  const notes: Note[] = [];
  if (!usualDenominators.includes(read.denominator))
    notes.push({ code: 'odd-denominator', denominator: read.denominator });
  if (isNegative(value)) notes.push({ code: 'negative' });
  if (less(inches(120n), value)) notes.push({ code: 'over-120-inches' });
  return notes;
}
