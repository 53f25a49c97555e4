import type { ComponentChildren } from 'preact';
import { countAndLeft, evaluate, type Lookup, type Quantity } from '../../length/evaluate';
import type { Expr } from '../../length/expr';
import { equals, type Length } from '../../length/length';
import { fromOtherEnd, markAt, type Tape } from '../../length/tape';
import { spoken, writeLength } from '../../length/write';
import { Lens } from '../../ui/lens';
import { Inline, Mixed, Remainder } from '../../ui/mixed';

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
    return (
      <Plain figure={<Mixed value={exact} size="bench" tape="1/64" />}>
        square inches: an area, not a mark
      </Plain>
    );
  }
  return <CountAnswer {...props} exact={exact} />;
}

function LengthAnswer({ value, tape, whole, from }: AnswerProps & { readonly value: Length }) {
  const mark = markAt(value, tape);
  const exact = equals(mark.value, value);
  return (
    <>
      <div class="answer">
        <Mixed value={mark.value} rest={mark.rest} size="result" tape={tape} />
        {whole && (
          <div class="read">
            <Remainder tape={tape} rest={mark.rest} />
            {!exact && <Exact value={value} />}
          </div>
        )}
      </div>
      {whole && from && <OtherEnd from={from} mark={mark.value} tape={tape} />}
      {whole && (
        <div class="lensbox">
          <Lens mark={mark.value} rest={mark.rest} tape={tape} />
        </div>
      )}
    </>
  );
}

/** The exact value: a fraction while its denominator can be read, else a decimal that says so. */
function Exact({ value }: { readonly value: Length }) {
  const readable = value.d < 10000n;
  return (
    <div class="exact">
      {readable ? (
        <>
          exactly <Mixed value={value} tape="1/64" />
        </>
      ) : (
        <>
          about <span class="dec">{value.valueOf().toFixed(5)}</span>
        </>
      )}
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
  readonly mark: Length;
  readonly tape: Tape;
}) {
  const other = fromOtherEnd(from, mark, tape);
  const past = other.s < 0n && other.n !== 0n;
  return (
    <p class="other-end">
      <span class="s">from the other end of {writeLength(from)}</span>
      {past ? (
        <span class="rem">past it by {writeLength(other.neg() as Length)}</span>
      ) : (
        <Mixed value={other} size="hand" tape={tape} />
      )}
    </p>
  );
}

function CountAnswer({ exact, expr, lookup, tape }: AnswerProps & { readonly exact: Length }) {
  const left = expr && leftOver(expr, lookup);
  return (
    <Plain figure={<Mixed value={left ? (exact.floor() as Length) : exact} size="result" tape="1/64" />}>
      {left ? (
        <>
          times, and <Inline value={left} tape={tape === '0.001' ? '1/64' : tape} /> left over
          <span class="sr">{spoken(left)}</span>
        </>
      ) : (
        'a count, not a mark'
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
