import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { forDrawing, type Length } from '../length/length';
import type { Tape } from '../length/tape';
import { Mixed } from './mixed';
import './bank-drawing.css';

/** A front as drawn: edges from the top of the opening, inches. */
export type DrawnFront = {
  readonly no: number;
  readonly height: Length;
  readonly top: Length;
  readonly bottom: Length;
  readonly state: 'planned' | 'now' | 'fitted';
};

type BankProps = {
  readonly opening: Length;
  readonly fronts: readonly DrawnFront[];
  readonly tape: Tape;
  readonly label: string;
  readonly stale?: boolean;
  /** Figures are read from the top: the blue block stands there. */
  readonly fromTop: boolean;
  /** What stands beside the gap over front `no`; the last under the lowest. */
  readonly beside: (gap: number) => ComponentChildren;
  readonly onFront?: (no: number) => void;
};

/** So high a row of figures is beside a gap, and so high the bank is drawn at least, pixels. */
const row = 46;
const least = 400;

/**
 * A column of fronts to scale: heights written on them, gaps true, each gap a shim whose wedge stands outside the case.
 * Drawn so high that the figures of every gap have a row of their own.
 */
export function BankDrawing({ opening, fronts, tape, label, stale, fromTop, beside, onFront }: BankProps) {
  const whole = Math.max(forDrawing(opening), 0.01);
  const lowest = Math.min(...fronts.map((f) => forDrawing(f.height)), whole);
  const tall = Math.min(1400, Math.max(least, (row * whole) / Math.max(lowest, whole / 30)));
  const at = (x: Length) => (forDrawing(x) / whole) * tall;
  const gaps = gapsOf(fronts, at, tall);
  const now = fronts.find((f) => f.state === 'now')?.no;
  const box = useRef<HTMLDivElement>(null);
  const stood = useRef(now);
  // the next front comes into sight when the one before is on; never as the page opens
  useEffect(() => {
    if (now !== stood.current) box.current?.querySelector('.now')?.scrollIntoView({ block: 'center' });
    stood.current = now;
  }, [now]);
  return (
    <div
      class={`bank ${stale ? 'stale' : 'rests'}${fromTop ? ' fromtop' : ''}`}
      style={{ height: `${tall}px` }}
    >
      <div class="bankbox" role="group" aria-label={label} ref={box}>
        {fronts.map((f) => (
          <Front key={f.no} front={f} at={at} tape={tape} onTap={() => onFront?.(f.no)} />
        ))}
      </div>
      {gaps.map((y, k) => (
        <div key={k} class="bankgap" style={{ top: `${y}px` }}>
          <svg viewBox="0 0 56 14" aria-hidden="true">
            <path class="f-red" d="M0 7 56 2v10z" />
          </svg>
          {beside(k)}
        </div>
      ))}
    </div>
  );
}

type FrontProps = {
  readonly front: DrawnFront;
  /** Where an edge is drawn, pixels from the top of the opening. */
  readonly at: (x: Length) => number;
  readonly tape: Tape;
  readonly onTap: () => void;
};

function Front({ front: { no, height, top, bottom, state }, at, tape, onTap }: FrontProps) {
  const high = at(bottom) - at(top);
  const place = {
    top: `${at(top)}px`,
    height: `${Math.max(2, high)}px`,
    fontSize: `${Math.min(38, high * 0.5)}px`,
  };
  return (
    <button type="button" class={`bankfront ${state}`} style={place} onClick={onTap}>
      <span class="sr">Front {no}: </span>
      <span class="no" aria-hidden="true">
        {no}
      </span>
      <Mixed value={height} tape={tape} />
      {state === 'fitted' && <small>as built</small>}
    </button>
  );
}

/** The middle of every gap: over each front, and under the last. */
function gapsOf(fronts: readonly DrawnFront[], at: (x: Length) => number, tall: number): readonly number[] {
  const edges = fronts.map((f) => [at(f.top), at(f.bottom)] as const);
  const between = edges.map(([top], k) => (top + (edges[k - 1]?.[1] ?? 0)) / 2);
  return [...between, ((edges[edges.length - 1]?.[1] ?? tall) + tall) / 2];
}
