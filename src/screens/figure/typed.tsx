import { evaluate } from '../../length/evaluate';
import { tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { isMetric, type Tape } from '../../length/tape';
import { Answer } from './answer';
import { callIt, type FigureState, fromLength, lineValue, takeTyped } from './figure.model';
import { parseText, reckonText } from './figure.words';
import { Working } from './working';

type TypedProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly set: (state: FigureState) => void;
  readonly newId: () => string;
};

const chips = ["'", '"', '/', ' mm', '(', ')', ' × ', ' ÷ '];

/** A sum typed as one would write it; how it was read is shown before it counts. */
export function Typed({ state, tape, set, newId }: TypedProps) {
  const unit = isMetric(tape) ? 'mm' : 'in';
  const expr = parseLine(state.typed, unit);
  const lookup = (id: string) => lineValue(state.lines, id);
  const call = (id: string) => callIt(state.lines, id);
  const value = expr.ok ? evaluate(expr.value, lookup) : undefined;
  const wrong = expr.ok ? undefined : parseText(expr.error, state.typed);
  return (
    <form
      class="typing"
      onSubmit={(event) => {
        event.preventDefault();
        set(takeTyped(state, unit, newId));
      }}
    >
      <label class="s muted" for="typed-sum">
        Type it as you would write it
      </label>
      <input
        id="typed-sum"
        class="typed"
        value={state.typed}
        autocomplete="off"
        enterkeyhint="done"
        aria-invalid={wrong !== undefined}
        aria-describedby="typed-wrong"
        onInput={(event) => set({ ...state, typed: event.currentTarget.value.slice(0, 400) })}
      />
      <p id="typed-wrong" class="wrongline" role="status">
        {wrong}
      </p>
      {expr.ok && (
        <>
          <p class="s muted">Read as</p>
          <div class="expr">
            <Working tokens={tokensOf(expr.value)} call={call} />
          </div>
          {value?.ok && (
            <Answer
              quantity={value.value}
              tape={tape}
              whole
              from={fromLength(state)}
              expr={expr.value}
              lookup={lookup}
            />
          )}
          {value && !value.ok && <p class="wrongline">{reckonText(value.error, call)}</p>}
        </>
      )}
      <div class="chips">
        {chips.map((chip) => (
          <button
            key={chip}
            type="button"
            data-quick
            class="chip"
            onClick={() => set({ ...state, typed: `${state.typed}${chip}` })}
          >
            {chip.trim()}
          </button>
        ))}
        <button type="submit" class="btn main" aria-disabled={!expr.ok}>
          To the roll
        </button>
      </div>
    </form>
  );
}
