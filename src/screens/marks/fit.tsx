import { useState } from 'preact/hooks';
import { editRun } from '../../job/edits';
import type { Length } from '../../length/length';
import type { Sheet } from '../../plan/measured-sheets';
import type { Board } from '../../trade/grooves/board';
import { type Fit, fitFrom } from '../../trade/grooves/fit';
import { Bar } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { NoBoard } from '../shared/no-board';
import { boardWord } from '../shared/part-words';
import { FitDock, type Open } from './fit-dock';
import { FitFound } from './fit-found';
import { type Given, here, useGiven } from './fit-given';
import * as words from './fit-words';

type FitProps = { readonly bench: Bench; readonly id: string; readonly groove: string };

/** Groove width from a sheet as measured: the thickest reading and a clearance. */
export function FitScreen({ bench, id, groove }: FitProps) {
  const job = bench.job.value;
  const given = useGiven(groove, job);
  const board = job?.boards.find((b) => b.id === id);
  if (!job || !board?.runs.some((r) => r.id === groove)) return <NoBoard bench={bench} />;
  return <FitInHand {...{ bench, board, groove, given }} />;
}

type InHandProps = {
  readonly bench: Pick<Bench, 'go' | 'act'>;
  readonly board: Board;
  readonly groove: string;
  readonly given: Given;
};

function FitInHand({ bench, board, groove, given }: InHandProps) {
  const [open, setOpen] = useState<Open>();
  const { readings, clearance, kind } = given;
  const fit = fitFrom(readings, clearance, kind.startsWith('glued'), unitInHand());
  const back = () => bench.go({ at: 'change', board: board.id });
  const take = ({ width }: Fit) =>
    void bench.act(words.widthFromSheet, editRun(board.id, groove, { width })).then(back);
  return (
    <>
      <Bar title={words.fitToSheet} sub={boardWord(board)} leave={{ label: words.back, onTap: back }} />
      <main class={open ? 'page docked' : 'page'}>
        <FitSlip given={given} open={open} onOpen={setOpen} />
        {fit.ok ? <FitFound fit={fit.value} /> : <p class="pad-x note">{words.errorText(fit.error)}</p>}
      </main>
      <div class="fixedbar">
        <button
          type="button"
          class="btn main"
          aria-disabled={!fit.ok}
          onClick={() => fit.ok && take(fit.value)}
        >
          {words.useWidth(fit.ok ? fit.value.width : undefined)}
        </button>
      </div>
      {open !== undefined && <FitDock given={given} open={open} onClose={() => setOpen(undefined)} />}
    </>
  );
}

type SlipProps = {
  readonly given: Given;
  readonly open: Open | undefined;
  readonly onOpen: (open: Open) => void;
};

/** What the parts are from, how they fit, and with how much clearance. */
function FitSlip({ given, open, onOpen }: SlipProps) {
  const { sheets, sheet, own, kind, clearance } = given;
  return (
    <div class="fillin">
      <words.Slip
        sheet={
          <Blank label={words.whichSheet} choice open={open === 'sheet'} onTap={() => onOpen('sheet')}>
            {nameOf(sheets, sheet)}
          </Blank>
        }
        readings={sheet === here && <Readings {...{ own, open, onOpen }} />}
        kind={
          <Blank label={words.howTheyFit} choice open={open === 'kind'} onTap={() => onOpen('kind')}>
            {words.kinds.find((k) => k.value === kind)?.label}
          </Blank>
        }
        clearance={
          <Blank length label={words.clearanceTitle} open={open === 'other'} onTap={() => onOpen('other')}>
            {closely(clearance)}
          </Blank>
        }
      />
    </div>
  );
}

const nameOf = (sheets: readonly Sheet[], id: string): string =>
  sheets.find((s) => s.id === id)?.name ?? words.readHere.inSentence;

type ReadingsProps = Omit<SlipProps, 'given'> & { readonly own: readonly Length[] };

/** The readings given here, and a blank for the next. */
const Readings = ({ own, open, onOpen }: ReadingsProps) => (
  <>
    {[...own, undefined].map((reading, k) => (
      <Blank
        length
        key={k}
        label={words.reading(k, reading !== undefined)}
        open={open === k}
        onTap={() => onOpen(k)}
      >
        {reading && closely(reading)}
      </Blank>
    ))}
  </>
);
