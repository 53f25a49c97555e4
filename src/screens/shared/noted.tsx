import { useState } from 'preact/hooks';
import { editNote, noteOf } from '../../job/notes';
import { picturesAt } from '../../job/pictures';
import { type NotedPlace, placeCode } from '../../job/place-code';
import type { Bench } from '../bench';
import { TextDock } from './ask-dock';
import { notedLines } from './noted-lines';
import * as words from './noted-words';
import './noted.css';

type NotedBench = Pick<Bench, 'job' | 'plan' | 'act' | 'go'>;
type NotedProps = { readonly bench: NotedBench; readonly place: NotedPlace };
type BesideProps = NotedProps & {
  /** Its pictures stand below it: there is no way to them. */
  readonly pictured?: true;
};

/** What is said at a place beside its figures: its note, which opens to be written, and the way to its pictures. */
export function Noted({ bench, place, pictured }: BesideProps) {
  const [open, setOpen] = useState(false);
  const job = bench.job.value;
  if (!job) return null;
  const note = noteOf(job, place);
  const name = words.placeWord(place, bench.plan.value);
  return (
    <div class={pictured ? 'noted whole' : 'noted'}>
      <button type="button" class="nextset" onClick={() => setOpen(true)}>
        <span>{words.note}</span>
        <span class="muted noted-text">{note || words.noNote}</span>
      </button>
      {!pictured && <PicturesButton bench={bench} place={place} />}
      {open && (
        <TextDock
          title={words.noteTitle(name)}
          now={note}
          most={mostOf(place)}
          lines={place.of === 'job'}
          onDone={(said) => void bench.act(words.noted(place), editNote(place, said))}
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}

/** The way to the pictures of a place, with how many there are. */
export function PicturesButton({ bench, place }: NotedProps) {
  const job = bench.job.value;
  const count = job ? picturesAt(job, placeCode(place)).length : 0;
  return (
    <button
      type="button"
      class="nextset to-pictures"
      onClick={() => bench.go({ at: 'pictures', of: placeCode(place) })}
    >
      {words.picturesSaid(count)}
    </button>
  );
}

/** Most characters of a note: see the fields. */
const mostOf = ({ of }: NotedPlace): number => (of === 'job' ? 4000 : 400);

type SawProps = NotedProps & { readonly parts: readonly string[] };

/** At the saw, in a line each: what is noted of the setting in hand and of the parts on it. */
export function NotedAtSaw({ bench, place, parts }: SawProps) {
  const job = bench.job.value;
  if (!job) return null;
  const all = notedLines({ job, plan: bench.plan.value, place, parts });
  return (
    <>
      {all.map((line) => (
        <p key={line} class="pad-x note sawnote">
          {line}
        </p>
      ))}
    </>
  );
}
