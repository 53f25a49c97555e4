import { useEffect, useState } from 'preact/hooks';
import { unitsOf } from '../../length/tape';
import { sheetsOf } from '../../plan/measured-sheets';
import { Bar, BarButton } from '../../ui/bar';
import { type Came, useInHand } from '../../ui/in-hand';
import type { Bench } from '../bench';
import type { Desk } from './desk';
import { Docks, type Open } from './docks';
import { figureChanges, readFigure } from './figure.kept';
import { type Pressed, pressKey, takeReading, undoFigure } from './figure.model';
import type { FigureState } from './figure.state';
import { Pad, typedKey } from './pad';
import { Strip } from './strip';
import { StripAbove, SumInHand } from './sum-in-hand';
import { type Sum, SumPage } from './sums';
import { Typed } from './typed';
import * as words from './words';

/** Sets the lines this page makes apart from those of other pages. */
const pageTag = Array.from(
  crypto.getRandomValues(new Uint8Array(4)),
  (byte) => 'abcdefghijklmnop'[byte % 16],
).join('');

/** Lines this page has made: what undo or a refused write goes back to makes none of their ids again. */
let madeHere = 0;

/** Figure as it stands; what is made next is this page's own. */
function stateNow(bench: Bench): FigureState {
  const kept = readFigure(bench.figure.value);
  return { ...kept, tag: pageTag, made: Math.max(kept.made, madeHere) };
}

/** The calculator. Its state is kept at each key, so it is there again after a sleep, a call or a kill. */
export function FigureScreen({ bench }: { readonly bench: Bench }) {
  const [page, setPage] = useState<'keys' | 'strip' | Sum>('keys');
  const [why, setWhy] = useState<string>();
  const state = stateNow(bench);
  const set = (next: FigureState) => {
    setWhy(undefined);
    madeHere = Math.max(madeHere, next.made);
    bench.keepFigure(figureChanges(bench.figure.value, next, state.lines));
  };
  const take = ({ state: next, refused }: Pressed) =>
    refused ? setWhy(words.refusedText(refused)) : set(next);
  const desk = { state, bench, set, take };
  const leave = () => setPage('keys');
  if (page === 'keys') return <Keys desk={desk} why={why} onPage={setPage} />;
  if (page === 'strip') return <Strip desk={desk} why={why} leave={leave} />;
  return <SumPage kind={page} desk={desk} leave={leave} />;
}

type KeysProps = {
  readonly desk: Desk;
  readonly why: string | undefined;
  readonly onPage: (page: 'strip' | Sum) => void;
};

function Keys({ desk, why, onPage }: KeysProps) {
  const { state, bench, set, take } = desk;
  const [open, setOpen] = useState<Open>();
  const { tape } = bench.settings.value;
  const press = (key: Parameters<typeof pressKey>[1]) => take(pressKey(stateNow(bench), key, tape));
  const undo = () => set(undoFigure(stateNow(bench)));
  const use = (id: string) =>
    state.typing ? set({ ...state, typed: `${state.typed} #${id} ` }) : press({ key: 'line', id });
  useEffect(() => {
    if (state.typing) return undefined;
    const hear = (event: KeyboardEvent) => typedKey(event, press, undo);
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, [state.typing, tape]);
  return (
    <div class="calc">
      <TopBar desk={desk} onOpen={setOpen} onStrip={() => onPage('strip')} />
      <main class="display">
        <h1 class="sr">{words.title}</h1>
        <StripAbove state={state} tape={tape} onUse={use} />
        {state.typing ? (
          <Typed desk={desk} why={why} />
        ) : (
          <SumInHand
            state={state}
            tape={tape}
            why={why}
            onName={() => setOpen('name')}
            onSwap={() => press({ key: 'swap' })}
            onSheets={sheetsOf(bench.job.value).length > 0 ? () => setOpen('sheets') : undefined}
          />
        )}
      </main>
      {!state.typing && <Pad state={state} tape={tape} press={press} undo={undo} />}
      {!state.typing && <Calipered desk={desk} />}
      <Docks desk={desk} open={open} onSum={onPage} onClose={() => setOpen(undefined)} />
    </div>
  );
}

/** Calipers put their reading where a figure is keyed. It is one figure of a sum, so nothing is reckoned yet. */
function Calipered({ desk: { bench, set, take } }: { readonly desk: Desk }) {
  const { tape } = bench.settings.value;
  useInHand({
    begin: () => {
      const before = stateNow(bench);
      return ({ text, unit }): Came => {
        const sound = unit ?? unitsOf(tape);
        const came = text.startsWith('-') ? undefined : takeReading(before, { text, unit: sound }, tape);
        if (!came || came.refused) set(before);
        if (came?.refused) take(came);
        else if (came) set(came.state);
        return came ? (came.refused ? 'no-length-wanted' : 'shown') : 'not-above-zero';
      };
    },
  });
  return null;
}

type TopBarProps = {
  readonly desk: Desk;
  readonly onOpen: (open: Open) => void;
  readonly onStrip: () => void;
};

function TopBar({ desk: { state, bench, set }, onOpen, onStrip }: TopBarProps) {
  const { tape } = bench.settings.value;
  return (
    <Bar leave={{ label: words.back, word: true, onTap: () => bench.go({ at: 'job' }) }}>
      <BarButton label={words.sums} boxed onTap={() => onOpen('sums')} />
      <BarButton label={words.strip} boxed onTap={onStrip} />
      <button
        type="button"
        class="icon box"
        aria-label={words.tapeButton(tape)}
        onClick={() => onOpen('tape')}
      >
        {words.toTape(<span class={tape === '0.001' ? 'dec' : 'frac-inline'}>{tape}</span>)}
      </button>
      <BarButton
        icon={state.typing ? 'figure' : 'keys'}
        label={state.typing ? words.keys : words.type}
        boxed
        wordless
        onTap={() => set({ ...state, typing: !state.typing })}
      />
    </Bar>
  );
}
