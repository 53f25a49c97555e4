import { useState } from 'preact/hooks';
import type { Key } from '../../length/keypad';
import type { Length } from '../../length/length';
import { parseLine } from '../../length/parse-line';
import { markAt, type Tape, tapes } from '../../length/tape';
import { Bar, BarButton } from '../../ui/bar';
import { ChoiceDock } from '../../ui/dock';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { sheetsOf } from '../stock/sheets';
import { Answer } from './answer';
import {
  asJson,
  callIt,
  type FigureState,
  fromLength,
  lineValue,
  lookAt,
  pressKey,
  readFigure,
  undoFigure,
  useLine,
} from './figure.model';
import { reckonText, refusedText } from './figure.words';
import { NameDock } from './name-dock';
import { Pad, typedKey } from './pad';
import { Roll } from './roll';
import { type Sum, SumPage, SumsDock } from './sums';
import { Typed } from './typed';
import { Working } from './working';

type Open = 'tape' | 'sums' | 'name' | 'sheets' | 'from' | undefined;

/** The calculator. Its state is kept at each key, so it is there again after a sleep, a call or a kill. */
export function FigureScreen({ bench }: { readonly bench: Bench }) {
  const state = readFigure(bench.figure.value);
  const [roll, setRoll] = useState(false);
  const [open, setOpen] = useState<Open>();
  const [sum, setSum] = useState<Sum>();
  const [why, setWhy] = useState<string>();
  const tape = bench.settings.value.tape;
  const set = (next: FigureState) => {
    setWhy(undefined);
    bench.keepFigure(asJson(next));
  };
  const press = (key: Key) => {
    const next = pressKey(readFigure(bench.figure.value), key, tape, bench.newId);
    if (next.refused) setWhy(refusedText(next.refused));
    else set(next.state);
  };
  if (sum)
    return (
      <SumPage kind={sum} state={state} tape={tape} set={set} bench={bench} leave={() => setSum(undefined)} />
    );
  if (roll) {
    const use = (id: string) => {
      const next = useLine(state, id, tape, bench.newId);
      setRoll(false);
      if (next.refused) setWhy(refusedText(next.refused));
      else set(next.state);
    };
    return <Roll state={state} tape={tape} set={set} use={use} leave={() => setRoll(false)} bench={bench} />;
  }
  return (
    <div
      class="calc"
      onKeyDown={(event) => typedKey(event, press, () => set(undoFigure(state)))}
      tabIndex={-1}
    >
      <Bar leave={{ label: 'Job', word: true, onTap: () => bench.go({ at: 'job' }) }}>
        <BarButton label="Sums" boxed onTap={() => setOpen('sums')} />
        <BarButton label="Roll" boxed onTap={() => setRoll(true)} />
        <button type="button" class="icon box" aria-label={`Read to ${tape}`} onClick={() => setOpen('tape')}>
          to <span class={tape === '0.001' ? 'dec' : 'frac-inline'}>{tape}</span>
        </button>
        <BarButton
          icon={state.typing ? 'figure' : 'keys'}
          label={state.typing ? 'Keys' : 'Type'}
          boxed
          wordless
          onTap={() => set({ ...state, typing: !state.typing })}
        />
      </Bar>
      <main class="display">
        <h1 class="sr">Figure</h1>
        <RollAbove state={state} tape={tape} onUse={(id) => press({ key: 'line', id })} />
        {state.typing ? (
          <Typed state={state} tape={tape} set={set} newId={bench.newId} />
        ) : (
          <Standing
            state={state}
            tape={tape}
            why={why}
            onName={() => setOpen('name')}
            onSwap={() => press({ key: 'swap' })}
            onSheets={sheetsOf(bench.job.value).length > 0 ? () => setOpen('sheets') : undefined}
          />
        )}
      </main>
      {!state.typing && <Pad state={state} tape={tape} press={press} undo={() => set(undoFigure(state))} />}
      {open === 'tape' && (
        <ChoiceDock
          title="Read to the nearest"
          choices={tapes.map((value) => ({
            value,
            label: value === '0.001' ? '0.001 in, for cutters' : value.includes('mm') ? value : `${value} in`,
          }))}
          chosen={tape}
          onChoose={(chosen: Tape) => {
            void bench.keep({ tape: chosen });
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'sheets' && (
        <ChoiceDock
          title="Thickness of a sheet, as measured"
          choices={sheetsOf(bench.job.value).map((s) => ({ value: s.id, label: s.name, hint: s.says }))}
          chosen={undefined}
          onChoose={(id: string) => {
            const sheet = sheetsOf(bench.job.value).find((s) => s.id === id);
            if (sheet) set(withFigure(state, sheet.thickest, bench.newId, sheet.name));
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'name' && state.current !== undefined && (
        <NameDock state={state} id={state.current} set={set} onClose={() => setOpen(undefined)} />
      )}
      {open === 'sums' && (
        <SumsDock
          onChoose={(kind) => {
            setSum(kind);
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  );
}

/** A measured figure put on the keys as a named line of the roll, so that the sum says where it came from. */
function withFigure(state: FigureState, value: Length, newId: () => string, name: string): FigureState {
  const id = newId();
  const text = value.d === 1n ? `${value.n}"` : `${value.n}/${value.d}`;
  const lines = [...state.lines, { id, name, text }];
  const next = pressKey({ ...state, lines }, { key: 'line', id }, '1/32', newId);
  return next.refused ? state : next.state;
}

type RollAboveProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly onUse: (id: string) => void;
};

function RollAbove({ state, tape, onUse }: RollAboveProps) {
  const shown = [...state.lines].filter((line) => line.id !== state.current).reverse();
  return (
    <ol class="roll" aria-label="Lines above">
      {shown.slice(0, 12).map((line) => {
        const value = lineValue(state.lines, line.id);
        return (
          <li key={line.id}>
            <button
              type="button"
              onClick={() => onUse(line.id)}
              aria-label={`Use ${callIt(state.lines, line.id)}`}
            >
              <span class="nm">{callIt(state.lines, line.id)}</span>
              {value.ok && value.value.kind === 'length' && (
                <Inline value={markAt(value.value.value, tape).value} tape={tape} />
              )}
            </button>
          </li>
        );
      })}
    </ol>
  );
}

type StandingProps = {
  readonly state: FigureState;
  readonly tape: Tape;
  readonly why: string | undefined;
  readonly onName: () => void;
  readonly onSwap: () => void;
  /** Offered once a sheet has been measured. */
  readonly onSheets: (() => void) | undefined;
};

/** The sum in hand and what it comes to. */
function Standing({ state, tape, why, onName, onSwap, onSheets }: StandingProps) {
  const seen = lookAt(state);
  const lookup = (id: string) => lineValue(state.lines, id);
  const call = (id: string) => callIt(state.lines, id);
  const parsed = seen.text === undefined ? undefined : parseLine(seen.text);
  const expr = parsed?.ok ? parsed.value : undefined;
  const name = state.lines.find((l) => l.id === state.current)?.name;
  return (
    <>
      <div class="expr">
        <Working tokens={seen.tokens} call={call} />
        {seen.takenAs && (
          <button type="button" class="chip" onClick={onSwap}>
            {seen.takenAs === 'count' ? 'counts' : 'inches'}
          </button>
        )}
        {onSheets && !seen.done && !seen.takenAs && (
          <button type="button" class="chip" aria-label="t, a measured sheet" onClick={onSheets}>
            t
          </button>
        )}
        {seen.done && state.current !== undefined && (
          <button type="button" class="chipname" onClick={onName}>
            <span>{name || 'Name it'}</span>
          </button>
        )}
      </div>
      <div aria-live="polite">
        {seen.result === undefined && <div class="answer zero">0</div>}
        {seen.result?.ok && (
          <Answer
            quantity={seen.result.value}
            tape={tape}
            whole={seen.done}
            from={fromLength(state)}
            expr={expr}
            lookup={lookup}
          />
        )}
        {seen.result && !seen.result.ok && <p class="wrongline">{reckonText(seen.result.error, call)}</p>}
      </div>
      <p class="why" role="status">
        {why}
      </p>
    </>
  );
}
