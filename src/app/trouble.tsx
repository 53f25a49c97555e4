import type { ComponentChildren } from 'preact';
import { assertNever } from '../length/result';
import type { Bench } from '../screens/bench';
import type { SaveError } from '../store/db';
import { valueName } from './value-names';
import '../screens/shared/half-done.css';

/**
 * What keeps a change from being kept, or what was brought back: a line above everything, until it is mended or seen.
 */
export function Trouble({ bench }: { readonly bench: Bench }) {
  const unsaved = bench.unsaved.value;
  const restored = bench.phone.restored.value;
  if (bench.phone.readOnly.value)
    return (
      <Line says="A newer Knifeline is open on this phone. This page only shows the job and saves nothing.">
        <button type="button" class="icon box" onClick={() => location.reload()}>
          Open again
        </button>
      </Line>
    );
  const [first] = unsaved;
  if (first)
    return (
      <NotSaved
        bench={bench}
        why={first.why}
        labels={unsaved.map(({ label, key }) => label ?? valueName(key ?? ''))}
      />
    );
  if (bench.phone.keptIn.value === 'journal')
    return (
      <Line says="The phone’s database does not answer. Changes are kept in the second copy alone and come back when the app is opened again.">
        <button type="button" class="icon box" onClick={() => location.reload()}>
          Open again
        </button>
      </Line>
    );
  if (restored > 0)
    return (
      <Line
        calm
        says={`The browser had lost ${restored === 1 ? 'an entry' : `${restored} entries`}. Restored ${restored === 1 ? 'it' : 'them'} from the second copy.${unread(bench.phone.setAside.value)}`}
      >
        <button type="button" class="icon box" onClick={bench.phone.seenRestored}>
          Good
        </button>
      </Line>
    );
  return null;
}

/** No all-clear where the second copy was damaged too. */
const unread = (n: number): string =>
  n === 0
    ? ''
    : ` ${n === 1 ? 'One line' : `${n} lines`} could not be read and ${n === 1 ? 'is' : 'are'} set aside, unchanged: see the job’s page.`;

type NotSavedProps = {
  readonly bench: Bench;
  readonly why: SaveError;
  readonly labels: readonly string[];
};

function NotSaved({ bench, why, labels }: NotSavedProps) {
  return (
    <Line says={`${reasons(why)} Not saved: ${labels.join('; ')}.`}>
      <button type="button" class="icon box" onClick={() => void bench.tryAgain()}>
        Try again
      </button>
      <button
        type="button"
        class="icon box"
        onClick={async () =>
          void bench.phone.share(bench.job.value?.name || 'Job', await bench.shelf.jobFile())
        }
      >
        Share the job out
      </button>
      <button type="button" class="icon box" onClick={bench.letUnsavedGo}>
        Leave it
      </button>
    </Line>
  );
}

function reasons(why: SaveError): string {
  switch (why.code) {
    case 'full':
      return 'Phone storage is full.';
    case 'read-only':
      return 'A newer Knifeline is open here.';
    case 'failed':
      return `The phone did not save it (${why.name}).`;
    default:
      return assertNever(why);
  }
}

type LineProps = {
  readonly says: string;
  readonly calm?: boolean;
  readonly children: ComponentChildren;
};

const Line = ({ says, calm = false, children }: LineProps) => (
  <div class={calm ? 'trouble calm' : 'trouble'} role={calm ? 'status' : 'alert'}>
    <span>{says}</span>
    {children}
  </div>
);
