/**
 * A sum as kept: plain JSON. `text` is the operand as typed, read again by `readLength`; `bare`, the number alone
 * where the unit came from the tape and not from the fingers.
 */
export type Expr =
  | { readonly is: 'length'; readonly text: string; readonly bare?: string }
  | { readonly is: 'count'; readonly text: string }
  | { readonly is: 'line'; readonly id: string }
  | { readonly is: 'minus'; readonly a: Expr }
  | { readonly is: 'op'; readonly op: Op; readonly a: Expr; readonly b: Expr };

export const ops = ['+', '−', '×', '÷'] as const;
export type Op = (typeof ops)[number];

/** A sum broken up for drawing, brackets included. */
export type Token =
  | { readonly is: 'length'; readonly text: string }
  /** `leads`: a count before × and a length, which is read as one without being told. */
  | { readonly is: 'count'; readonly text: string; readonly leads?: boolean }
  | { readonly is: 'line'; readonly id: string }
  | { readonly is: 'op'; readonly text: Op | '-' }
  | { readonly is: 'bracket'; readonly text: '(' | ')' };

const strength = (op: Op): number => (op === '+' || op === '−' ? 1 : 2);

/** A bare number, as it would be typed without a unit or fraction. */
export const isBare = (text: string): boolean => /^(\d+[.,]?\d*|[.,]\d+)$/.test(text);

/** What kind a sum comes to by its signs alone; a line of the strip is taken for a length. */
function kindOf(expr: Expr): 'length' | 'number' | 'area' {
  switch (expr.is) {
    case 'count':
      return 'number';
    case 'length':
    case 'line':
      return 'length';
    case 'minus':
      return kindOf(expr.a);
    case 'op': {
      const [a, b] = [kindOf(expr.a), kindOf(expr.b)];
      if (expr.op === '+' || expr.op === '−' || b === 'number') return a;
      if (expr.op === '÷') return a === 'area' ? 'length' : 'number';
      return a === 'number' ? b : 'area';
    }
  }
}

/**
 * Joins two operands. `6 × 3/4` is six times a length: a leading bare number before × and a length is a count.
 *
 * @example combine('×', { is: 'length', text: '6' }, { is: 'length', text: '3/4' })
 */
export function combine(op: Op, a: Expr, b: Expr): Expr {
  const text = a.is === 'length' ? (a.bare ?? a.text) : '';
  const counted = op === '×' && isBare(text) && kindOf(b) === 'length';
  return { is: 'op', op, a: counted ? { is: 'count', text } : a, b };
}

/**
 * The sum in tokens with every bracket visible that is not plain left to right at one strength, so the same line
 * can never be read two ways.
 */
export function tokensOf(expr: Expr): readonly Token[] {
  switch (expr.is) {
    case 'length':
    case 'count':
      return [{ is: expr.is, text: expr.text }];
    case 'line':
      return [{ is: 'line', id: expr.id }];
    case 'minus':
      return [{ is: 'op', text: '-' }, ...wrapped(expr.a, expr.a.is === 'op' || expr.a.is === 'minus')];
    case 'op': {
      const { op, a, b } = expr;
      const bracketA = a.is === 'minus' || (a.is === 'op' && strength(a.op) !== strength(op));
      const leads = op === '×' && a.is === 'count' && kindOf(b) === 'length';
      return [
        ...(leads ? [{ is: 'count', text: a.text, leads } as const] : wrapped(a, bracketA)),
        { is: 'op', text: op },
        ...wrapped(b, b.is === 'op' || b.is === 'minus'),
      ];
    }
  }
}

function wrapped(expr: Expr, bracketed: boolean): readonly Token[] {
  const inside = tokensOf(expr);
  return bracketed ? [{ is: 'bracket', text: '(' }, ...inside, { is: 'bracket', text: ')' }] : inside;
}

/**
 * The sum as one line of text; `parseLine` reads it back to the same sum. A count that a bare number would not be
 * read as ends in `c`, a line of the strip is `#` and its id.
 *
 * @example writeExpr(expr) // (27 5/8 − 47/64) ÷ 2
 */
export function writeExpr(expr: Expr): string {
  let previous: Token | undefined;
  let text = '';
  for (const token of tokensOf(expr)) {
    const glue =
      previous === undefined || openEnded(previous) || (token.is === 'bracket' && token.text === ')')
        ? ''
        : ' ';
    text += glue + wordFor(token, previous);
    previous = token;
  }
  return text;
}

const openEnded = (t: Token): boolean =>
  (t.is === 'bracket' && t.text === '(') || (t.is === 'op' && t.text === '-');

function wordFor(token: Token, previous: Token | undefined): string {
  if (token.is === 'line') return `#${token.id}`;
  if (token.is === 'count')
    return token.leads || readsAsCount(token.text, previous) ? token.text : `${token.text}c`;
  if (token.is === 'length')
    return isBare(token.text) && readsAsCount(token.text, previous) ? `${token.text}"` : token.text;
  return token.text;
}

/** Whether a bare number after this token is a count: after × always, after ÷ when whole. */
export function readsAsCount(text: string, previous: Token | undefined): boolean {
  if (previous?.is !== 'op') return false;
  return previous.text === '×' || (previous.text === '÷' && /^\d+$/.test(text));
}

/** Ids of the lines of the strip a sum is built on. */
export function linesIn(expr: Expr): readonly string[] {
  return tokensOf(expr).flatMap((t) => (t.is === 'line' ? [t.id] : []));
}
