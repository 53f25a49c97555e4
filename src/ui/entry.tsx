import type { Ref } from 'preact';
import type { Doubt } from '../length/bands';
import type { Length } from '../length/length';
import { readLength } from '../length/read';
import { unitsOf } from '../length/tape';
import type { Units } from '../length/units';
import { writeShown } from '../length/write';
import { writeBare } from './given';
import { givenBy, type Keyed, shownIn, unitBeside } from './keyed';
import * as words from './pad-words';
import { unitInHand } from './unit-in-hand';
import type { KeyedProps, useKeyed } from './use-keyed';
import './entry.css';

export type EntryProps = KeyedProps & {
  /** What a count is of, or what an amount is in: said beside it. */
  readonly unit?: string | undefined;
};

type FieldProps = {
  readonly props: EntryProps;
  readonly keyed: Keyed;
  readonly field: Ref<HTMLInputElement>;
  readonly onText: (text: string) => void;
  readonly onEnter: () => void;
};

/** The one place of entry: keys, keyboard and calipers all write here. Until then it shows what the blank holds. */
export function Field({ props, keyed, field, onText, onEnter }: FieldProps) {
  const { title, fill, now, nowCount, unit } = props;
  const text = shownIn(keyed);
  const held = keyed.touched ? undefined : heldText(fill, now, nowCount);
  const beside = text || !/[a-z]/.test(held ?? '') ? unitBeside(keyed, props) : undefined;
  const word = beside ? words.unitWords[beside] : fill === 'count' ? (unit ?? words.pieces) : unit;
  return (
    <form
      class="entry"
      onSubmit={(event) => {
        event.preventDefault();
        onEnter();
      }}
    >
      {fill === 'count' ? (
        <output class={text ? 'tx' : 'tx held'}>{text || held || words.empty}</output>
      ) : (
        <input
          ref={field}
          class="tx"
          aria-label={words.fieldSays(title, beside)}
          value={text}
          placeholder={held ?? words.empty}
          inputMode="text"
          autocomplete="off"
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
      {word && <span class="un">{word}</span>}
    </form>
  );
}

function heldText(fill: EntryProps['fill'], now?: Length, count?: number): string | undefined {
  if (fill === 'count') return count?.toString();
  if (fill === 'amount') return now && writeBare(now);
  // its own unit stands beside it; another one stays with the figure
  return now && writeShown(now, unitInHand()).replace(unitInHand() === 'mm' ? / mm$/ : '', '');
}

type OddProps = Pick<ReturnType<typeof useKeyed>, 'keyed' | 'doubt' | 'refused' | 'take'> & {
  readonly props: EntryProps;
};

/** Why what stands there is not taken, and what was perhaps meant: one tap takes that. */
export function Odd({ props, keyed, doubt, refused, take }: OddProps) {
  const given = givenBy(keyed, props);
  if (refused) return <Refused says={refused} />;
  if (given.is === 'unread') return <Unread text={shownIn(keyed).trim()} props={props} />;
  if (!doubt || given.is !== 'length' || !given.figure) return null;
  const { value, unit } = given.figure;
  const [odd, limit] = words.doubtText(doubt, value, { units: unit, kind: props.kind });
  return (
    <div class="odd" role="alert">
      <p>
        <b>{odd}</b> {limit}
      </p>
      {meantBy(doubt, unit).map(([meant, label]) => (
        <button key={label} type="button" class="btn" onClick={() => take(meant)}>
          {label}
        </button>
      ))}
    </div>
  );
}

const Refused = ({ says }: { readonly says: string }) => (
  <div class="odd" role="alert">
    <p>{says}</p>
  </div>
);

const Unread = ({ text, props }: { readonly text: string; readonly props: EntryProps }) => (
  <div class="odd">
    <p>{unreadSays(text, props)}</p>
  </div>
);

function unreadSays(text: string, { fill, tape, kind }: EntryProps): string {
  const read = readLength(text, { unit: fill === 'length' ? unitsOf(tape) : 'in' });
  if (!read.ok) return words.unread(read.error);
  return fill === 'length'
    ? words.underNothing(read.value, kind)
    : words.amountUnderNothing(read.value.value);
}

function meantBy(doubt: Doubt, unit: Units): readonly (readonly [Length, string])[] {
  if (doubt.code === 'comma') return doubt.ways.map((x) => [x, words.itIs(x, unit)] as const);
  return doubt.code === 'other-unit' ? [[doubt.meant, words.meantText(doubt.meant, unit)]] : [];
}
