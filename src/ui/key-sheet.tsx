import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import {
  emptySlotOn,
  isEmpty,
  pressSlot,
  type Slot,
  type SlotKey,
  slotText,
  slotValue,
} from '../length/keypad-slot';
import { isPositive, type Length } from '../length/length';
import { readLength } from '../length/read';
import { isMetric, type Tape } from '../length/tape';
import { Dock } from './dock';
import { EdgeRule, FoldKey, walkRule } from './edge-rule';
import { Icon } from './icon';
import { type Came, type TypedReading, useInHand } from './in-hand';
import { Inline, tapeGiven } from './mixed';
import { Wedge } from './wedge';

type KeySheetProps = {
  readonly title: string;
  readonly tape: Tape;
  /** `length` with the edge rule; `amount` the same without units; `count` with digits alone. */
  readonly fill: 'length' | 'amount' | 'count';
  /** A figure below nothing may be given too: a step, a correction, a place before the datum. */
  readonly signed?: boolean | undefined;
  /** Shown until a key is pressed. */
  readonly now?: Length | undefined;
  readonly nowCount?: number | undefined;
  /** Sheets measured: one tap takes a thickness. */
  readonly sheets?: readonly { readonly name: string; readonly thickness: Length }[];
  readonly onLength?: (value: Length | undefined) => void;
  readonly onCount?: (value: number | undefined) => void;
  /** Called with each keystroke, so that the drawing above can follow. */
  readonly onTry?: (value: Length | number | undefined) => void;
  readonly onClose: () => void;
};

const digits = [7, 8, 9, 4, 5, 6, 1, 2, 3];
/** A count stays under a thousand: no board has more grooves. */
const mostDigits = 3;
const words = ['mm', 'scant', 'strong', 'feet'] as const;

/** Keys docked below to fill one blank. A caliper that types its reading is heard too. */
export function KeySheet(props: KeySheetProps) {
  const [slot, setSlot] = useState<Slot>(emptySlotOn(props.fill === 'length' ? props.tape : '1/64'));
  const [touched, setTouched] = useState(false);
  const [folded, setFolded] = useState(true);
  const [typing, setTyping] = useState('');
  const lengths = props.fill !== 'count';
  const press = (key: SlotKey) => {
    if (!lengths && key.key === 'digit' && slot.digits.length >= mostDigits) return;
    const next = pressSlot(slot, key, props.tape);
    setTouched(true);
    if (!next.ok) return;
    setSlot(next.value);
    props.onTry?.(figureOf(next.value, lengths));
  };
  const done = () => {
    if (touched) give(slot);
    props.onClose();
  };
  const give = (filled: Slot) => {
    if (lengths) props.onLength?.(isEmpty(filled) ? undefined : slotValue(filled));
    else props.onCount?.(filled.digits === '' ? undefined : Number(filled.digits));
  };
  const take = (value: Length) => {
    props.onLength?.(value);
    props.onClose();
  };
  const field = useRef<HTMLInputElement>(null);
  /** Calipers say what a hand would say and then Done: what is wanted is taken at once, what looks odd stays to be seen. */
  const came = ({ text, unit }: TypedReading): Came => {
    const read = readLength(text, { unit: unit ?? (isMetric(props.tape) ? 'mm' : 'in') });
    if (props.fill !== 'length' || !read.ok) {
      setSlot(slot);
      setTouched(touched);
      setTyping(typing);
      props.onTry?.(touched ? figureOf(slot, lengths) : (props.now ?? props.nowCount));
      return 'no-length-wanted';
    }
    if (isPositive(read.value.value)) {
      take(read.value.value);
      return 'taken';
    }
    setTyping(text);
    return 'not-above-zero';
  };
  useInHand({ field: () => field.current, begin: () => came });
  /** What the blank held before a key was pressed: erase empties it. */
  const standing = !touched && (props.now ?? props.nowCount) !== undefined;
  const key = (k: SlotKey): KeyProps => ({
    out: !pressSlot(slot, k, props.tape).ok && !(k.key === 'erase' && standing),
    onTap: () => press(k),
  });
  return (
    <Dock title={props.title} onClose={done} onKey={(event) => typed(event, press, done, field.current)}>
      <div class="key-sheet">
        <output class="reading">
          {touched ? (
            isEmpty(slot) ? (
              <span class="muted">empty</span>
            ) : (
              <b>{slotText(slot)}</b>
            )
          ) : (
            <Now {...props} />
          )}
        </output>
        {lengths && <Sheets sheets={props.sheets ?? []} onTake={take} />}
        <div class={`mini-pad${lengths ? '' : ' count'}${folded ? '' : ' rule-open'}`}>
          <div class="keys" onMouseDown={keepFocus}>
            {digits.map((digit) => (
              <Key key={digit} label={`${digit}`} {...key({ key: 'digit', digit })} />
            ))}
            {lengths ? <Key label="." {...key({ key: 'point' })} /> : <span class="key" />}
            <Key label="0" {...key({ key: 'digit', digit: 0 })} />
            <Key label="erase" kind="op" {...key({ key: 'erase' })}>
              <Icon name="erase" />
            </Key>
            {props.fill === 'length' &&
              words.map((word) => (
                <Key key={word} label={wordFor(word, slot)} kind="word" {...key({ key: word })} />
              ))}
            <button type="button" class={lengths ? 'key eq wide2' : 'key eq wide3'} onClick={done}>
              Done
            </button>
            {lengths && <FoldKey folded={folded} onTap={() => setFolded(!folded)} />}
          </div>
          {lengths && (
            <EdgeRule
              tape={props.tape}
              chosen={chosenOf(slot)}
              onFraction={(sixteenths) => {
                press({ key: 'fraction', sixteenths });
                setFolded(true);
              }}
            />
          )}
        </div>
        {lengths && (
          <Wedge
            text={typing}
            onText={setTyping}
            metric={isMetric(props.tape)}
            signed={props.signed ?? false}
            onReading={take}
            field={field}
          />
        )}
      </div>
    </Dock>
  );
}

