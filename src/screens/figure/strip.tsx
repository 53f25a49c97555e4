import { useState } from 'preact/hooks';
import { evaluate } from '../../length/evaluate';
import { type Token, tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { markAt, type Tape } from '../../length/tape';
import { remainder, writeLength } from '../../length/write';
import { Bar, BarButton } from '../../ui/bar';
import { useClose } from '../../ui/close';
import { Dock } from '../../ui/dock';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Desk } from './desk';
import {
  addTheLot,
  changeLine,
  dropLine,
  type FigureState,
  measureBack,
  newStrip,
  pressKey,
  undoFigure,
} from './figure.model';
import { reckonText } from './figure.words';
import { builtOn, callIt, type Line, lineValue } from './lines';
import { NameDock } from './name-dock';
import { Working } from './working';

type StripProps = {
  readonly desk: Desk;
  readonly why: string | undefined;
  readonly leave: () => void;
};

/** The strip, Figure’s paper strip of lines: each with its name, its working and its reading. */
export function Strip({ desk, why, leave }: StripProps) {
  const { state, bench, set, take } = desk;
  const { tape } = bench.settings.value;
  const [chosen, setChosen] = useState<string>();
  const line = state.lines.find((l) => l.id === chosen);
  useClose(leave);
  return (
    <>
      <Bar leave={{ label: 'Keys', word: true, onTap: leave }}>
        <BarButton
          icon="undo"
          label="Undo"
          disabled={state.undo.length === 0}
          onTap={() => set(undoFigure(state))}
        />
        <BarButton label="Share" boxed onTap={() => void bench.phone.share('Strip', asText(state, tape))} />
      </Bar>
      <main class="page strippage">
        <h1 class="sr">Strip</h1>
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
        <p class="pad-x why" role="status">
          {why}
        </p>
      </main>
      <div class="fixedbar">
        <button type="button" class="btn" onClick={() => set(newStrip(state))}>
          New strip
        </button>
        <button type="button" class="btn main" onClick={() => take(addTheLot(state))}>
          Add the lot
        </button>
      </div>
      {line && (
        <LineDock key={line.id} line={line} desk={desk} leave={leave} onClose={() => setChosen(undefined)} />
      )}
    </>
  );
}

type LineDockProps = {
  readonly line: Line;
  readonly desk: Desk;
  readonly leave: () => void;
  readonly onClose: () => void;
};

/** What can be done with a line. */
function LineDock({ line, desk, leave, onClose }: LineDockProps) {
  const { state, bench, set, take } = desk;
  const [naming, setNaming] = useState(false);
  const back = `#${line.id}`;
  const worth = lineValue(state.lines, line.id);
  const act = (label: string, onTap: () => void, kind = 'btn') => (
    <button type="button" class={kind} onClick={onTap}>
      {label}
    </button>
  );
  const then = (next: () => void, after: () => void) => () => {
    next();
    after();
  };
  if (naming) return <NameDock state={state} id={line.id} set={set} onClose={() => setNaming(false)} />;
  return (
    <Dock title={callIt(state.lines, line.id)} onClose={onClose}>
      <div class="body acts">
        {act(
          'Use it in the sum',
          then(() => take(pressKey(state, { key: 'line', id: line.id }, bench.settings.value.tape)), leave),
          'btn main',
        )}
        {worth.ok &&
          worth.value.kind === 'length' &&
          act(
            state.from === back ? 'Stop measuring back from it' : 'Measure answers back from it too',
            then(() => set(measureBack(state, state.from === back ? '' : back)), onClose),
          )}
        {act(
          `Change it${followers(state, line)}`,
          then(() => set(changeLine(state, line.id)), leave),
        )}
        {act('Name it', () => setNaming(true))}
        {act(
          'Strike it out',
          then(() => set(dropLine(state, line.id)), onClose),
        )}
      </div>
    </Dock>
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
        {state.from === `#${line.id}` && <span class="s back">answers are measured back from it</span>}
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
      const working = expr.ok ? inWords(tokensOf(expr.value), state) : line.text;
      if (!value?.ok) return `${name}: ${working}`;
      if (value.value.kind !== 'length') return `${name}: ${working} = ${value.value.value.toFraction(true)}`;
      const mark = markAt(value.value.value, tape);
      const left = remainder(mark.rest, tape);
      return `${name}: ${working} = ${writeLength(mark.value, tape)}${left ? ` ${left.word} ${left.by}`.trimEnd() : ''}`;
    })
    .join('\n');
}

/** A sum in one line, as the screen shows it: lines by name, counts bare. */
const inWords = (tokens: readonly Token[], state: FigureState): string =>
  tokens
    .map((token) => (token.is === 'line' ? callIt(state.lines, token.id) : token.text))
    .join(' ')
    .replace(/\( /g, '(')
    .replace(/ \)/g, ')');
