import { useState } from 'preact/hooks';
import type { BackupError } from '../../job/backup';
import type { News, Place } from '../../job/backup-news';
import { assertNever } from '../../length/result';
import type { Bench } from '../bench';
import { counted } from '../shared/counted';
import { shopFields } from '../shared/layout-words';
import { fileText } from './file-words';

/** A copy of everything looked at: what is new, and whose figures stand where the two differ. */
export function LookAll({ news, bench }: { readonly news: News; readonly bench: Bench }) {
  const [short, setShort] = useState<string>();
  const take = async (whose: 'ours' | 'theirs') => {
    const came = await bench.incoming.copies.value?.take(whose);
    if (bench.route.value.at !== 'import') return;
    if (!bench.incoming.copies.value?.offered.value) bench.go({ at: 'job' });
    else if (came)
      setShort(`${came.jobs} of ${counted(came.of, 'job', 'jobs')} came in, then the phone took no more.`);
  };
  const nothing = news.entries === 0 && news.differing === 0 && news.lacking.length === 0;
  return (
    <section class="look" aria-live="polite">
      <h2 class="sec">A copy of everything</h2>
      <p>{newsText(news)}</p>
      {short && (
        <p class="wrongline" role="alert">
          {short}
        </p>
      )}
      {news.places.length === 0 ? (
        <button type="button" class="btn main full" onClick={() => void take('ours')}>
          {nothing ? 'Go to the job' : 'Take it in'}
        </button>
      ) : (
        <Whose places={news.places} onTake={(whose) => void take(whose)} />
      )}
    </section>
  );
}

type WhoseProps = { readonly places: readonly Place[]; readonly onTake: (whose: 'ours' | 'theirs') => void };

function Whose({ places, onTake }: WhoseProps) {
  const count = places.length === 1 ? 'one place' : `${places.length} places`;
  return (
    <>
      <p>
        Figures of the shop and ways of this phone differ in {count}: {places.map(placeText).join(', ')}.
      </p>
      <div class="acts">
        <button type="button" class="btn main" onClick={() => onTake('ours')}>
          Take it in, keep this phone’s
        </button>
        <button type="button" class="btn" onClick={() => onTake('theirs')}>
          Take it in, with the file’s
        </button>
      </div>
    </>
  );
}

const jobs = (n: number): string => (n === 1 ? 'one job' : `${n} jobs`);
const entries = (n: number): string => (n === 1 ? 'one entry' : `${n} entries`);

/** What a copy would bring, before any of it is taken. */
export function newsText({ jobs: all, entries: fresh, touched, differing, lacking }: News): string {
  const brought =
    fresh === 0
      ? `${all.length === 1 ? 'Its one job is' : `Its ${all.length} jobs are`} here already, whole.`
      : `${entries(fresh)} new to this phone, in ${jobs(touched)} of ${all.length}.`;
  const aside = differing === 0 ? '' : ` ${entries(differing)} would be set aside: this phone has others.`;
  const figures = lacking.length === 0 ? '' : ` Not here yet: ${lacking.map(placeText).join(', ')}.`;
  const text = `${brought}${aside}${figures}`;
  return all.length === 0 ? `No job is in it.${figures}` : text.charAt(0).toUpperCase() + text.slice(1);
}

const likingText = {
  theme: 'finish',
  hand: 'hand',
  text: 'size of text',
  tape: 'marks of the tape',
  calipers: 'what calipers type',
  lists: 'what lies in the drawers',
  figure: 'the strip of Figure',
} as const;

const isLiking = (place: Place): place is keyof typeof likingText => place in likingText;
const placeText = (place: Place): string =>
  isLiking(place) ? likingText[place] : shopFields[place].toLowerCase();

/** Why a copy of everything is not taken. */
export function backupText(error: BackupError): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a copy can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-a-copy':
      return 'This is no copy of everything.';
    case 'newer-copy':
      return `The copy was written by a newer Knifeline (version ${error.version}). Bring this one up to date first.`;
    case 'torn':
      return 'The copy was cut short or changed on its way: its check does not fit. Fetch it again.';
    case 'no-check':
      return 'This page did not come over https, so a copy cannot be checked.';
    case 'bad-job':
      return `Job ${error.at + 1} of the copy: ${fileText(error.error)}`;
    case 'job-twice':
      return `Job ${error.at + 1} stands in the copy twice.`;
    case 'bad-figure':
      return `“${error.field}” in the copy cannot be read.`;
    default:
      return assertNever(error);
  }
}
