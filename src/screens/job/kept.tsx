import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { Icon } from '../../ui/icon';
import type { Bench, UpdateHeld } from '../bench';
import { wordFor } from '../shared/counted';
import { CopyLine } from './copy-line';

/** In how many places the last change is kept. */
export const KeptLine = ({ bench }: { readonly bench: Bench }) => (
  <p class="kept">
    <Icon name="phone" />
    Kept on this phone{bench.phone.keptIn.value === 'both' ? ', in two copies' : ', in a single copy'}.
    {bench.phone.servedHere.value && ' Works with no signal.'}
  </p>
);

const heldWords: Readonly<Record<UpdateHeld, string>> = {
  'at-the-saw': ' It starts once the setting that stands at the saw, on another page, is left.',
  'entry-open': ' It starts once the keys or the list open on another page are closed.',
  'not-secured': ' It starts once both copies of what is kept here are whole.',
};

/** What is kept of the job, what could not be read, and a newer version that waits. */
export function Kept({ bench, job }: { readonly bench: Bench; readonly job: Job }) {
  const kept = bench.phone.kept.value;
  const [held, setHeld] = useState<UpdateHeld>();
  return (
    <div class="pad-x keptbox">
      <KeptLine bench={bench} />
      <CopyLine bench={bench} />
      {kept === 'may-be-cleared' && (
        <p class="note">
          The browser may clear it when space runs short. Put the app on the home screen, and share the job
          out now and then.
        </p>
      )}
      {job.unread.length > 0 && (
        <p class="note">
          {job.unread.length === 1
            ? 'One value could not be read and stands at its usual figure.'
            : `${job.unread.length} values could not be read and stand at their usual figures.`}
        </p>
      )}
      {bench.phone.setAside.value > 0 && (
        <p class="note">
          {bench.phone.setAside.value === 1
            ? 'One entry could not be read. It is set aside, whole.'
            : `${bench.phone.setAside.value} entries could not be read. They are set aside, whole.`}{' '}
          <button
            type="button"
            class="chip"
            onClick={() => void bench.phone.asideFile().then((text) => bench.phone.share('Set aside', text))}
          >
            Share {wordFor(bench.phone.setAside.value, 'it', 'them')} out
          </button>
        </p>
      )}
      {bench.phone.updateWaiting.value && (
        <p class="note">
          Newer version saved. It starts next time you open it.{' '}
          <button type="button" class="chip" onClick={async () => setHeld(await bench.phone.startUpdate())}>
            Start it now
          </button>
          {held && heldWords[held]}
        </p>
      )}
    </div>
  );
}
