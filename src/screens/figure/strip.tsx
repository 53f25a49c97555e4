import { useState } from 'preact/hooks';
import { tokensOf } from '../../length/expr';
import { parseLine } from '../../length/parse-line';
import { markAt, type Tape } from '../../length/tape';
import { writeNumber } from '../../length/write';
import { Bar, BarButton } from '../../ui/bar';
import { Button } from '../../ui/button';
import { useClose } from '../../ui/close';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Desk } from './desk';
import { addTheLot, newStrip, undoFigure } from './figure.model';
import type { FigureState } from './figure.state';
import { LineDock } from './line-dock';
import { callIt, type Line, lineValue } from './lines';
import { stripText } from './strip-text';
import * as words from './words';
import { Working } from './working';
import './figure.css';
import './sums.css';

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
      <TopBar desk={desk} leave={leave} />
      <main class="page strippage">
        <h1 class="sr">{words.strip}</h1>
        <ol>
          {state.lines.map((l) => (
            <li key={l.id}>
              <Row line={l} state={state} tape={tape} onTap={() => setChosen(l.id)} />
            </li>
          ))}
        </ol>
        <p class="pad-x muted s hint">{words.stripHint(state.lines.length)}</p>
        <p class="pad-x calc-why" role="status">
          {why}
        </p>
      </main>
      <div class="fixedbar">
        <Button label={words.newStrip} onTap={() => set(newStrip(state))} />
        <Button label={words.addTheLot} look="main" onTap={() => take(addTheLot(state))} />
      </div>
      {line && (
        <LineDock key={line.id} line={line} desk={desk} leave={leave} onClose={() => setChosen(undefined)} />
      )}
    </>
  );
}

type TopBarProps = { readonly desk: Desk; readonly leave: () => void };

function TopBar({ desk: { state, bench, set }, leave }: TopBarProps) {
  const share = () => bench.phone.share(words.strip, stripText(state.lines, bench.settings.value.tape));
  return (
    <Bar leave={{ label: words.keys, word: true, onTap: leave }}>
      <BarButton
        icon="undo"
        label={words.undo}
        disabled={state.undo.length === 0}
        onTap={() => set(undoFigure(state))}
      />
      <BarButton label={words.share} boxed onTap={() => void share()} />
    </Bar>
  );
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
        {state.from === `#${line.id}` && <span class="s back">{words.measuredBack}</span>}
        {tokens.length > 1 && <Working tokens={tokens} call={call} small />}
        {!value.ok && <span class="rem">{words.reckonText(value.error, call)}</span>}
      </span>
      {mark && <Mixed value={mark.value} rest={mark.rest} tape={tape} />}
      {value.ok && value.value.kind !== 'length' && <span class="dec">{writeNumber(value.value.value)}</span>}
      {mark && <Remainder tape={tape} rest={mark.rest} by={false} />}
    </button>
  );
}
