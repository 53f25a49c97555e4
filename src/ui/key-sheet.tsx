import { useState } from 'preact/hooks';
import {
  emptySlotOn,
  isEmpty,
  pressSlot,
  type Slot,
  type SlotKey,
  slotText,
  slotValue,
} from '../length/keypad-slot';
import type { Length } from '../length/length';
import { readLength } from '../length/read';
import { isMetric, type Tape } from '../length/tape';
import { Dock } from './dock';
import { EdgeRule } from './edge-rule';
import { Icon } from './icon';
import { Inline } from './mixed';

type KeySheetProps = {
  readonly title: string;
  readonly tape: Tape;
  /** `length` with the edge rule; `count` with digits alone. */
  readonly fill: 'length' | 'count';
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

/** Keys docked below to fill one blank. A caliper that types its reading is heard too. */
export function KeySheet(props: KeySheetProps) {
  const [slot, setSlot] = useState<Slot>(emptySlotOn(props.fill === 'length' ? props.tape : '1/32'));
  const [touched, setTouched] = useState(false);
  const lengths = props.fill === 'length';
  const press = (key: SlotKey) => {
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
  return (
    <Dock title={props.title} onClose={done}>
      <div class="key-sheet" onKeyDown={(event) => typed(event, press, done)}>
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
        {lengths &&
          props.sheets?.map(({ name, thickness }) => (
            <button key={name} type="button" class="chip" onClick={() => take(thickness)}>
              {name} <Inline value={thickness} tape="0.001" />
            </button>
          ))}
        <div class={lengths ? 'mini-pad' : 'mini-pad count'}>
          <div class="keys">
            {digits.map((d) => (
              <DigitKey key={d} digit={d} press={press} />
            ))}
            {lengths ? <Key label="." press={() => press({ key: 'point' })} /> : <span class="key out" />}
            <DigitKey digit={0} press={press} />
            <button
              type="button"
              data-quick
              class="key op"
              aria-label="erase"
              onClick={() => press({ key: 'erase' })}
            >
              <Icon name="erase" />
            </button>
            {lengths && (
              <>
                <Key
                  label={slot.unit === 'mm' && slot.home === 'mm' ? 'inch' : 'mm'}
                  word
                  press={() => press({ key: 'mm' })}
                />
                <Key label="scant" word press={() => press({ key: 'scant' })} />
                <Key label="strong" word press={() => press({ key: 'strong' })} />
                <Key label="feet" word press={() => press({ key: 'feet' })} />
              </>
            )}
            <button type="button" class={lengths ? 'key eq wide2' : 'key eq wide3'} onClick={done}>
              Done
            </button>
          </div>
          {lengths && (
            <EdgeRule
              tape={props.tape}
              chosen={chosenOf(slot)}
              onFraction={(sixteenths) => press({ key: 'fraction', sixteenths })}
            />
          )}
        </div>
        <Wedge metric={isMetric(props.tape)} onReading={lengths ? take : undefined} />
      </div>
    </Dock>
  );
}

const figureOf = (slot: Slot, lengths: boolean): Length | number | undefined =>
  isEmpty(slot) ? undefined : lengths ? slotValue(slot) : Number(slot.digits);

const chosenOf = (slot: Slot): number | undefined =>
  slot.sixtyFourths !== undefined && slot.sixtyFourths % 4 === 0 ? slot.sixtyFourths / 4 : undefined;

function Now({ now, nowCount }: KeySheetProps) {
  if (now) return <Inline value={now} tape="1/64" />;
  return <span class="muted">{nowCount ?? 'empty'}</span>;
}

type Press = (key: SlotKey) => void;

const DigitKey = ({ digit, press }: { readonly digit: number; readonly press: Press }) => (
  <button type="button" data-quick class="key" onClick={() => press({ key: 'digit', digit })}>
    {digit}
  </button>
);

const Key = ({
  label,
  word,
  press,
}: {
  readonly label: string;
  readonly word?: boolean;
  readonly press: () => void;
}) => (
  <button type="button" data-quick class={word ? 'key word' : 'key'} onClick={press}>
    {label}
  </button>
);

/** Keys of a desk keyboard. */
function typed(event: KeyboardEvent, press: Press, done: () => void): void {
  if (event.target instanceof HTMLInputElement) return;
  if (/^\d$/.test(event.key)) press({ key: 'digit', digit: Number(event.key) });
  else if (event.key === '.' || event.key === ',') press({ key: 'point' });
  else if (event.key === 'Backspace') press({ key: 'erase' });
  else if (event.key === '[') press({ key: 'scant' });
  else if (event.key === ']') press({ key: 'strong' });
  else if (event.key === 'Enter' && !(event.target instanceof HTMLButtonElement)) done();
  else return;
  event.preventDefault();
}

type WedgeProps = { readonly metric: boolean; readonly onReading: ((value: Length) => void) | undefined };

/** Typed entry: `18-7/64`, `146 mm`, and calipers that send their reading with Enter. */
function Wedge({ metric, onReading }: WedgeProps) {
  const [text, setText] = useState('');
  if (!onReading) return null;
  const read = readLength(text, { unit: metric ? 'mm' : 'in' });
  const wrong = text.trim() !== '' && !read.ok;
  return (
    <form
      class="wedge"
      onSubmit={(event) => {
        event.preventDefault();
        if (read.ok) onReading(read.value.value);
      }}
    >
      <label>
        <span class="s muted">or typed</span>
        <input
          value={text}
          inputMode="text"
          autocomplete="off"
          aria-invalid={wrong}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      {read.ok && (
        <button type="submit" class="chip">
          Use {read.value.echo}
        </button>
      )}
      {wrong && <span class="s rem">not a length yet</span>}
    </form>
  );
}
