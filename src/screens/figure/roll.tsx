import { useState } from 'preact/hooks';
import { evaluate } from '../../length/evaluate';
import { tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { markAt, type Tape } from '../../length/tape';
import { remainder, writeLength } from '../../length/write';
import { Bar, BarButton } from '../../ui/bar';
import { Dock } from '../../ui/dock';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import {
  addTheLot,
  builtOn,
  callIt,
  changeLine,
  dropLine,
  type FigureState,
  type Line,
  lineValue,
  newStrip,
  undoFigure,
} from './figure.model';
import { reckonText } from './figure.words';
import { NameDock } from './name-dock';
import { Working } from './working';

type RollProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly set: (state: FigureState) => void;
  readonly use: (id: string) => void;
  readonly leave: () => void;
  readonly bench: Bench;
};

/** The strip of lines: each with its name, its working and its reading. */
export function Roll({ state, tape, set, use, leave, bench }: RollProps) {
  const [chosen, setChosen] = useState<string>();
  const [naming, setNaming] = useState(false);
  const line = state.lines.find((l) => l.id === chosen);
  return (
    <>
      <Bar leave={{ label: 'Keys', word: true, onTap: leave }}>
        <BarButton
          icon="undo"
          label="Undo"
          disabled={state.undo.length === 0}
          onTap={() => set(undoFigure(state))}
        />
        <BarButton label="Share" boxed onTap={() => void bench.share('Roll', asText(state, tape))} />
      </Bar>
      <main class="page rollpage">
        <ol>
          {state.lines.map((l) => (
            <li key={l.id}>
              <Row line={l} state={state} tape={tape} onTap={() => setChosen(l.id)} />
            </li>
          ))}
        </ol>
        <p class="pad-x muted s hint">
          {state.lines.length === 0
            ? 'Each sum you finish with = stands here.'
            : 'Tap a line to use it in the next one. Change a line and every line built on it follows.'}
        </p>
      </main>
      <div class="fixedbar">
        <button type="button" class="btn" onClick={() => set(newStrip(state))}>
          New strip
        </button>
        <button type="button" class="btn main" onClick={() => set(addTheLot(state, bench.newId))}>
          Add the lot
        </button>
      </div>
      {line && !naming && (
        <Dock title={callIt(state.lines, line.id)} onClose={() => setChosen(undefined)}>
          <div class="body acts">
            <button type="button" class="btn main" onClick={() => use(line.id)}>
              Use it in the sum
            </button>
            <button
              type="button"
              class="btn"
              onClick={() => {
                set(changeLine(state, line.id));
                leave();
              }}
            >
              Change it{followers(state, line)}
            </button>
            <button type="button" class="btn" onClick={() => setNaming(true)}>
              Name it
            </button>
            <button
              type="button"
              class="btn"
              onClick={() => {
                set(dropLine(state, line.id));
                setChosen(undefined);
              }}
            >
              Strike it out
            </button>
          </div>
        </Dock>
      )}
      {line && naming && <NameDock state={state} id={line.id} set={set} onClose={() => setNaming(false)} />}
    </>
  );
}

function followers(state: FigureState, line: Line): string {
  const n = builtOn(state.lines, line.id).length;
  return n === 0 ? '' : n === 1 ? ': one line follows' : `: ${n} lines follow`;
}

type RowProps = {
  readonly line: Line;
  readonly state: FigureState;
  readonly tape: Tape;
  readonly onTap: () => void;
};

function Row({ line, state, tape, onTap }: RowProps) {
  const call = (id: string) => callIt(state.lines, id);
  const value = lineValue(state.lines, line.id);
  const expr = parseLine(line.text);
  const tokens = expr.ok ? tokensOf(expr.value) : [];
  const mark = value.ok && value.value.kind === 'length' ? markAt(value.value.value, tape) : undefined;
  return (
    <button type="button" class="rl" onClick={onTap}>
      <span>
        <b>{call(line.id)}</b>
        {tokens.length > 1 && <Working tokens={tokens} call={call} small />}
        {!value.ok && <span class="rem">{reckonText(value.error, call)}</span>}
      </span>
      {mark && <Mixed value={mark.value} rest={mark.rest} tape={tape} />}
      {value.ok && value.value.kind !== 'length' && (
        <span class="dec">{value.value.value.toFraction(true)}</span>
      )}
      {mark && <Remainder tape={tape} rest={mark.rest} by={false} />}
    </button>
  );
}

/** The strip as plain lines, to send or print. */
export function asText(state: FigureState, tape: Tape): string {
  return state.lines
    .map((line) => {
      const expr = parseLine(line.text);
      const value = expr.ok ? evaluate(expr.value, (id) => lineValue(state.lines, id)) : undefined;
      const name = callIt(state.lines, line.id);
      const working = line.text.replace(/#([\w-]+)/g, (_, id: string) => callIt(state.lines, id));
      if (!value?.ok) return `${name}: ${working}`;
      if (value.value.kind !== 'length') return `${name}: ${working} = ${value.value.value.toFraction(true)}`;
      const mark = markAt(value.value.value, tape);
      const left = remainder(mark.rest, tape);
      return `${name}: ${working} = ${writeLength(mark.value, tape)}${left ? ` ${left.word} ${left.by}`.trimEnd() : ''}`;
    })
    .join('\n');
}
