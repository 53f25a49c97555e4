import { useState } from 'preact/hooks';
import type { Op } from '../../length/expr';
import type { Key } from '../../length/keypad';
import { isEmpty } from '../../length/keypad-slot';
import { howMany, inches, subtract } from '../../length/length';
import { wholePart } from '../../length/round';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import { EdgeRule, FoldKey, walkRule } from '../../ui/edge-rule';
import { Icon } from '../../ui/icon';
import { type FigureState, lookAt } from './figure.model';

type PadProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly press: (key: Key) => void;
  readonly undo: () => void;
};

/** Eight rows of keys against eight eighths of an inch. */
export function Pad({ state, tape, press, undo }: PadProps) {
  const [folded, setFolded] = useState(true);
  const { chosen, foot } = onTheRule(state, tape);
  const step = tape === '1/16' || tape === '1/32' ? '1/32' : '1/64';
  const op = (sign: Op, label: string) => (
    <button type="button" class="key op" aria-label={label} onClick={() => press({ key: 'op', op: sign })}>
      {sign}
    </button>
  );
  const digit = (d: number) => (
    <button key={d} type="button" data-quick class="key" onClick={() => press({ key: 'digit', digit: d })}>
      {d}
    </button>
  );
  return (
    <section
      class={folded ? 'pad' : 'pad rule-open'}
      aria-label="Keys"
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keys">
        <button type="button" class="key op" aria-label="brackets" onClick={() => press({ key: 'bracket' })}>
          ( )
        </button>
        <button
          type="button"
          data-quick
          class="key op"
          aria-label="undo"
          aria-disabled={state.undo.length === 0}
          onClick={undo}
        >
          <Icon name="undo" />
        </button>
        <button
          type="button"
          data-quick
          class="key op"
          aria-label="erase"
          onClick={() => press({ key: 'erase' })}
        >
          <Icon name="erase" />
        </button>
        {[7, 8, 9, 4, 5, 6, 1, 2, 3].map(digit)}
        <button type="button" class="key" aria-label="point" onClick={() => press({ key: 'point' })}>
          .
        </button>
        {digit(0)}
        <button type="button" class="key word" onClick={() => press({ key: 'feet' })}>
          feet
        </button>
        <button type="button" class="key word" onClick={() => press({ key: 'mm' })}>
          {unitKey(state, tape)}
        </button>
        <button
          type="button"
          data-quick
          class="key word"
          aria-label={`scant, less ${step}`}
          onClick={() => press({ key: 'scant' })}
        >
          scant<small class="frac-inline">−{step}</small>
        </button>
        <button
          type="button"
          data-quick
          class="key word"
          aria-label={`strong, more ${step}`}
          onClick={() => press({ key: 'strong' })}
        >
          strong<small class="frac-inline">+{step}</small>
        </button>
        {op('×', 'times')}
        {op('÷', 'divided by')}
        <button type="button" class="key eq" aria-label="equals" onClick={() => press({ key: 'equals' })}>
          =
        </button>
        {op('−', 'minus')}
        {op('+', 'plus')}
        <FoldKey folded={folded} onTap={() => setFolded(!folded)} />
      </div>
      <EdgeRule
        tape={tape}
        chosen={chosen}
        foot={foot}
        onFraction={(sixteenths) => {
          press({ key: 'fraction', sixteenths });
          setFolded(true);
        }}
      />
    </section>
  );
}

/** The unit a figure is not in: on a metric tape a bare number is millimetres and the key makes it inches. */
function unitKey(state: FigureState, tape: Tape): string {
  const { unit } = state.keys.slot;
  if (unitsOf(tape) === 'in') return 'mm';
  return unit === 'in' && !isEmpty(state.keys.slot) ? 'mm' : 'inch';
}

/** What the rule shows: the fraction in hand; after equals the nearest sixteenth, and the true place in its inch. */
function onTheRule(state: FigureState, tape: Tape) {
  const { slot, done, result } = lookAt(state);
  if (!done) {
    const k = slot.sixtyFourths;
    return { chosen: k !== undefined && k % 4 === 0 ? k / 4 : undefined, foot: undefined };
  }
  if (!result?.ok || result.value.kind !== 'length' || result.value.value.s < 0n)
    return { chosen: undefined, foot: undefined };
  const value = result.value.value;
  const inInch = subtract(value, inches(wholePart(howMany(value, inches(1n)))));
  const nearest = markAt(markAt(inInch, tape).value, '1/16');
  const k = Number(nearest.value.mul(16n).n);
  return { chosen: nearest.rest.n === 0n && k > 0 && k < 16 ? k : undefined, foot: inInch };
}

const opKeys: Readonly<Record<string, Op>> = { '+': '+', '-': '−', '*': '×', x: '×', '/': '÷' };

/** Keys of a desk keyboard, wherever they fall on the page but in a field or a docked panel; arrows walk the rule. */
export function typedKey(event: KeyboardEvent, press: (key: Key) => void, undo: () => void): void {
  const on = event.target instanceof HTMLElement ? event.target : document.body;
  const tapped = on instanceof HTMLButtonElement && (event.key === 'Enter' || event.key === ' ');
  if (tapped || on.closest('input, [role="dialog"]') || event.ctrlKey || event.metaKey || event.altKey)
    return;
  const key = keyOf(event.key);
  if (key) press(key);
  else if (event.key === 'u') undo();
  else if (!walkRule(event)) return;
  event.preventDefault();
}

function keyOf(name: string): Key | undefined {
  const op = opKeys[name];
  if (op) return { key: 'op', op };
  return /^\d$/.test(name) ? { key: 'digit', digit: Number(name) } : namedKeys[name];
}

const namedKeys: Readonly<Record<string, Key>> = {
  '.': { key: 'point' },
  ',': { key: 'point' },
  '(': { key: 'bracket' },
  ')': { key: 'bracket' },
  Enter: { key: 'equals' },
  '=': { key: 'equals' },
  Backspace: { key: 'erase' },
  '[': { key: 'scant' },
  ']': { key: 'strong' },
};
