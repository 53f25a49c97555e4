import { editPlace, editRun } from '../../job/edits';
import type { Run } from '../../trade/grooves/board';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { AskBlank } from '../shared/ask';
import { filled } from '../shared/filled';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import * as words from './change-words';
import { blanks, type Slip } from './sentences';

type RunProps = Slip & { readonly run: Run; readonly bench: Pick<Bench, 'go' | 'newId'> };

/** A run of grooves as a sentence: how many, their section, how they are spaced. */
export function RunSentence(props: RunProps) {
  const { board, run } = props;
  const blank = blanks(props, asks.runAsks(props));
  return (
    <Sentence label={words.runNo(board.runs.indexOf(run))}>
      {filled(words.runSlip(board, run), (name) => (name === 'places' ? <Places {...props} /> : blank(name)))}
      {run.spacing === 'given' && <LastAway {...props} />}
      <RunActs {...props} />
    </Sentence>
  );
}

/** The places given one by one, and a blank for the next. */
function Places({ board, run, open, onOpen, bench }: RunProps) {
  const of = { board, run };
  return (
    <>
      {run.at.map(
        (at, k) =>
          at && (
            <AskBlank key={asks.placeId(run, k)} ask={asks.runPlace(of, k, at)} open={open} onOpen={onOpen} />
          ),
      )}
      <AskBlank ask={asks.nextPlace(of, bench.newId())} open={open} onOpen={onOpen} />
    </>
  );
}

/** Takes the last place away again. */
function LastAway({ board, run, act }: RunProps) {
  const last = run.at.reduce((found, at, k) => (at ? k : found), -1);
  if (last < 0) return null;
  const of = { board: board.id, run: run.id };
  return (
    <Chip
      label={words.takeAway(last + 1)}
      onTap={() => act(words.takenAway(last + 1), editPlace(of, asks.placeId(run, last), { gone: true }))}
    />
  );
}

function RunActs(props: RunProps) {
  const { board, run, bench, act, onOpen } = props;
  const change = (label: string, patch: Parameters<typeof editRun>[2]) =>
    act(label, editRun(board.id, run.id, patch));
  return (
    <Acts>
      <Chip label={words.fitToSheet} onTap={() => bench.go({ at: 'fit', board: board.id, groove: run.id })} />
      <Chip
        label={run.stopped ? words.runThrough : words.stopShort}
        onTap={() =>
          run.stopped
            ? change(words.groovesRunThrough, { stopped: undefined })
            : onOpen(asks.runStopped(props))
        }
      />
      {board.runs.length + board.wides.length > 1 && (
        <Chip label={words.remove} onTap={() => change(words.runRemoved, { gone: true })} />
      )}
    </Acts>
  );
}
