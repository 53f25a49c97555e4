import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import type { BandKind } from '../../length/bands';
import { inches, type Length, subtract, zero } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Board, Run } from '../../trade/grooves/board';
import { layOut } from '../../trade/grooves/lay-out';
import { type Tray, trayFor } from '../../trade/grooves/tray';
import { Bar } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed, Remainder } from '../../ui/mixed';
import { shownOn } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { NoBoard } from '../shared/no-board';
import { boardWord } from '../shared/part-words';
import { useLength } from '../shared/stays';
import * as words from './tray-words';

const kinds: Partial<Record<keyof typeof words.titles, BandKind>> = {
  opening: 'length',
  slack: 'room',
  part: 'thickness',
};

type Name = keyof typeof words.titles;

/** A loose tray for the grooves of a board: its width, and what still sits in the groove when all goes one way. */
export function TrayScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const job = bench.job.value;
  const board = job?.boards.find((b) => b.id === id);
  const given = useGiven(id);
  if (!job || !board) return <NoBoard bench={bench} />;
  return <TrayInHand {...{ bench, job, board, given }} />;
}

/** What was given on the screen; it stays for this board. */
const useGiven = (id: string) => ({
  opening: useLength(`tray opening ${id}`),
  slack: useLength(`tray slack ${id}`, inches(3n, 64n)),
  bow: useLength(`tray bow ${id}`),
  part: useLength(`tray thick ${id}`),
});

type InHandProps = {
  readonly job: Job;
  readonly board: Board;
  readonly given: ReturnType<typeof useGiven>;
  readonly bench: Pick<Bench, 'go'>;
};

function TrayInHand({ bench, job: { tape }, board, given }: InHandProps) {
  const [open, setOpen] = useState<Name>();
  const run = board.runs.find((r) => r.depth);
  const [opening] = given.opening;
  return (
    <>
      <Bar
        title={words.trayForGrooves}
        sub={boardWord(board)}
        leave={{ label: words.back, onTap: () => bench.go({ at: 'change', board: board.id }) }}
      />
      <main class={open ? 'page docked' : 'page'}>
        <div class="fillin">
          <TraySlip {...{ given, open }} depth={run?.depth} onOpen={setOpen} />
        </div>
        {!run?.depth ? (
          <p class="pad-x wrongline">{words.depthFirst}</p>
        ) : (
          opening && <TrayFound {...{ opening, given, tape, board, run }} depth={run.depth} />
        )}
      </main>
      {open && (
        <KeySheet
          key={open}
          title={words.titles[open]}
          tape={tape}
          fill="length"
          kind={kinds[open]}
          now={given[open][0]}
          onLength={given[open][1]}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type SlipProps = Pick<InHandProps, 'given'> & {
  readonly depth: Length | undefined;
  readonly open: Name | undefined;
  readonly onOpen: (open: Name) => void;
};

/** What the tray goes between, and how much slack it has. */
function TraySlip({ given, depth, open, onOpen }: SlipProps) {
  const blank = (name: Name) => (
    <Blank length label={words.titles[name]} open={open === name} onTap={() => onOpen(name)}>
      {given[name][0] && <Given value={given[name][0]} />}
    </Blank>
  );
  return (
    <words.Slip
      opening={blank('opening')}
      depth={depth}
      part={blank('part')}
      slack={blank('slack')}
      bow={blank('bow')}
    />
  );
}

type FoundProps = Pick<InHandProps, 'given' | 'board'> & {
  readonly opening: Length;
  /** The run of grooves the tray goes in, and how deep it is. */
  readonly run: Run;
  readonly depth: Length;
  readonly tape: Tape;
};

/** The tray that fits, or what keeps one from being made. */
function TrayFound({ given, opening, board, run, depth, tape }: FoundProps) {
  const [[slack = zero], [bow = zero], [part]] = [given.slack, given.bow, given.part];
  const tray = trayFor(opening, depth, { slack, bow, tape });
  if (!tray.ok) return <p class="pad-x wrongline">{words.errorText(tray.error)}</p>;
  const pitch = layOut(board).facts.find((f) => f.run === run.id)?.pitch;
  return (
    <section class="pad-x facts rests" aria-live="polite">
      <TrayWide tray={tray.value} tape={tape} />
      {pitch && part && (
        <p class="fact">{words.clearBetween(markAt(subtract(pitch, part), shownOn('1/64')).value)}</p>
      )}
    </section>
  );
}

const TrayWide = ({ tray, tape }: { readonly tray: Tray; readonly tape: Tape }) => (
  <>
    <div class="marked">
      <span class="note">{words.trayWide}</span>
      <Mixed value={tray.cut.value} rest={tray.cut.rest} size="arm" tape={tape} />
      <Remainder tape={tape} rest={tray.cut.rest} />
    </div>
    <p class={tray.thinBearing ? 'fact warn' : 'fact'}>{words.bearing(tray.bearing, tray.thinBearing)}</p>
  </>
);
