import type { Length } from '../length/length';
import { showsDecimals, type Tape } from '../length/tape';
import {
  isTapeFraction,
  mixed,
  type Mixed as Parts,
  remainder,
  spoken,
  writeDecimals,
} from '../length/write';
import { shownOn } from './unit-in-hand';
import './mixed.css';

export type Size = 'hand' | 'bench' | 'arm' | 'result' | 'setting' | 'huge';

type MixedProps = {
  readonly value: Length;
  readonly size?: Size;
  readonly tape?: Tape;
  /** Said after the figure, not shown: the remainder stands beside it. */
  readonly rest?: Length;
};

/** A length to be used: the stack for the eye, one spoken form for the reader. */
export function Mixed({ value, size = 'hand', tape: wanted = '1/32', rest }: MixedProps) {
  const tape = writableOn(value, wanted);
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

export function Stack({ value, tape }: { readonly value: Length; readonly tape: Tape }) {
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

/** The tape a figure is written on: in the unit of the job, and a fraction that no tape has as a decimal. */
const writableOn = (value: Length, wanted: Tape): Tape => {
  const tape = shownOn(wanted);
  return showsDecimals(tape) || isTapeFraction(value) ? tape : '0.001';
};

/** A length in a sentence, diagonal: only for figures shown large elsewhere, or in lists held in the hand. */
export function Inline({ value, tape: on = '1/32' }: { readonly value: Length; readonly tape?: Tape }) {
  const tape = writableOn(value, on);
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
