import { assertNever } from '../../length/result';
import { type FileError, mostBytes } from '../../store/file';
import { jobOf } from '../../store/job';
import { fold } from '../../store/log';
import { Bar } from '../../ui/bar';
import type { Bench, Offered } from '../bench';

/** A job file looked at before anything of it is taken: nothing is overwritten unseen. */
export function ImportScreen({ bench }: { readonly bench: Bench }) {
  const offered = bench.offered.value;
  const leave = () => {
    bench.letGo();
    bench.go({ at: 'job' });
  };
  return (
    <>
      <Bar title="Bring a job in" leave={{ label: 'Job', onTap: leave }} />
      <main class="page pad-x prefs">
        <label class="btn file">
          {offered ? 'Another file' : 'Choose a job file'}
          <input
            class="sr"
            type="file"
            accept=".json,.txt,application/json,text/plain"
            onChange={async (event) => {
              const file = event.currentTarget.files?.[0];
              if (file) await bench.offer(await file.slice(0, mostBytes + 1).text());
            }}
          />
        </label>
        {!offered && (
          <p class="note">
            A job shared out from Knifeline, as .json or .txt. It is checked whole before any of it is taken.
          </p>
        )}
        {offered && 'code' in offered && (
          <p class="wrongline" role="alert">
            {fileText(offered)} Nothing was changed.
          </p>
        )}
        {offered && 'file' in offered && <Look offered={offered} bench={bench} />}
      </main>
    </>
  );
}

function Look({ offered, bench }: { readonly offered: Offered; readonly bench: Bench }) {
  const { file, against } = offered;
  const state = fold(file.entries);
  const job = jobOf(file.job, state.values);
  const take = async (how: 'merge' | 'keep-both') => {
    await bench.take(how);
    bench.go({ at: 'job' });
  };
  return (
    <section class="look" aria-live="polite">
      <h2 class="sec">{job.name || 'A job without a name'}</h2>
      <p>
        {job.boards.length} boards, {job.stock.length} sheets, {state.ticks.size} ticks, in{' '}
        {file.entries.length} entries.
      </p>
      {against ? (
        <>
          <p>
            This job is here already. {against.fresh.length} of these entries are new
            {against.differing.length > 0 &&
              `; ${against.differing.length} differ from the ones here, and would be set aside`}
            .
          </p>
          <div class="acts">
            <button type="button" class="btn main" onClick={() => void take('merge')}>
              Merge into the one here
            </button>
            <button type="button" class="btn" onClick={() => void take('keep-both')}>
              Keep both
            </button>
          </div>
        </>
      ) : (
        <button type="button" class="btn main full" onClick={() => void take('merge')}>
          Take it in
        </button>
      )}
    </section>
  );
}

/** Why a file is not taken. */
export function fileText(error: FileError): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a job can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-json':
      return 'This is no job file: it cannot be read as one, or it was cut short.';
    case 'not-a-job-file':
      return 'This is no job file of Knifeline.';
    case 'newer-file':
      return `The file was written by a newer Knifeline (file version ${error.version}). Bring this one up to date first.`;
    case 'too-many-entries':
      return `The file has more than ${error.most} entries.`;
    case 'bad-entry':
      return `Entry ${error.at + 1} of the file is damaged (${error.why}).`;
    case 'empty':
      return 'The file holds no entries.';
    default:
      return assertNever(error);
  }
}
