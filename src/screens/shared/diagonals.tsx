import { useState } from 'preact/hooks';
import { editBuilt } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Length } from '../../length/length';
import { squareUp } from '../../length/racking';
import { grainOf, markAt, type Tape } from '../../length/tape';
import { writeLength, writeMark } from '../../length/write';
import { jobWith } from '../../plan/job-with';
import type { Case } from '../../trade/carcass/case';
import type { Worked } from '../../trade/carcass/parts';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from './ask';
import { AskDock } from './ask-dock';
import { ExactOrMark } from './exact-or-mark';
import * as words from './square-words';
import './rows.css';

type DiagonalsProps = {
  readonly bench: Bench;
  readonly worked: Worked;
  /** The blank that is open: the page has one panel at a time. */
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask | undefined) => void;
};

/** The key the readings of both diagonals are kept under. */
const key = 'diagonals';

/** The diagonals of a case as dry-fitted, and what squares it: its width and height are known. */
export function Diagonals({ bench, worked, open, onOpen }: DiagonalsProps) {
  const [trying, setTrying] = useState<readonly Change[]>();
  const { case: kept, width, height } = worked.sizes;
  const job = bench.job.value;
  if (!job) return null;
  const inHand = trying ? jobWith(bench.folded.value, job.id, trying) : job;
  const { frontA, frontB } = inHand.cases.find((c) => c.id === kept.id)?.built[key] ?? {};
  const frame = frontA && frontB && { w: width.value, h: height.value, a: frontA, b: frontB };
  const blank = (place: 'frontA' | 'frontB') => (
    <AskBlank ask={askFor(kept, place)} open={open} onOpen={onOpen} />
  );
  const close = () => {
    onOpen(undefined);
    setTrying(undefined);
  };
  return (
    <section class="fillin run" aria-label={words.diagonals}>
      {words.slip({
        wide: <ExactOrMark value={width.value} tape={job.tape} />,
        high: <ExactOrMark value={height.value} tape={job.tape} />,
        frontA: blank('frontA'),
        frontB: blank('frontB'),
      })}
      {frame && <Push frame={frame} tape={job.tape} />}
      <AskDock
        ask={open}
        tape={job.tape}
        tells={frame && told(frame, job.tape)}
        act={(label, changes) => void bench.act(label, changes)}
        onTry={setTrying}
        onClose={close}
      />
    </section>
  );
}

const askFor = (c: Case, place: 'frontA' | 'frontB'): Ask => ({
  as: 'length',
  title: words.diagonalNames[place],
  kind: 'length',
  now: c.built[key]?.[place],
  save: (value) => editBuilt(c.id, key, { [place]: value }),
});

type Frame = { readonly w: Length; readonly h: Length; readonly a: Length; readonly b: Length };
type PushProps = { readonly frame: Frame; readonly tape: Tape };

/** The long diagonal has its upper end on the side the top leans to. */
const wayOf = (long: 'A' | 'B'): 'left' | 'right' => (long === 'A' ? 'left' : 'right');

/** The same in one line, beside the keys. */
function told(frame: Frame, tape: Tape): string {
  const found = squareUp(frame, grainOf(tape));
  if (!found.ok) return words.rackingText(found.error);
  const { push, until, long, agree } = found.value;
  if (!agree) return words.cannotAgree;
  if (long === 'neither') return words.equalDiagonals;
  return words.pushAndUntil(wayOf(long), writeMark(markAt(push, tape), tape), writeLength(until, tape));
}

/** How far the top goes, which way, and what both diagonals then read. */
function Push({ frame, tape }: PushProps) {
  const found = squareUp(frame, grainOf(tape));
  if (!found.ok) return <p class="wrongline">{words.rackingText(found.error)}</p>;
  const { push, until, long, agree } = found.value;
  return (
    <div class="pushed rests">
      {!agree && <p class="wrongline">{words.cannotAgree}</p>}
      {agree && long === 'neither' && <p class="note">{words.equalDiagonals}</p>}
      {long !== 'neither' && (
        <>
          <Figure label={words.pushTo(wayOf(long))} value={push} tape={tape} />
          <Figure label={words.untilEach} value={until} tape={tape} />
        </>
      )}
    </div>
  );
}

type FigureProps = { readonly label: string; readonly value: Length; readonly tape: Tape };

function Figure({ label, value, tape }: FigureProps) {
  const mark = markAt(value, tape);
  return (
    <div class="marked">
      <span class="note">{label}</span>
      <Mixed value={mark.value} rest={mark.rest} size="arm" tape={tape} />
      <Remainder tape={tape} rest={mark.rest} />
    </div>
  );
}
