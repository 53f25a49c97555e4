import type { ComponentChildren } from 'preact';
import { countAndLeft, evaluate, type Lookup, type Quantity } from '../../length/evaluate';
import type { Expr } from '../../length/expr';
import { asNumber, isNegative, isZero, type Length, less, negate, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, markAt, type Tape, unitsOf } from '../../length/tape';
import { spoken, writeLength } from '../../length/write';
import { Bare } from '../../ui/given';
import { Lens } from '../../ui/lens';
import { Inline, Mixed, Remainder, Sign } from '../../ui/mixed';
import * as words from './words';
import './figure.css';

type AnswerProps = {
  readonly quantity: Quantity;
  readonly tape: Tape;
  /** Show what rounding left, the exact value and the lens: after equals. */
  readonly whole: boolean;
  readonly from?: Length | undefined;
  /** The sum, to tell what is left over when one length goes into another. */
  readonly expr?: Expr | undefined;
  readonly lookup: Lookup;
};

/** A result in its kind: a mark with its remainder, a count with what is left, an area that is no mark. */
export function Answer(props: AnswerProps) {
  const { quantity } = props;
  if (quantity.kind === 'length') return <LengthAnswer {...props} value={quantity.value} />;
  const exact = quantity.value as unknown as Length;
  if (quantity.kind === 'area') {
    return <Plain figure={<Mixed value={exact} size="bench" tape="1/64" />}>{words.anArea}</Plain>;
  }
  return <CountAnswer {...props} exact={exact} />;
}

function LengthAnswer({ value, tape, whole, from }: AnswerProps & { readonly value: Length }) {
  const mark = markAt(value, tape);
  const short = less(value, zero);
  return (
    <>
      <div class="answer">
        <Mixed value={mark.value} rest={mark.rest} size="result" tape={tape} />
        {whole && (
          <div class="read">
            {short && <span class="rem">{words.underNothing}</span>}
            {!short && <Remainder tape={tape} rest={mark.rest} />}
            {!isZero(mark.rest) && <Exact value={value} tape={tape} />}
          </div>
        )}
      </div>
      {whole && from && !short && <OtherEnd from={from} mark={mark} tape={tape} />}
      {whole && !short && (
        <div class="lensbox">
          <Lens mark={mark.value} rest={mark.rest} tape={tape} stock={from} />
        </div>
      )}
    </>
  );
}

/** The exact value: a fraction while its denominator can be read, else thousandths, which say so. */
function Exact({ value, tape }: { readonly value: Length; readonly tape: Tape }) {
  if (unitsOf(tape) === 'mm') return null; // the rest in hundredths says it
  const readable = value.d < 1000n;
  if (!readable && tape === '0.001') return null;
  return (
    <div class="exact">
      {readable ? words.exactly : words.about} <Mixed value={value} tape={readable ? '1/64' : '0.001'} />
    </div>
  );
}

/** The same mark from the other end: length less the rounded mark, so both marks meet. */
function OtherEnd({
  from,
  mark,
  tape,
}: {
  readonly from: Length;
  readonly mark: Rounded;
  readonly tape: Tape;
}) {
  const { value: other, rest } = fromOtherEnd(from, mark, tape);
  const past = isNegative(other);
  return (
    <p class="other-end">
      <span class="s">{words.otherEndOf(writeLength(from, tape))}</span>
      {past ? (
        <span class="rem">{words.pastIt(writeLength(negate(other), tape))}</span>
      ) : (
        <span>
          <Mixed value={other} rest={rest} size="hand" tape={tape} />
          <Sign rest={rest} tape={tape} />
        </span>
      )}
    </p>
  );
}

function CountAnswer({ exact, expr, lookup, tape }: AnswerProps & { readonly exact: Length }) {
  const left = expr && leftOver(expr, lookup);
  return (
    <Plain figure={<Bare value={asNumber(left ? (exact.floor() as Length) : exact)} size="result" />}>
      {left ? (
        <>
          {words.timesAnd(<Inline value={left} tape={tape === '0.001' ? '1/64' : tape} />)}
          <span class="sr">{spoken(left, undefined, tape === '0.001' ? '1/64' : tape)}</span>
        </>
      ) : (
        words.aCount
      )}
    </Plain>
  );
}

function leftOver(expr: Expr, lookup: Lookup): Length | undefined {
  if (expr.is !== 'op' || expr.op !== '÷') return undefined;
  const [a, b] = [evaluate(expr.a, lookup), evaluate(expr.b, lookup)];
  if (!a.ok || !b.ok || a.value.kind !== 'length' || b.value.kind !== 'length') return undefined;
  return countAndLeft(a.value.value, b.value.value)?.left;
}

const Plain = ({
  figure,
  children,
}: {
  readonly figure: ComponentChildren;
  readonly children: ComponentChildren;
}) => (
  <div class="answer plain">
    {figure}
    <div class="read">{children}</div>
  </div>
);
