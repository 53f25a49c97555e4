import { useEffect, useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { notedPlaces } from '../../job/notes';
import { clearPictures, type Picture, picturesHeld, picturesIn, putPictureBack } from '../../job/pictures';
import { placeOfCode } from '../../job/place-code';
import { Button } from '../../ui/button';
import { Dock } from '../../ui/dock';
import type { Bench } from '../bench';
import type { Pictures } from '../pictures';
import { Noted } from '../shared/noted';
import { placeWord } from '../shared/noted-words';
import { PicturedOut } from '../shared/pictured-out';
import { PictureShown } from './picture';
import * as words from './words';
import './pictures.css';

type OfJobProps = { readonly bench: Bench; readonly job: Job };

/** All notes and pictures of a job by where they belong, and what is kept of those that are off their place. */
export function OfJob({ bench, job }: OfJobProps) {
  const pictures = bench.incoming.copies.value?.pictures;
  const all = picturesIn(job).filter(({ cleared }) => !cleared);
  const held = picturesHeld(job);
  const alone = pictures?.alone.value ?? 0;
  const always = ['job', 'room'];
  const codes = new Set([
    ...always,
    ...notedPlaces(job),
    ...all.filter(({ gone }) => !gone).map(({ of }) => of),
  ]);
  return (
    <>
      <h2 class="sec pad-x">{words.places}</h2>
      {[...codes].map((code) => (
        <div key={code} class="ofplace">
          <h3 class="pad-x">{placeWord(placeOfCode(code), bench.plan.value)}</h3>
          <Noted bench={bench} place={placeOfCode(code)} />
        </div>
      ))}
      <p class="pad-x note">{words.held(held.count, held.bytes)}</p>
      {alone > 0 && <p class="pad-x note">{words.alone(alone)}</p>}
      <p class="pad-x note">{words.keptSmall}</p>
      {held.count > 0 && (
        <div class="pad-x acts">
          <PicturedOut
            copies={bench.incoming.copies.value}
            name={words.fileName(job.name)}
            job={job.id}
            label={words.sharePictured}
          />
        </div>
      )}
      {pictures && <Off {...{ bench, job, pictures }} off={all.filter(({ gone }) => gone)} />}
      {pictures && <Idle {...{ bench, job, pictures }} />}
    </>
  );
}

type OffProps = OfJobProps & { readonly pictures: Pictures; readonly off: readonly Picture[] };

/** Pictures taken off their place: put back by a tap, or deleted for good. */
function Off({ bench, job, pictures, off }: OffProps) {
  const [asked, setAsked] = useState<readonly Picture[]>();
  const [failed, setFailed] = useState(false);
  const remove = async (some: readonly Picture[]) => {
    setAsked(undefined);
    setFailed(!(await removed({ bench, job, pictures }, some)));
  };
  if (off.length === 0 && !failed) return null;
  return (
    <section aria-label={words.offTitle}>
      <h2 class="sec pad-x">{words.offTitle}</h2>
      <p class="pad-x note">{words.offSays}</p>
      <ul class="pad-x picturegrid">
        {off.map((picture, k) => (
          <li key={picture.id}>
            <PictureShown {...{ pictures, picture }} job={job.id} no={k + 1} />
            <Button
              label={words.putBack}
              look="full"
              onTap={() => void bench.act(words.putItBack, putPictureBack(picture.id))}
            />
            <Button label={words.deleteForGood} look="full" onTap={() => setAsked([picture])} />
          </li>
        ))}
      </ul>
      {failed && <NotDeleted />}
      {asked && (
        <Sure count={asked.length} onYes={() => void remove(asked)} onClose={() => setAsked(undefined)} />
      )}
    </section>
  );
}

const NotDeleted = () => (
  <p class="pad-x wrongline" role="alert">
    {words.notDeleted}
  </p>
);

type RemoveProps = Omit<OffProps, 'off'>;

/** The log first: bytes whose deletion it did not take stay. Those that another picture of the job shows stay too. */
async function removed({ bench, job, pictures }: RemoveProps, some: readonly Picture[]): Promise<boolean> {
  if (!(await bench.act(words.deleted, clearPictures(some.map(({ id }) => id))))) return true; // told as unsaved
  const shown = hashesOf(bench.job.peek() ?? job);
  return pictures.drop(
    job.id,
    some.map(({ hash }) => hash).filter((hash) => !shown.has(hash)),
  );
}

const hashesOf = (job: Pick<Job, 'tree'>): ReadonlySet<string> =>
  new Set(picturesIn(job).flatMap(({ cleared, hash }) => (cleared ? [] : [hash])));

/** Bytes that no picture of the job shows any more. */
function Idle({ bench, job, pictures }: RemoveProps) {
  const [here, setHere] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState(false);
  const [failed, setFailed] = useState(false);
  const look = () => pictures.here(job.id).then(setHere, () => undefined);
  useEffect(() => {
    void look();
  }, [job]);
  const idleNow = () => {
    const shown = hashesOf(bench.job.peek() ?? job);
    return [...here].filter((hash) => !shown.has(hash));
  };
  const idle = idleNow();
  const remove = async () => {
    setAsked(false);
    setFailed(!(await pictures.drop(job.id, idleNow())));
    await look();
  };
  if (idle.length === 0 && !failed) return null;
  return (
    <section class="pad-x acts" aria-label={words.idleTitle}>
      <h2 class="sec">{words.idleTitle}</h2>
      <p>{words.idleSays(idle.length)}</p>
      <Button label={words.deleteForGood} look="full" onTap={() => setAsked(true)} />
      {failed && <NotDeleted />}
      {asked && <Sure count={idle.length} onYes={() => void remove()} onClose={() => setAsked(false)} />}
    </section>
  );
}

type SureProps = { readonly count: number; readonly onYes: () => void; readonly onClose: () => void };

const Sure = ({ count, onYes, onClose }: SureProps) => (
  <Dock title={words.deleteAsks(count)} onClose={onClose}>
    <div class="body acts">
      <p>{words.deleteSays}</p>
      <Button label={words.deleteForGood} look="full" onTap={onYes} />
    </div>
  </Dock>
);
