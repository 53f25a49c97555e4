import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { isEmpty, pressSlot, type Slot, type SlotKey, slotText } from '../length/keypad-slot';
import type { Length } from '../length/length';
import { unitsOf } from '../length/tape';
import { Dock } from './dock';
import { EdgeRule, FoldKey } from './edge-rule';
import { Icon } from './icon';
import { useInHand } from './in-hand';
import type { Keyed } from './keyed';
import { Inline, tapeGiven } from './mixed';
import { nextBlank } from './next-blank';
import { strokes } from './strokes';
import { cameBy, type KeyedProps, useKeyed } from './use-keyed';
import { Wedge } from './wedge';
import './key-sheet.css';

type KeySheetProps = KeyedProps & {
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
export function KeySheet(props: KeySheetProps) {
  const hands = useKeyed(props);
  const { keyed, press, type, give, take } = hands;
  const field = useRef<HTMLInputElement>(null);
  const next = useRef(nextBlank()).current;
  useInHand({ field: () => field.current, begin: () => cameBy(props, keyed, hands) });
  const leave = () => {
    give();
    props.onClose();
  };
  /** What does not read stays to be seen. */
  const done = () => {
    if (give()) props.onClose();
  };
  const goOn = () => {
    if (!give()) return;
    props.onClose();
    next?.();
  };
  const lengths = props.fill !== 'count';
  return (
    <Dock title={props.title} onClose={leave} onKey={(event) => strokes(event, press, done, field.current)}>
      <Says says={props.says ?? []} tells={props.tells} />
      <div class="key-sheet">
        <Reading keyed={keyed} now={props.now} nowCount={props.nowCount} />
        {lengths && <Sheets sheets={props.sheets ?? []} onTake={take} />}
        <Pad {...{ props, keyed, press, done }} goOn={next && goOn} />
        {lengths && (
          <Wedge
            text={keyed.typing}
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

type ReadingProps = Pick<KeySheetProps, 'now' | 'nowCount'> & { readonly keyed: Keyed };

/** What is keyed; until a key is pressed, what the blank holds. */
const Reading = (props: ReadingProps) => (
  <output class="reading">
    <Shown {...props} />
  </output>
);

function Shown({ keyed: { slot, touched }, now, nowCount }: ReadingProps) {
  if (touched && !isEmpty(slot)) return <b>{slotText(slot)}</b>;
  if (!touched && now) return <Inline value={now} tape={tapeGiven(now)} />;
  return <span class="muted">{(touched ? undefined : nowCount) ?? 'empty'}</span>;
}

type PadProps = {
  readonly props: KeySheetProps;
  readonly keyed: Keyed;
  readonly press: (key: SlotKey) => void;
  readonly done: () => void;
  /** On to the next blank, where there is one. */
  readonly goOn: (() => void) | undefined;
};

/** The keys, and beside those of a length the edge rule. */
function Pad({ props: { tape, fill, now, nowCount }, keyed, press, done, goOn }: PadProps) {
  const { slot, touched } = keyed;
  const [folded, setFolded] = useState(true);
  const lengths = fill !== 'count';
  /** What the blank held before a key was pressed: erase empties it. */
  const standing = !touched && (now ?? nowCount) !== undefined;
  const key = (k: SlotKey): KeyProps => ({
    out: !pressSlot(slot, k, tape).ok && !(k.key === 'erase' && standing),
    onTap: () => press(k),
  });
  return (
    <div class={`mini-pad${lengths ? '' : ' count'}${folded ? '' : ' rule-open'}`}>
      <div class="keys" onMouseDown={keepFocus}>
        <Digits lengths={lengths} of={key} />
        {fill === 'length' && <Words slot={slot} of={key} />}
        <EndKeys columns={lengths ? 2 : 3} done={done} goOn={goOn} />
        {lengths && <FoldKey folded={folded} onTap={() => setFolded(!folded)} />}
      </div>
      {lengths && (
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

const words = ['mm', 'scant', 'strong', 'feet'] as const;

const Words = ({ slot, of }: KeysProps & { readonly slot: Slot }) => (
  <>
    {words.map((word) => (
      <Key key={word} label={wordFor(word, slot)} kind="word" {...of({ key: word })} />
    ))}
  </>
);

const wide = ['', '', 'wide2', 'wide3'];

/** *Next*, where there is a next blank, and *Done* as wide as what is left of its row. */
const EndKeys = ({ columns, done, goOn }: Pick<PadProps, 'done' | 'goOn'> & { readonly columns: number }) => (
  <>
    {goOn && (
      <button type="button" class="key word" onClick={goOn}>
        Next
      </button>
    )}
    <button type="button" class={`key eq ${wide[columns - (goOn ? 1 : 0)]}`} onClick={done}>
      Done
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
const wordFor = (word: (typeof words)[number], slot: Slot): string =>
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
