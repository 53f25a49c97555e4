import { forDrawing, isNegative, type Length } from '../length/length';
import { grainOf, showsDecimals, type Tape } from '../length/tape';
import { mixed, spoken, writeDecimals } from '../length/write';
import './lens.css';

type LensProps = {
  readonly mark: Length;
  readonly rest: Length;
  readonly tape: Tape;
  /** Length of the stock, where it is known: the wood ends there. */
  readonly stock?: Length | undefined;
};

const width = 358;
const span = 2.6; // grains either side

/** The rule round a mark, magnified: steel above, wood below, the mark thick, the knife line at the true place. */
export function Lens({ mark, rest, tape, stock }: LensProps) {
  if (isNegative(mark)) return null; // before the end of the rule there is nothing to look at
  const grain = forDrawing(grainOf(tape));
  const x = (inchesOff: number) => width / 2 + (inchesOff / grain) * (width / 2 / span);
  const marks = [-2, -1, 0, 1, 2].map((k) => ({ k, at: mark.add(grainOf(tape).mul(BigInt(k))) as Length }));
  const knife = x(forDrawing(rest));
  const inView = (end: number) => Math.min(width, Math.max(0, x(end - forDrawing(mark))));
  const [wood, woodEnd] = [inView(0), stock ? inView(forDrawing(stock)) : width];
  return (
    <svg
      class="lens"
      viewBox={`0 0 ${width} 72`}
      role="img"
      aria-label={`Rule round ${spoken(mark, rest, tape)}`}
    >
      <rect class="f-steel" x="0" y="0" width={width} height="50" />
      <rect class="f-surface" x="0" y="50" width={width} height="22" />
      <rect class="f-birch" x={wood} y="50" width={Math.max(0, woodEnd - wood)} height="22" />
      {marks
        .filter(({ at }) => at.s >= 0n || at.n === 0n)
        .map(({ k, at }) => (
          <Graduation key={k} x={x(k * grain)} at={at} tape={tape} main={k === 0} />
        ))}
      <line class="k-ink" x1="0" x2={width} y1="50" y2="50" stroke-width="2" />
      <line class="k-red" x1={knife} x2={knife} y1="38" y2="52" stroke-width="3" />
      <path
        class="k-red"
        d={`M${knife - 7.4} 68L${knife} 53L${knife + 7.4} 68`}
        stroke-width="4"
        stroke-linecap="round"
        stroke-linejoin="round"
      />
      <rect class="k-hair" x=".75" y=".75" width={width - 1.5} height="70.5" rx="3" stroke-width="1.5" />
    </svg>
  );
}

type GraduationProps = {
  readonly x: number;
  readonly at: Length;
  readonly tape: Tape;
  readonly main: boolean;
};

function Graduation({ x, at, tape, main }: GraduationProps) {
  const { whole, n, d } = mixed(at);
  const size = main ? 18 : 15.5;
  const ink = main ? 'f-ink' : 'f-ink2';
  const tall = main ? 14 : d <= 8n ? 13 : d <= 16n ? 11 : 8;
  const label = showsDecimals(tape)
    ? writeDecimals(at, tape).replace(' mm', '')
    : n === 0n
      ? `${whole}`
      : undefined;
  return (
    <>
      <line class="k-ink" x1={x} x2={x} y1="50" y2={50 - tall} stroke-width={main ? 6 : 2} />
      {label !== undefined ? (
        <text class={ink} x={x} y="25" font-size={size} text-anchor="middle">
          {label}
        </text>
      ) : (
        <>
          <text class={ink} x={x} y="14.2" font-size={size} text-anchor="middle">{`${n}`}</text>
          <rect class={ink} x={x - size * 0.62} y="16.3" width={size * 1.24} height="1.6" />
          <text class={ink} x={x} y="32" font-size={size} text-anchor="middle">{`${d}`}</text>
        </>
      )}
    </>
  );
}
