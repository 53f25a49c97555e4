import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { SlotKey } from '../length/keypad-slot';
import type { Slot } from '../length/keypad-state';
import type { Length } from '../length/length';
import { Dock } from './dock';
import { EdgeRule, FoldKey } from './edge-rule';
import { type EntryProps, Field, Odd } from './entry';
import { Icon } from './icon';
import { useInHand } from './in-hand';
import { type Keyed, pressed } from './keyed';
import { Inline } from './mixed';
import { nextBlank } from './next-blank';
import * as words from './pad-words';
import { strokes } from './strokes';
import { shownOn, unitInHand } from './unit-in-hand';
import { cameBy, useKeyed } from './use-keyed';
import './key-sheet.css';

type KeySheetProps = EntryProps & {
  /** What is wrong with the figure as it is keyed. */
  readonly says?: readonly string[] | undefined;
  /** What comes of it: the page it stands on may be hidden. */
  readonly tells?: string | undefined;
  /** Sheets measured: one tap takes a thickness. */
  readonly sheets?: readonly { readonly name: string; readonly thickness: Length }[];
};

/**
 * Keys docked below to fill one blank. A caliper that types its reading is heard too. However it is left, what reads
 * as a figure is taken; what does not read stays a draft of its blank.
 */
export function KeySheet(given: KeySheetProps) {
  const props = { ...given, tape: shownOn(given.tape) };
  const hands = useKeyed(props);
  const { keyed, press, type, give, take, doubt, refused } = hands;
  const field = useRef<HTMLInputElement>(null);
  const next = useRef(nextBlank()).current;
  useInHand({ field: () => field.current, begin: () => cameBy(props, keyed, hands) });
  const leave = () => {
    give();
    props.onClose();
  };
  /** What does not read, and what cannot be meant, stays to be seen. */
  const done = () => {
    if (give()) props.onClose();
  };
  const goOn = () => {
    if (!give()) return;
    props.onClose();
    next?.open();
  };
  const lengths = props.fill !== 'count';
  return (
    <Dock title={props.title} onClose={leave} onKey={(event) => strokes(event, press, done, field.current)}>
      <Says says={props.says ?? []} tells={props.tells} />
      <div class="key-sheet">
        {lengths && <Sheets sheets={props.sheets ?? []} onTake={take} />}
        <Odd {...{ props, keyed, doubt, refused, take }} />
        <Field {...{ props, keyed, field }} onText={type} onEnter={done} />
        <Pad {...{ props, keyed, press, done }} next={next && { name: next.name, goOn }} />
      </div>
    </Dock>
  );
}

type SaysProps = { readonly says: readonly string[]; readonly tells: string | undefined };

const Says = ({ says, tells }: SaysProps) => (
  <ul class="says" aria-live="polite">
    {says.map((text) => (
      <li key={text} class="wrongline">
        <Icon name="warn" />
        {text}
      </li>
    ))}
    {tells && <li>{tells}</li>}
  </ul>
);

type Next = { readonly name: string; readonly goOn: () => void };

type PadProps = {
  readonly props: KeySheetProps;
  readonly keyed: Keyed;
  readonly press: (key: SlotKey) => void;
  readonly done: () => void;
  /** On to the next blank, where there is one. */
  readonly next: Next | undefined;
};

/** The keys, and beside those of a length in inches the edge rule. */
function Pad({ props, keyed, press, done, next }: PadProps) {
  const { tape, fill, now, nowCount } = props;
  const { slot, touched } = keyed;
  const [folded, setFolded] = useState(true);
  const fractions = fill === 'length' || unitInHand() === 'in';
  const ruled = fill !== 'count' && fractions && slot.unit === 'in';
  /** What the blank held before a key was pressed: erase empties it. */
  const standing = !touched && (now ?? nowCount) !== undefined;
  const key = (k: SlotKey): KeyProps => ({
    out: !pressed(keyed, k, props) && !(k.key === 'erase' && standing),
    onTap: () => press(k),
  });
  const shape = [fill === 'count' && 'count', !ruled && 'plain', !folded && 'rule-open'];
  return (
    <div class={['mini-pad', ...shape].filter(Boolean).join(' ')}>
      <div class="keys" onMouseDown={keepFocus}>
        <Digits lengths={fill !== 'count'} of={key} />
        {fill === 'length' && <Words slot={slot} of={key} />}
        <EndKeys columns={fill === 'count' || fill === 'amount' ? 3 : 2} done={done} next={next} />
        {ruled && <FoldKey folded={folded} onTap={() => setFolded(!folded)} />}
      </div>
      {ruled && (
        <EdgeRule
          tape={tape}
          chosen={chosenOf(slot)}
          onFraction={(sixteenths) => {
            press({ key: 'fraction', sixteenths });
            setFolded(true);
          }}
        />
      )}
    </div>
  );
}

type KeysProps = { readonly of: (key: SlotKey) => KeyProps };

const digits = [7, 8, 9, 4, 5, 6, 1, 2, 3];

const Digits = ({ lengths, of }: KeysProps & { readonly lengths: boolean }) => (
  <>
    {digits.map((digit) => (
      <Key key={digit} label={`${digit}`} {...of({ key: 'digit', digit })} />
    ))}
    {lengths ? <Key label="." {...of({ key: 'point' })} /> : <span class="key" />}
    <Key label="0" {...of({ key: 'digit', digit: 0 })} />
    <Key label="erase" kind="op" {...of({ key: 'erase' })}>
      <Icon name="erase" />
    </Key>
  </>
);

const wordKeys = ['mm', 'scant', 'strong', 'feet'] as const;

/** In millimetres there is the way to inches alone. */
const Words = ({ slot, of }: KeysProps & { readonly slot: Slot }) => (
  <>
    {(slot.unit === 'mm' ? wordKeys.slice(0, 1) : wordKeys).map((word) => (
      <Key key={word} label={wordFor(word, slot)} kind="word" {...of({ key: word })} />
    ))}
  </>
);

const wide = ['', '', 'wide2', 'wide3'];

type EndProps = Pick<PadProps, 'done' | 'next'> & { readonly columns: number };

/** *Next*, with the name of the blank it goes to, and *Done* as wide as what is left of its row. */
const EndKeys = ({ columns, done, next }: EndProps) => (
  <>
    {next && (
      <button type="button" class="key word" aria-label={words.nextSays(next.name)} onClick={next.goOn}>
        <span>
          {words.next}
          <small>{words.inSentence(next.name)}</small>
        </span>
      </button>
    )}
    <button type="button" class={`key eq ${wide[columns - (next ? 1 : 0)]}`} onClick={done}>
      {words.done}
    </button>
  </>
);

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

const chosenOf = (slot: Slot): number | undefined =>
  slot.sixtyFourths !== undefined && slot.sixtyFourths % 4 === 0 ? slot.sixtyFourths / 4 : undefined;

/** On a metric tape a bare figure is millimetres, and the unit key goes over to inches. */
const wordFor = (word: (typeof wordKeys)[number], slot: Slot): string =>
  word === 'mm' && slot.unit === 'mm' && slot.home === 'mm' ? 'inch' : word;

type KeyProps = { readonly out: boolean; readonly onTap: () => void };

type LabelProps = {
  readonly label: string;
  readonly kind?: 'op' | 'word';
  readonly children?: ComponentChildren;
};

/** A key that means nothing just now is out of play, and looks it. */
const Key = ({ label, kind, out, onTap, children }: KeyProps & LabelProps) => (
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

/** A mouse on a key leaves the focus where it was, so that Enter still means done. */
const keepFocus = (event: MouseEvent): void => event.preventDefault();
