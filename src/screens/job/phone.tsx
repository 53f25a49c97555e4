import { Bar, Segment } from '../../ui/bar';
import type { Bench } from '../bench';
import { CopyOut, LastCopied } from './copy-out';
import { HomeScreen } from './home-screen';
import { LeftClosed } from './left-closed';

/** How this phone likes things: finish, hand, text. */
export function PhoneScreen({ bench }: { readonly bench: Bench }) {
  const { theme, hand, text, calipers } = bench.settings.value;
  const kept = {
    kept: 'The browser has promised not to clear what is kept here.',
    'may-be-cleared':
      'The browser may clear what is kept here when space runs short. Putting the app on the home screen helps; so does a copy of everything.',
    unknown: 'The browser has not said whether it keeps this when space runs short.',
  }[bench.phone.kept.value];
  const keptIn = {
    both: 'Every change is kept twice: in the browser’s database and in a journal beside it.',
    database: 'Kept in a single copy: this browser has no place for the journal, or it does not answer.',
    journal: 'The database does not answer: changes are kept in the journal alone.',
  }[bench.phone.keptIn.value];
  return (
    <>
      <Bar title="This phone" leave={{ label: 'Job', onTap: () => bench.go({ at: 'job' }) }} />
      <main class="page prefs pad-x">
        <LeftClosed bench={bench} />
        <h2 class="sec">Finish</h2>
        <Segment
          label="Finish"
          choices={[
            {
              label: 'As the phone',
              chosen: theme === 'phone',
              onTap: () => void bench.keep({ theme: 'phone' }),
            },
            { label: 'Satin', chosen: theme === 'satin', onTap: () => void bench.keep({ theme: 'satin' }) },
            { label: 'Blued', chosen: theme === 'blued', onTap: () => void bench.keep({ theme: 'blued' }) },
          ]}
        />
        <p class="note">Satin for daylight and glare, Blued for a dim shop.</p>
        <h2 class="sec">Hand</h2>
        <Segment
          label="Hand"
          choices={[
            { label: 'Left', chosen: hand === 'left', onTap: () => void bench.keep({ hand: 'left' }) },
            { label: 'Right', chosen: hand === 'right', onTap: () => void bench.keep({ hand: 'right' }) },
          ]}
        />
        <h2 class="sec">Text</h2>
        <Segment
          label="Text"
          choices={[
            {
              label: 'As the phone',
              chosen: text === 'phone',
              onTap: () => void bench.keep({ text: 'phone' }),
            },
            {
              label: 'Twice the size',
              chosen: text === 'large',
              onTap: () => void bench.keep({ text: 'large' }),
            },
          ]}
        />
        <h2 class="sec">Calipers type</h2>
        <Segment
          label="Calipers type"
          choices={[
            {
              label: 'As the tape',
              chosen: calipers === 'tape',
              onTap: () => void bench.keep({ calipers: 'tape' }),
            },
            { label: 'Inches', chosen: calipers === 'in', onTap: () => void bench.keep({ calipers: 'in' }) },
            { label: 'mm', chosen: calipers === 'mm', onTap: () => void bench.keep({ calipers: 'mm' }) },
          ]}
        />
        <p class="note">
          Calipers that act as a keyboard send figures without a unit: set here what their own button is set
          to.
        </p>
        <h2 class="sec">Cautions</h2>
        <button type="button" class="btn" onClick={() => bench.go({ at: 'before' })}>
          Before you cut
        </button>
        <h2 class="sec">A copy of everything</h2>
        <LastCopied bench={bench} />
        <CopyOut bench={bench} />
        <a class="btn" href="#/import">
          Bring a copy in
        </a>
        <HomeScreen bench={bench} />
        <h2 class="sec">What is kept</h2>
        <p>{kept}</p>
        <p>{keptIn}</p>
        <p class="note">
          Jobs, figures and settings stay on this phone and go nowhere by themselves. A copy of everything is
          one file; keep it somewhere else than on this phone.
        </p>
        <p class="note">
          The typeface is Encode Sans, under the SIL Open Font License: fonts-OFL.txt beside this page.
        </p>
        <a class="btn" href="./notices.txt">
          Licences of the libraries used
        </a>
      </main>
    </>
  );
}
