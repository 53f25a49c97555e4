import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import { evaluate } from '../../length/evaluate';
import { type Expr, tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { readLength } from '../../length/read';
import { unitsOf } from '../../length/tape';
import { useInHand } from '../../ui/in-hand';
import { Answer } from './answer';
import type { Desk } from './desk';
import { fromLength, takeTyped } from './figure.model';
import { callIt, lineValue } from './lines';
import * as words from './words';
import { Working } from './working';
import './sums.css';

type TypedProps = { readonly desk: Desk; readonly why: string | undefined };

const signs = ["'", '"', '/', ' mm', '(', ')', ' × ', ' ÷ '];

/** A sum typed as one would write it; how it was read is shown before it counts. */
export function Typed({ desk, why }: TypedProps) {
  const { state, bench, set, take } = desk;
  const field = useRef<HTMLInputElement>(null);
  const unit = unitsOf(bench.settings.value.tape);
  const expr = parseLine(state.typed, unit);
  const wrong = expr.ok ? why : words.parseText(expr.error, state.typed);
  const put = (typed: string) => set({ ...state, typed: typed.slice(0, 400) });
  useInHand({
    field: () => field.current,
    begin: () => {
      const at = caretIn(field.current, state.typed);
      return ({ text, unit: sent = unit }) => {
        put(`${state.typed.slice(0, at)}${text}${sent === 'mm' ? ' mm' : '"'}${state.typed.slice(at)}`);
        return 'shown';
      };
    },
  });
  return (
    <form
      class="typing"
      onSubmit={(event) => {
        event.preventDefault();
        take(takeTyped(state, unit));
      }}
    >
      <Field field={field} typed={state.typed} wrong={wrong} put={put} />
      {expr.ok && <ReadAs desk={desk} expr={expr.value} />}
      <Chips reads={expr.ok} onSign={(sign) => put(typedInto(field.current, state.typed, sign))} />
    </form>
  );
}

type FieldProps = {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly typed: string;
  readonly wrong: string | undefined;
  readonly put: (typed: string) => void;
};

const Field = ({ field, typed, wrong, put }: FieldProps) => (
  <>
    <label class="s muted" for="typed-sum">
      {words.typeIt}
    </label>
    <input
      ref={field}
      id="typed-sum"
      class="typed"
      value={typed}
      autocomplete="off"
      enterkeyhint="done"
      aria-invalid={wrong !== undefined}
      aria-describedby="typed-wrong"
      onInput={(event) => put(event.currentTarget.value)}
    />
    <p id="typed-wrong" class="wrongline" role="status">
      {wrong}
    </p>
  </>
);

type ChipsProps = { readonly reads: boolean; readonly onSign: (sign: string) => void };

/** Signs a phone's keyboard hides, and the way to the strip. */
const Chips = ({ reads, onSign }: ChipsProps) => (
  <div class="chips" onMouseDown={(event) => event.preventDefault()}>
    {signs.map((sign) => (
      <button key={sign} type="button" data-quick class="chip" onClick={() => onSign(sign)}>
        {sign.trim()}
      </button>
    ))}
    <button type="submit" class="btn main" aria-disabled={!reads}>
      {words.toStrip}
    </button>
  </div>
);

const caretIn = (field: HTMLInputElement | null, typed: string): number =>
  field && document.activeElement === field ? (field.selectionStart ?? typed.length) : typed.length;

/** A sign put in where the typing stands, which stays there; at the end when nobody is typing. */
function typedInto(field: HTMLInputElement | null, typed: string, sign: string): string {
  if (!field || document.activeElement !== field) return `${typed}${sign}`;
  field.setRangeText(sign, field.selectionStart ?? typed.length, field.selectionEnd ?? typed.length, 'end');
  return field.value;
}

function ReadAs({ desk: { state, bench }, expr }: { readonly desk: Desk; readonly expr: Expr }) {
  const lookup = (id: string) => lineValue(state.lines, id);
  const call = (id: string) => callIt(state.lines, id);
  const value = evaluate(expr, lookup);
  const notes = notesOn(expr);
  return (
    <>
      <p class="s muted">{words.readAs}</p>
      <div class="expr">
        <Working tokens={tokensOf(expr)} call={call} />
      </div>
      {notes.map((note) => (
        <p key={note} class="note">
          {note}
        </p>
      ))}
      {value.ok ? (
        <Answer
          quantity={value.value}
          tape={bench.settings.value.tape}
          whole
          from={fromLength(state)}
          expr={expr}
          lookup={lookup}
        />
      ) : (
        <p class="wrongline">{words.reckonText(value.error, call)}</p>
      )}
    </>
  );
}

/** What is worth a second look in the figures as they were read. */
function notesOn(expr: Expr): readonly string[] {
  return tokensOf(expr).flatMap((token) => {
    const read = token.is === 'length' ? readLength(token.text) : undefined;
    return read?.ok ? read.value.notes.map((note) => words.noteText(note, read.value.echo)) : [];
  });
}