type SheetsProps = {
  readonly sheets: readonly { readonly name: string; readonly thickness: Length }[];
  readonly onTake: (thickness: Length) => void;
};

/** Thicknesses in one row that slides, however many sheets there are: the keys stay where they were. */
function Sheets({ sheets, onTake }: SheetsProps) {
  if (sheets.length === 0) return null;
  return (
    <div class="chips sheets">
      {sheets.map(({ name, thickness }, k) => (
        <button key={k} type="button" class="chip" onClick={() => onTake(thickness)}>
          {name} <Inline value={thickness} tape="0.001" />
        </button>
      ))}
    </div>
  );
}

const figureOf = (slot: Slot, lengths: boolean): Length | number | undefined =>
  isEmpty(slot) ? undefined : lengths ? slotValue(slot) : Number(slot.digits);

const chosenOf = (slot: Slot): number | undefined =>
  slot.sixtyFourths !== undefined && slot.sixtyFourths % 4 === 0 ? slot.sixtyFourths / 4 : undefined;

function Now({ now, nowCount }: KeySheetProps) {
  if (now) return <Inline value={now} tape={tapeGiven(now)} />;
  return <span class="muted">{nowCount ?? 'empty'}</span>;
}

/** On a metric tape a bare figure is millimetres, and the unit key goes over to inches. */
const wordFor = (word: (typeof words)[number], slot: Slot): string =>
  word === 'mm' && slot.unit === 'mm' && slot.home === 'mm' ? 'inch' : word;

type KeyProps = { readonly out: boolean; readonly onTap: () => void };

/** A key that means nothing just now is out of play, and looks it. */
function Key({
  label,
  kind,
  out,
  onTap,
  children,
}: KeyProps & {
  readonly label: string;
  readonly kind?: 'op' | 'word';
  readonly children?: ComponentChildren;
}) {
  return (
    <button
      type="button"
      data-quick
      class={kind ? `key ${kind}` : 'key'}
      aria-label={children ? label : undefined}
      aria-disabled={out}
      onClick={onTap}
    >
      {children ?? label}
    </button>
  );
}

/** A mouse on a key leaves the focus where it was, so that Enter still means done. */
const keepFocus = (event: MouseEvent): void => event.preventDefault();

/** Keys of a desk keyboard. What makes up a length goes to the typed field, as does a caliper's reading. */
function typed(
  event: KeyboardEvent,
  press: (key: SlotKey) => void,
  done: () => void,
  field: HTMLInputElement | null,
): void {
  if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === '[') press({ key: 'scant' });
  else if (event.key === ']') press({ key: 'strong' });
  else if (event.key === 'Backspace') press({ key: 'erase' });
  else if (event.key === 'Enter' && !(event.target instanceof HTMLButtonElement)) done();
  else if (field && /^[\d.,'"/-]$/.test(event.key)) {
    field.focus(); // the stroke itself then lands in the field
    return;
  } else if (/^\d$/.test(event.key)) press({ key: 'digit', digit: Number(event.key) });
  else if (!walkRule(event)) return;
  event.preventDefault();
}
