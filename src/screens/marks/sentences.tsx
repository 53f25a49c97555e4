import { editPlace, editRun, editWide } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Board, Run, Wide } from '../../trade/grooves/board';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { wordFor } from '../shared/counted';
import { wordsAt } from '../shared/machines/groove-words';
import * as asks from './asks';
import { boardMachine } from './machine-ask';
import { machineSentence } from './machine-sentence';

type Open = (ask: Ask) => void;
/** What a sentence stands on: its board, the blank that is open, and what can be done. */
export type Part = {
  readonly board: Board;
  readonly open: Ask | undefined;
  readonly onOpen: Open;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

export function BoardSentence({ board, open, onOpen, bench }: Part & { readonly bench: Bench }) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <div class="fillin">
      {blank(asks.boardName(board))} is {blank(asks.boardMade(board))}
      {board.made === 'alike' && <>, {blank(asks.boardCopies(board))} alike</>}. It is{' '}
      {blank(asks.boardLength(board, 'length', 'Length of the board'))} long,{' '}
      {blank(asks.boardLength(board, 'across', 'How wide the board is'))} wide and{' '}
      {blank(asks.boardLength(board, 'thickness', 'Thickness of the board'))} thick, cut out of{' '}
      {blank(asks.boardStock(board, bench.job.value?.stock ?? []))}. Measure from the{' '}
      {blank(asks.boardEnd(board))}.
    </div>
  );
}

type RunPart = Part & { readonly run: Run; readonly bench: Bench };

export function RunSentence(part: RunPart) {
  const { board, run, open, onOpen, act, bench } = part;
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <section class="fillin run" aria-label={`Run ${board.runs.indexOf(run) + 1}`}>
      Cut {run.spacing === 'pitch' || run.spacing === 'openings' ? blank(asks.runCount(board, run)) : ''}{' '}
      {wordFor(
        run.spacing === 'pitch' || run.spacing === 'openings' ? run.count : undefined,
        'groove',
        'grooves',
      )}{' '}
      {blank(asks.runLength(board, run, 'width', 'How wide the grooves are'))} wide and{' '}
      {blank(asks.runLength(board, run, 'depth', 'How deep they are'))} deep
      {board.made === 'partition' && <> on {blank(asks.runFace(board, run))}</>},{' '}
      {blank(asks.runSpacing(board, run))}
      {run.spacing === 'fill' ? ' ' : ': '}
      <Spaced {...part} />
      <span class="runacts">
        <button
          type="button"
          class="chip"
          onClick={() => bench.go({ at: 'fit', board: board.id, groove: run.id })}
        >
          Fit to a sheet
        </button>
        <button
          type="button"
          class="chip"
          onClick={() =>
            run.stopped
              ? act('Grooves run through', editRun(board.id, run.id, { stopped: undefined }))
              : onOpen(asks.runLength(board, run, 'stopped', 'Stopped how far short of the front'))
          }
        >
          {run.stopped ? 'Run them through' : 'Stop them short'}
        </button>
        {board.runs.length + board.wides.length > 1 && (
          <button
            type="button"
            class="chip"
            onClick={() => act('Run removed', editRun(board.id, run.id, { gone: true }))}
          >
            Remove
          </button>
        )}
      </span>
    </section>
  );
}

function Spaced({ board, run, open, onOpen, act, bench }: RunPart) {
  const lastPlace = run.at.reduce((last, at, k) => (at ? k : last), -1);
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const length = (field: 'first' | 'pitch' | 'endRoom' | 'span' | 'part', title: string) =>
    blank(asks.runLength(board, run, field, title));
  const stopped = run.stopped && (
    <>
      {' '}
      They stop {blank(asks.runLength(board, run, 'stopped', 'Stopped how far short of the front'))} short of
      the front.
    </>
  );
  switch (run.spacing) {
    case 'pitch':
      return (
        <>
          the {blank(asks.runPoint(board, run))} of the first at {length('first', 'Where the first one goes')}
          , then every {length('pitch', 'How far apart, centre to centre')}.{stopped}
        </>
      );
    case 'fill':
      return (
        <>
          every {length('pitch', 'How far apart, centre to centre')}, the {blank(asks.runPoint(board, run))}{' '}
          of the first at {length('first', 'Where the first one goes')}, leaving{' '}
          {length('endRoom', 'Room left clear at the far end')} clear at the far end of{' '}
          {length('span', 'Length to fill, the rest of the board when blank')}, what is over{' '}
          {blank(asks.runCentred(board, run))}.{stopped}
        </>
      );
    case 'openings':
      return (
        <>
          over {length('span', 'Length shared out, the rest of the board when blank')} from{' '}
          {length('first', 'Where that length starts')}, for parts{' '}
          {length('part', 'Thickness of the parts, the groove’s own when blank')} thick.{stopped}
        </>
      );
    case 'given':
      return (
        <>
          the {blank(asks.runPoint(board, run))} at{' '}
          {run.at.map(
            (at, k) =>
              at && (
                <AskBlank
                  key={asks.placeId(run, k)}
                  ask={asks.runPlace({ board, run }, k, at)}
                  open={open}
                  onOpen={onOpen}
                />
              ),
          )}
          <AskBlank ask={asks.nextPlace({ board, run }, bench.newId())} open={open} onOpen={onOpen} />.
          {stopped}
          {lastPlace >= 0 && (
            <button
              type="button"
              class="chip"
              onClick={() =>
                act(
                  `No. ${lastPlace + 1} taken away`,
                  editPlace({ board: board.id, run: run.id }, asks.placeId(run, lastPlace), { gone: true }),
                )
              }
            >
              Take no. {lastPlace + 1} away
            </button>
          )}
        </>
      );
  }
}

export function WideSentence({ board, open, onOpen, act, wide }: Part & { readonly wide: Wide }) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <section class="fillin run" aria-label={`Wide groove ${board.wides.indexOf(wide) + 1}`}>
      A wide one, {blank(asks.wideLength(board, wide, 'width', 'How wide'))} by{' '}
      {blank(asks.wideLength(board, wide, 'depth', 'How deep'))} deep, near edge at{' '}
      {blank(asks.wideLength(board, wide, 'near', 'Where its near edge goes'))}
      {board.made === 'partition' && <> on {blank(asks.wideFace(board, wide))}</>}.
      <span class="runacts">
        <button
          type="button"
          class="chip"
          onClick={() => act('Wide groove removed', editWide(board.id, wide.id, { gone: true }))}
        >
          Remove
        </button>
      </span>
    </section>
  );
}

export function DatumSentence({ board, open, onOpen }: Part) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <section class="fillin run" aria-label="Datum">
      Places are given from the datum face,{' '}
      {blank(asks.boardLength(board, 'datum', 'Reference end to the datum face'))} from the {board.end} end.
      The facing {blank(asks.boardMateName(board))} has it{' '}
      {blank(asks.boardLength(board, 'mate', 'The facing part’s end to the same face'))} from its own.
    </section>
  );
}

export function MachineSentence({ board, open, onOpen }: Part) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <section class="fillin run" aria-label="Machine">
      Cut them on the {blank(boardMachine(board))}
      {machineSentence(wordsAt(board), board).map((part) => (typeof part === 'string' ? part : blank(part)))}
    </section>
  );
}
