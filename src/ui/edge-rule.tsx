import { forDrawing, type Length } from '../length/length';
import { type Tape, unitsOf } from '../length/tape';
import './edge-rule.css';
import './mixed.css';
import './keys.css';

type EdgeRuleProps = {
  readonly tape: Tape;
  /** The sixteenth in hand or answered, 1 to 15. */
  readonly chosen?: number | undefined;
  /** Where an answer truly falls within its inch; the crow's foot stands there. */
  readonly foot?: Length | undefined;
  readonly onFraction: (sixteenths: number) => void;
};

const all = Array.from({ length: 15 }, (_, k) => k + 1);

/** One inch of a steel rule along the edge of the screen: each graduation runs into the key of its own fraction. */
export function EdgeRule({ tape, chosen, foot, onFraction }: EdgeRuleProps) {
  return (
    <div class="edgerule" role="group" aria-label="Fraction of an inch">
      <Graduations tape={tape} />
      {foot && <Foot at={foot} />}
      <span class="end t" aria-hidden="true">
        1 in
      </span>
      <span class="end b" aria-hidden="true">
        0
      </span>
      {all.map((k) => (
        <FractionKey key={k} sixteenths={k} on={k === chosen} onTap={() => onFraction(k)} />
      ))}
    </div>
  );
}

/** Arrow keys walk the rule: the next fraction up or down takes the focus. */
export function walkRule(event: KeyboardEvent): boolean {
  const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
  const keys = [...document.querySelectorAll<HTMLButtonElement>('.edgerule button')];
  if (by === 0 || keys.length === 0) return false;
  const last = keys.length - 1;
  const at = (keys as readonly (Element | null)[]).indexOf(document.activeElement);
  const next = at < 0 ? (by > 0 ? 0 : last) : Math.min(last, Math.max(0, at + by));
  keys[next]?.focus();
  return true;
}

function lowest(k: number): readonly [number, number] {
  let [n, d] = [k, 16];
  while (n % 2 === 0) [n, d] = [n / 2, d / 2];
  return [n, d];
}

function FractionKey({
  sixteenths: k,
  on,
  onTap,
}: {
  readonly sixteenths: number;
  readonly on: boolean;
  readonly onTap: () => void;
}) {
  const [n, d] = lowest(k);
  const odd = k % 2 === 1;
  const kind = odd ? 's16' : k % 4 === 0 ? 'e8 q' : 'e8';
  return (
    <button
      type="button"
      data-quick
      class={on ? `${kind} on` : kind}
      style={{ bottom: `${((k - 1) / 16) * 100}%` }}
      aria-label={`${n}/${d}`}
      aria-pressed={on}
      onClick={onTap}
    >
      <span class="mx" aria-hidden="true">
        <span class="fr alone">
          <span class="nu">{n}</span>
          <span class="de">{d}</span>
        </span>
      </span>
    </button>
  );
}

/** Fine ticks follow the tape: sixteenths alone, thirty-seconds, sixty-fourths. */
function Graduations({ tape }: { readonly tape: Tape }) {
  const parts = tape === '1/16' ? 16 : tape === '1/32' || unitsOf(tape) === 'mm' ? 32 : 64;
  const ticks = Array.from({ length: parts - 1 }, (_, k) => ((k + 1) * 64) / parts);
  return (
    <svg aria-hidden="true">
      <svg x="100%" y="0" width="1" height="100%" overflow="visible">
        {ticks.map((k) => (
          <Tick key={k} sixtyFourths={k} />
        ))}
      </svg>
    </svg>
  );
}

/** Where the answer truly stands: a line across the rule and the crow's foot that points at it. It slides there. */
const Foot = ({ at }: { readonly at: Length }) => (
  <svg class="foot" aria-hidden="true" style={{ top: `${(1 - forDrawing(at)) * 100}%` }}>
    <svg x="100%" width="1" height="1" overflow="visible">
      <line class="k-red" x1="-26" x2="0" y1="0" y2="0" stroke-width="3.5" />
    </svg>
    <path
      class="k-red"
      d="M-15 -9L-2 0L-15 9"
      stroke-width="3.5"
      stroke-linecap="round"
      stroke-linejoin="round"
    />
  </svg>
);

function Tick({ sixtyFourths: k }: { readonly sixtyFourths: number }) {
  const [reach, thick] =
    k % 16 === 0
      ? [92, 3]
      : k % 8 === 0
        ? [88, 2.5]
        : k % 4 === 0
          ? [19, 2.5]
          : k % 2 === 0
            ? [12, 2]
            : [7, 1.5];
  const y = `${(1 - k / 64) * 100}%`;
  return <line class="k-ink" x1={-reach} x2="0" y1={y} y2={y} stroke-width={thick} />;
}

type FoldKeyProps = { readonly folded: boolean; readonly onTap: () => void };

/** With large text the rule folds behind this key, so that its figures can double too. */
export const FoldKey = ({ folded, onTap }: FoldKeyProps) => (
  <button type="button" class="key op word foldkey" aria-expanded={!folded} onClick={onTap}>
    Fractions of an inch
  </button>
);
