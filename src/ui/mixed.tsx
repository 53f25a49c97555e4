import { asInches, type Length, type Ratio } from '../length/length';
import { showsDecimals, type Tape } from '../length/tape';
import {
  isTapeFraction,
  mixed,
  type Mixed as Parts,
  remainder,
  spoken,
  spokenNumber,
  writeDecimals,
} from '../length/write';
import './mixed.css';

type Size = 'hand' | 'bench' | 'arm' | 'result' | 'setting' | 'huge';

type MixedProps = {
  readonly value: Length;
  readonly size?: Size;
  readonly tape?: Tape;
  /** Said after the figure, not shown: the remainder stands beside it. */
  readonly rest?: Length;
};

/** A length to be used: the stack for the eye, one spoken form for the reader. */
export function Mixed({ value, size = 'hand', tape = '1/32', rest }: MixedProps) {
  return (
    <>
      <span
        class={showsDecimals(tape) ? `mx ${size} decimal` : `mx ${size}`}
        aria-hidden="true"
        style={size === 'huge' ? giantSize(value, tape) : undefined}
      >
        <Stack value={value} tape={tape} />
      </span>
      <span class="sr">{spoken(value, rest, tape)}</span>
    </>
  );
}

/** A number without a unit: pounds, a ratio, a count. It looks as a length does and is not spoken as inches. */
export function Bare({ value, size = 'hand' }: { readonly value: Ratio; readonly size?: Size }) {
  return (
    <>
      <span class={`mx ${size}`} aria-hidden="true">
        <Stack value={asInches(value)} tape="1/64" />
      </span>
      <span class="sr">{spokenNumber(value)}</span>
    </>
  );
}

function Stack({ value, tape }: { readonly value: Length; readonly tape: Tape }) {
  if (showsDecimals(tape)) return <WithUnit text={writeDecimals(value, tape)} />;
  const { negative, whole, n, d } = mixed(value);
  const sign = negative ? '−' : '';
  if (n === 0n) return <span class="w">{`${sign}${whole}`}</span>;
  return (
    <>
      {(whole > 0n || negative) && <span class="w">{`${sign}${whole > 0n ? whole : ''}`}</span>}
      <span class={whole > 0n ? 'fr' : 'fr alone'}>
        <span class="nu">{`${n}`}</span>
        <span class="de">{`${d}`}</span>
      </span>
    </>
  );
}

function WithUnit({ text }: { readonly text: string }) {
  const [figure, unit] = text.split(' ');
  return (
    <>
      <span class="w">{figure?.replace('-', '−')}</span>
      {unit && <span class="u">{unit}</span>}
    </>
  );
}

/** As large as the screen allows: the figure's own width in em decides. */
function giantSize(value: Length, tape: Tape) {
  const em = showsDecimals(tape) ? 0.6 * 7 : widthInEm(mixed(value));
  return { fontSize: `min(var(--giant), calc((100vw - 2 * var(--edge)) / ${em.toFixed(2)}))` };
}

function widthInEm({ negative, whole, n, d }: Parts): number {
  const digits = (whole > 0n || n === 0n ? `${whole}`.length : 0) + (negative ? 1 : 0);
  return 0.59 * digits + (n > 0n ? 0.14 + 0.33 * Math.max(`${n}`.length, `${d}`.length) : 0.1);
}

type RemainderProps = { readonly rest: Length; readonly tape: Tape; readonly by?: boolean };

/** What rounding left, word first; nothing when the mark is exact. */
export function Remainder({ rest, tape, by = true }: RemainderProps) {
  const left = remainder(rest, tape);
  if (!left) return null;
  const on = left.word === 'on the mark';
  return (
    <span class={on ? 'rem on' : 'rem'} aria-hidden="true">
      {left.word}
      {!on && (
        <>
          {' '}
          <br />
          {by ? 'by ' : ''}
          {left.by}
        </>
      )}
    </span>
  );
}

/**
 * What rounding left, where a list has no room for it in words: + strong, − scant, nothing on the mark. The spoken
 * figure says it whole.
 */
export function Sign({ rest, tape }: { readonly rest: Length; readonly tape: Tape }) {
  const left = remainder(rest, tape);
  return left?.by ? (
    <span class="pm" aria-hidden="true">
      {left.word === 'strong' ? '+' : '−'}
    </span>
  ) : null;
}

/** The tape a given figure is shown on: one that was given in millimetres holds 127 in its inches. */
export const tapeGiven = (value: Length): Tape => {
  if (value.d % 127n === 0n) return '1 mm';
  // .005 was said as a decimal: a two-hundredth is on no tape
  return !isTapeFraction(value) && 1000n % value.d === 0n ? '0.001' : '1/64';
};

/** A figure as it was given, exact. */
export const Given = ({ value }: { readonly value: Length }) => (
  <Mixed value={value} tape={tapeGiven(value)} />
);

/** A length in a sentence, diagonal: only for figures shown large elsewhere, or in lists held in the hand. */
export function Inline({ value, tape = '1/32' }: { readonly value: Length; readonly tape?: Tape }) {
  if (showsDecimals(tape)) return <span class="dec">{writeDecimals(value, tape).replace('-', '−')}</span>;
  const { negative, whole, n, d } = mixed(value);
  const sign = negative ? '−' : '';
  return (
    <span class="nb">
      {(whole > 0n || n === 0n || negative) && (
        <span class="dec">{`${sign}${whole > 0n || n === 0n ? whole : ''}`}</span>
      )}
      {n > 0n && <span class="frac-inline">{`${whole > 0n ? ' ' : ''}${n}/${d}`}</span>}
    </span>
  );
}
