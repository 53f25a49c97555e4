import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Op } from '../../length/expr';
import type { Key } from '../../length/keypad';
import { isEmpty } from '../../length/keypad-slot';
import { howMany, inches, subtract } from '../../length/length';
import { wholePart } from '../../length/round';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import { EdgeRule, FoldKey, walkRule } from '../../ui/edge-rule';
import { Icon } from '../../ui/icon';
import { lookAt } from './figure.model';
import type { FigureState } from './figure.state';
import * as words from './words';

type PadProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly press: (key: Key) => void;
  readonly undo: () => void;
};

/** Eight rows of keys against eight eighths of an inch. */
export function Pad(props: PadProps) {
  const { state, tape, press } = props;
  const [folded, setFolded] = useState(true);
  const { chosen, foot } = onTheRule(state, tape);
  return (
    <section
      class={folded ? 'pad' : 'pad rule-open'}
      aria-label={words.keys}
      onMouseDown={(event) => event.preventDefault()}
    >
      <div class="keys">
        <TopKeys {...props} />
        <DigitKeys press={press} />
        <UnitKeys {...props} />
        <SignKeys press={press} />
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

type PadKeyProps = {
  readonly kind?: 'op' | 'word' | 'eq';
  /** What it says to a reader, where that is more than what it shows. */
  readonly says?: string;
  /** Two quick taps of it are meant: 11. */
  readonly quick?: true;
  readonly disabled?: boolean;
  readonly onTap: () => void;
  readonly children: ComponentChildren;
};

const PadKey = ({ kind, says, quick, disabled, onTap, children }: PadKeyProps) => (
  <button
    type="button"
    data-quick={quick}
    class={kind ? `key ${kind}` : 'key'}
    aria-label={says}
    aria-disabled={disabled}
    onClick={onTap}
  >
    {children}
  </button>
);

const TopKeys = ({ state, press, undo }: PadProps) => (
  <>
    <PadKey kind="op" says={words.brackets} onTap={() => press({ key: 'bracket' })}>
      ( )
    </PadKey>
    <PadKey kind="op" quick says={words.undoKey} disabled={state.undo.length === 0} onTap={undo}>
      <Icon name="undo" />
    </PadKey>
    <PadKey kind="op" quick says={words.erase} onTap={() => press({ key: 'erase' })}>
      <Icon name="erase" />
    </PadKey>
  </>
);

type PressProps = Pick<PadProps, 'press'>;

function DigitKeys({ press }: PressProps) {
  const digit = (d: number) => (
    <PadKey key={d} quick onTap={() => press({ key: 'digit', digit: d })}>
      {d}
    </PadKey>
  );
  return (
    <>
      {[7, 8, 9, 4, 5, 6, 1, 2, 3].map(digit)}
      <PadKey says={words.point} onTap={() => press({ key: 'point' })}>
        .
      </PadKey>
      {digit(0)}
    </>
  );
}

/** The unit of the figure in hand, and one step of the tape less or more. */
function UnitKeys({ state, tape, press }: PadProps) {
  const step = tape === '1/16' || tape === '1/32' ? '1/32' : '1/64';
  return (
    <>
      <PadKey kind="word" onTap={() => press({ key: 'feet' })}>
        {words.feet}
      </PadKey>
      <PadKey kind="word" onTap={() => press({ key: 'mm' })}>
        {words.unitKey[otherUnit(state, tape)]}
      </PadKey>
      <PadKey kind="word" quick says={words.scantBy(step)} onTap={() => press({ key: 'scant' })}>
        {words.scant}
        <small class="frac-inline">−{step}</small>
      </PadKey>
      <PadKey kind="word" quick says={words.strongBy(step)} onTap={() => press({ key: 'strong' })}>
        {words.strong}
        <small class="frac-inline">+{step}</small>
      </PadKey>
    </>
  );
}

function SignKeys({ press }: PressProps) {
  const sign = (op: Op) => (
    <PadKey kind="op" says={words.signs[op]} onTap={() => press({ key: 'op', op })}>
      {op}
    </PadKey>
  );
  return (
    <>
      {sign('×')}
      {sign('÷')}
      <PadKey kind="eq" says={words.equals} onTap={() => press({ key: 'equals' })}>
        =
      </PadKey>
      {sign('−')}
      {sign('+')}
    </>
  );
}

/** The unit a figure is not in: on a metric tape a bare number is millimetres and the key makes it inches. */
function otherUnit(state: FigureState, tape: Tape): 'in' | 'mm' {
  const { slot } = state.keys;
  if (unitsOf(tape) === 'in') return 'mm';
  return slot.unit === 'in' && !isEmpty(slot) ? 'mm' : 'in';
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
