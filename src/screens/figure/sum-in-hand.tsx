import { parseLine } from '../../length/parse-line';
import { fromOtherEnd, markAt, type Tape } from '../../length/tape';
import { spoken, writeNumber } from '../../length/write';
import { Inline } from '../../ui/mixed';
import { Answer } from './answer';
import { fromLength, lookAt } from './figure.model';
import type { FigureState } from './figure.state';
import { callIt, lineValue } from './lines';
import { unitOnPad } from './unit-on-pad';
import * as words from './words';
import { Working } from './working';
import './figure.css';
import './sums.css';

type StripAboveProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly onUse: (id: string) => void;
};

/** The last lines of the strip, as many as there is room for; one tap uses one. */
export function StripAbove({ state, tape, onUse }: StripAboveProps) {
  const shown = state.lines.filter((line) => line.id !== state.current).reverse();
  return (
    <ol class="strip" aria-label={words.linesAbove}>
      {shown.slice(0, 12).map(({ id }) => {
        const worth = lineValue(state.lines, id);
        const name = callIt(state.lines, id);
        return (
          <li key={id}>
            <button type="button" onClick={() => onUse(id)} aria-label={words.use(name)}>
              <span class="nm">{name}</span>
              {worth.ok && worth.value.kind === 'length' && (
                <Inline value={markAt(worth.value.value, tape).value} tape={tape} />
              )}
            </button>
          </li>
        );
      })}
    </ol>
  );
}

type SumInHandProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly why: string | undefined;
  readonly onName: () => void;
  readonly onSwap: () => void;
  /** Offered once a sheet has been measured. */
  readonly onSheets: (() => void) | undefined;
};

/** The sum in hand and what it comes to. */
export function SumInHand(props: SumInHandProps) {
  const { state, tape, why } = props;
  const seen = lookAt(state);
  const call = (id: string) => callIt(state.lines, id);
  const changing = !seen.done && state.lines.some((line) => line.id === state.current);
  const parsed = seen.text === undefined ? undefined : parseLine(seen.text);
  return (
    <>
      <div class={seen.tokens.length > 7 ? 'expr long' : 'expr'}>
        <Working tokens={seen.tokens} call={call} unit={unitOnPad(seen, tape)} />
        <Chip {...props} />
      </div>
      {seen.result === undefined && <div class="answer zero">0</div>}
      {seen.result?.ok && (
        <Answer
          quantity={seen.result.value}
          tape={tape}
          whole={seen.done}
          from={fromLength(state)}
          expr={parsed?.ok ? parsed.value : undefined}
          lookup={(id) => lineValue(state.lines, id)}
        />
      )}
      {seen.result && !seen.result.ok && <p class="wrongline">{words.reckonText(seen.result.error, call)}</p>}
      <p class="sr" role="status">
        {seen.done && said(state, tape)}
      </p>
      <p class="calc-why" role="status">
        {why ?? (changing && words.changing(call(state.current)))}
      </p>
    </>
  );
}

/** The one thing to do with the figure in hand: swap its kind, take a sheet's thickness, name the line. */
function Chip({ state, onName, onSwap, onSheets }: SumInHandProps) {
  const { takenAs, done } = lookAt(state);
  if (takenAs)
    return (
      <button type="button" class="chip" onClick={onSwap}>
        {words.takenAs[takenAs]}
      </button>
    );
  if (!done)
    return onSheets ? (
      <button type="button" class="chip" aria-label={words.thicknessSaid} onClick={onSheets}>
        {words.thickness}
      </button>
    ) : null;
  const name = state.lines.find((l) => l.id === state.current)?.name;
  return state.current === '' ? null : (
    <button type="button" class="chipname" onClick={onName}>
      <span>{name || words.nameIt}</span>
    </button>
  );
}

/** The answer spoken, once: when equals is pressed, not at each key. */
function said(state: FigureState, tape: Tape): string | undefined {
  const { result } = lookAt(state);
  if (!result) return undefined;
  if (!result.ok) return words.reckonText(result.error, (id) => callIt(state.lines, id));
  if (result.value.kind !== 'length') return writeNumber(result.value.value);
  const mark = markAt(result.value.value, tape);
  const from = fromLength(state);
  const other = from && fromOtherEnd(from, mark, tape);
  const here = spoken(mark.value, mark.rest, tape);
  return other ? words.spokenBack(here, spoken(other.value, other.rest, tape)) : here;
}
