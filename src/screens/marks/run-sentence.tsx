import { editPlace, editRun } from '../../job/edits';
import type { Run } from '../../trade/grooves/board';
import type { Bench } from '../bench';
import { AskBlank } from '../shared/ask';
import * as asks from './asks';
import * as words from './change-words';
import { blankOf, type Slip } from './sentences';

type RunProps = Slip & { readonly run: Run; readonly bench: Pick<Bench, 'go' | 'newId'> };

/** A run of grooves as a sentence: how many, their section, how they are spaced. */
export function RunSentence(props: RunProps) {
  const { board, run } = props;
  const blank = blankOf(props);
  return (
    <section class="fillin run" aria-label={words.runNo(board.runs.indexOf(run))}>
      <words.RunSlip
        run={run}
        count={words.isCounted(run) && blank(asks.runCount(props))}
        wide={blank(asks.runLength(props, 'width'))}
        deep={blank(asks.runLength(props, 'depth'))}
        face={board.made === 'partition' && blank(asks.runFace(props))}
        spacing={blank(asks.runSpacing(props))}
        places={<Places {...props} />}
      />
      <RunActs {...props} />
    </section>
  );
}

function RunActs(props: RunProps) {
  const { board, run, bench, act, onOpen } = props;
  const change = (label: string, patch: Parameters<typeof editRun>[2]) =>
    act(label, editRun(board.id, run.id, patch));
  return (
    <span class="runacts">
      <Chip label={words.fitToSheet} onTap={() => bench.go({ at: 'fit', board: board.id, groove: run.id })} />
      <Chip
        label={run.stopped ? words.runThrough : words.stopShort}
        onTap={() =>
          run.stopped
            ? change(words.groovesRunThrough, { stopped: undefined })
            : onOpen(asks.runLength(props, 'stopped'))
        }
      />
      {board.runs.length + board.wides.length > 1 && (
        <Chip label={words.remove} onTap={() => change(words.runRemoved, { gone: true })} />
      )}
    </span>
  );
}

const Chip = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <button type="button" class="chip" onClick={onTap}>
    {label}
  </button>
);

/** Where the grooves of a run go, and where they stop. */
function Places(props: RunProps) {
  const { run } = props;
  return (
    <>
      <Spaced {...props} />
      {run.stopped && <words.Stopped short={blankOf(props)(asks.runLength(props, 'stopped'))} />}
      {run.spacing === 'given' && <LastAway {...props} />}
    </>
  );
}

function Spaced(props: RunProps) {
  const blank = blankOf(props);
  const point = () => blank(asks.runPoint(props));
  const length = (field: 'first' | 'pitch' | 'endRoom' | 'span' | 'part', title?: words.RunTitle) =>
    blank(asks.runLength(props, field, title));
  switch (props.run.spacing) {
    case 'pitch':
      return <words.AtPitch point={point()} first={length('first')} pitch={length('pitch')} />;
    case 'fill':
      return (
        <words.Filling
          pitch={length('pitch')}
          point={point()}
          first={length('first')}
          room={length('endRoom')}
          span={length('span')}
          over={blank(asks.runCentred(props))}
        />
      );
    case 'openings':
      return (
        <words.InOpenings
          span={length('span', 'shared')}
          first={length('first', 'spanFrom')}
          part={length('part')}
        />
      );
    case 'given':
      return <words.AtPlaces point={point()} places={<Given {...props} />} />;
  }
}

/** The places given one by one, and a blank for the next. */
const Given = ({ board, run, open, onOpen, bench }: RunProps) => (
  <>
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
    <AskBlank ask={asks.nextPlace({ board, run }, bench.newId())} open={open} onOpen={onOpen} />
  </>
);

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
