import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  emptySlotOn,
  isEmpty,
  pressSlot,
  type Slot,
  type SlotKey,
  slotText,
  slotValue,
} from '../length/keypad-slot';
import { isNegative, isPositive, type Length } from '../length/length';
import { readLength } from '../length/read';
import { type Tape, unitsOf } from '../length/tape';
import { Dock } from './dock';
import { draftPlace, drafts, noteDraft } from './drafts';
import { EdgeRule, FoldKey } from './edge-rule';
import { Icon } from './icon';
import { type Came, type TypedReading, useInHand } from './in-hand';
import { Inline, tapeGiven } from './mixed';
import { nextBlank } from './next-blank';
import { strokes } from './strokes';
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

const wide = ['', '', 'wide2', 'wide3'];
const digits = [7, 8, 9, 4, 5, 6, 1, 2, 3];
/** A count stays under a thousand: no board has more grooves. */
const mostDigits = 3;
const words = ['mm', 'scant', 'strong', 'feet'] as const;

/**
 * Keys docked below to fill one blank. A caliper that types its reading is heard too. However it is left, what reads
 * as a figure is taken; what does not read stays a draft of its blank.
 */
export function KeySheet(props: KeySheetProps) {
  const lengths = props.fill !== 'count';
  const draft = useDraft(props.title);
  const [slot, setSlot] = useState<Slot>(() => startOf(props, lengths ? '' : draft.found));
  const [touched, setTouched] = useState(!lengths && draft.found !== '');
  const [folded, setFolded] = useState(true);
  const [typing, setTyping] = useState(lengths ? draft.found : '');
  /** Which of the two was used last: that one counts. */
  const [last, setLast] = useState<'keys' | 'text'>('text');
  const given = useRef(false);
  const press = (key: SlotKey) => {
    if (!lengths && key.key === 'digit' && slot.digits.length >= mostDigits) return;
    const next = pressSlot(slot, key, props.tape);
    setTouched(true);
    setLast('keys');
    if (typing === draft.found) setTyping(''); // keyed before and gone on with
    if (!next.ok) return;
    setSlot(next.value);
    draft.note(isEmpty(next.value) ? '' : lengths ? slotText(next.value) : next.value.digits);
    props.onTry?.(figureOf(next.value, lengths));
  };
  const type = (text: string) => {
    setTyping(text);
    setLast(text === '' && touched ? 'keys' : 'text');
    draft.note(text);
  };
  /** Takes what is there; false where it does not read. What was typed and not used stays a draft. */
  const give = (): boolean => {
    if (given.current) return true;
    const text = typing.trim();
    const byText = text !== '' && last === 'text';
    const typed = byText ? readTyped(text, props) : undefined;
    if (byText && !typed) return false;
    given.current = true;
    draft.note(byText ? '' : text);
    if (typed) props.onLength?.(typed);
    else if (touched && lengths) props.onLength?.(isEmpty(slot) ? undefined : slotValue(slot));
    else if (touched) props.onCount?.(slot.digits === '' ? undefined : Number(slot.digits));
    return true;
  };
  const leaving = useRef(give);
  leaving.current = give;
  useEffect(() => () => void leaving.current(), []);
  const leave = () => {
    give();
    props.onClose();
  };
  /** What does not read stays to be seen. */
  const done = () => {
    if (give()) props.onClose();
  };
  const next = useRef(nextBlank()).current;
  const goOn = () => {
    if (!give()) return;
    props.onClose();
    next?.();
  };
  const take = (value: Length) => {
    given.current = true;
    draft.note('');
    props.onLength?.(value);
    props.onClose();
  };
  const field = useRef<HTMLInputElement>(null);
  /**
   * Calipers say what a hand would say and then Done: what is wanted is taken at once, what looks odd stays to be
   * seen.
   */
  const came = ({ text, unit }: TypedReading): Came => {
    const read = readLength(text, { unit: unit ?? unitsOf(props.tape) });
    if (props.fill !== 'length' || !read.ok) {
      setSlot(slot);
      setTouched(touched);
      type(typing);
      props.onTry?.(touched ? figureOf(slot, lengths) : (props.now ?? props.nowCount));
      return 'no-length-wanted';
    }
    if (isPositive(read.value.value)) {
      take(read.value.value);
      return 'taken';
    }
    type(text);
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
    <Dock title={props.title} onClose={leave} onKey={(event) => strokes(event, press, done, field.current)}>
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
            {next && (
              <button type="button" class="key word" onClick={goOn}>
                Next
              </button>
            )}
            <button type="button" class={`key eq ${wide[(lengths ? 2 : 3) - (next ? 1 : 0)]}`} onClick={done}>
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
            onText={type}
            units={unitsOf(props.tape)}
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

/** Where a draft was left, and where it is noted: at the page the panel was opened on. */
function useDraft(title: string) {
  const place = useRef(draftPlace(title));
  return {
    found: drafts.peek()[place.current]?.text ?? '',
    note: (text: string) => noteDraft(place.current, title, text),
  };
}

/** A count half keyed is on its keys again. */
function startOf({ fill, tape }: KeySheetProps, digits: string): Slot {
  const empty = emptySlotOn(fill === 'length' ? tape : '1/64');
  return /^\d{1,3}$/.test(digits) ? { ...empty, digits } : empty;
}

function readTyped(text: string, { tape, signed = false }: KeySheetProps): Length | undefined {
  const read = readLength(text, { unit: unitsOf(tape) });
  return read.ok && (signed || !isNegative(read.value.value)) ? read.value.value : undefined;
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
