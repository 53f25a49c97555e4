import { mostInBackup } from '../../job/backup';
import { jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { Bar } from '../../ui/bar';
import type { Bench, Offered } from '../bench';
import { counted } from '../shared/counted';
import { cameText, fileText } from './file-words';
import { backupText, LookAll } from './import-all';

/** A job file looked at before anything of it is taken: nothing is overwritten unseen. */
export function ImportScreen({ bench }: { readonly bench: Bench }) {
  const one = bench.incoming.offered.value;
  const all = bench.incoming.copies.value?.offered.value;
  const offered = one ?? all;
  const came = offered && cameText(bench.incoming.cameBy.value);
  const leave = () => {
    bench.incoming.letGo();
    bench.go({ at: 'job' });
  };
  return (
    <>
      <Bar title="Bring in" leave={{ label: 'Job', onTap: leave }} />
      <main class="page pad-x prefs">
        <label class="btn file">
          {offered ? 'Another file' : 'Choose a file'}
          <input
            class="sr"
            type="file"
            accept=".json,.txt,application/json,text/plain"
            onChange={async (event) => {
              const file = event.currentTarget.files?.[0];
              if (file) await bench.incoming.offer(await file.slice(0, mostInBackup + 1).text());
            }}
          />
        </label>
        <a class="btn" href="#/takein">
          Read codes off another phone
        </a>
        {!offered && (
          <p class="note">
            A job shared out from Knifeline, or a copy of everything, as .json or .txt. It is checked whole
            before any of it is taken.
          </p>
        )}
        {came && <p>{came}</p>}
        {one && 'code' in one && <Refused why={fileText(one)} />}
        {all && 'code' in all && <Refused why={backupText(all)} />}
        {one && 'file' in one && <Look offered={one} bench={bench} />}
        {all && 'backup' in all && <LookAll news={all} bench={bench} />}
      </main>
    </>
  );
}

const Refused = ({ why }: { readonly why: string }) => (
  <p class="wrongline" role="alert">
    {why} Nothing was changed.
  </p>
);

function Look({ offered, bench }: { readonly offered: Offered; readonly bench: Bench }) {
  const { file, against } = offered;
  const state = fold(file.entries);
  const job = jobOf(file.job, state.values);
  const take = async (how: 'merge' | 'keep-both') => {
    await bench.incoming.take(how);
    // whoever has gone elsewhere meanwhile stays there
    if (bench.route.value.at === 'import') bench.go({ at: 'job' });
  };
  return (
    <section class="look" aria-live="polite">
      <h2 class="sec">{job.name || 'A job without a name'}</h2>
      <p>
        {counted(job.boards.length, 'board', 'boards')}, {counted(job.stock.length, 'stock', 'stocks')},{' '}
        {counted(state.ticks.size, 'tick', 'ticks')}, in {counted(file.entries.length, 'entry', 'entries')}.
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
