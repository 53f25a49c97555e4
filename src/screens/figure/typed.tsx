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
import { noteText, parseText, reckonText } from './figure.words';
import { callIt, lineValue } from './lines';
import { Working } from './working';

type TypedProps = { readonly desk: Desk; readonly why: string | undefined };

const chips = ["'", '"', '/', ' mm', '(', ')', ' × ', ' ÷ '];

/** A sum typed as one would write it; how it was read is shown before it counts. */
export function Typed({ desk, why }: TypedProps) {
  const { state, bench, set, take } = desk;
  const field = useRef<HTMLInputElement>(null);
  const unit = unitsOf(bench.settings.value.tape);
  const expr = parseLine(state.typed, unit);
  const wrong = expr.ok ? why : parseText(expr.error, state.typed);
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
  const put = (typed: string) => set({ ...state, typed: typed.slice(0, 400) });
  return (
    <form
      class="typing"
      onSubmit={(event) => {
        event.preventDefault();
        take(takeTyped(state, unit));
      }}
    >
      <label class="s muted" for="typed-sum">
        Type it as you would write it
      </label>
      <input
        ref={field}
        id="typed-sum"
        class="typed"
        value={state.typed}
        autocomplete="off"
        enterkeyhint="done"
        aria-invalid={wrong !== undefined}
        aria-describedby="typed-wrong"
        onInput={(event) => put(event.currentTarget.value)}
      />
      <p id="typed-wrong" class="wrongline" role="status">
        {wrong}
      </p>
      {expr.ok && <ReadAs desk={desk} expr={expr.value} />}
      <div class="chips" onMouseDown={(event) => event.preventDefault()}>
        {chips.map((chip) => (
          <button
            key={chip}
            type="button"
            data-quick
            class="chip"
            onClick={() => put(typedInto(field.current, state.typed, chip))}
          >
            {chip.trim()}
          </button>
        ))}
        <button type="submit" class="btn main" aria-disabled={!expr.ok}>
          To the strip
        </button>
      </div>
    </form>
  );
}

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
      <p class="s muted">Read as</p>
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
        <p class="wrongline">{reckonText(value.error, call)}</p>
      )}
    </>
  );
}

/** What is worth a second look in the figures as they were read. */
function notesOn(expr: Expr): readonly string[] {
  return tokensOf(expr).flatMap((token) => {
    const read = token.is === 'length' ? readLength(token.text) : undefined;
    return read?.ok ? read.value.notes.map((note) => noteText(note, read.value.echo)) : [];
  });
}
