import { mostInBackup } from '../../job/backup';
import { jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { isPictured } from '../../job/pictured-file';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench, Incoming, Offered } from '../bench';
import { LookAll } from './import-all';
import { backupText } from './import-all-words';
import * as words from './import-words';

/** A job file looked at before anything of it is taken: nothing is overwritten unseen. */
export function ImportScreen({ bench }: { readonly bench: Bench }) {
  const one = bench.incoming.offered.value;
  const all = bench.incoming.copies.value?.offered.value;
  const offered = one ?? all;
  const came = offered && words.cameText(bench.incoming.cameBy.value);
  const leave = () => {
    bench.incoming.letGo();
    bench.go({ at: 'job' });
  };
  return (
    <>
      <Bar title={words.title} leave={{ label: words.back, onTap: leave }} />
      <main class="page pad-x prefs">
        <FileButton
          label={offered ? words.another : words.choose}
          offer={bench.incoming.offer}
          hold={bench.incoming.copies.value?.hold}
        />
        <a class="btn" href="#/takein">
          {words.readCodes}
        </a>
        {!offered && <p class="note">{words.whatComes}</p>}
        {came && <p>{came}</p>}
        {one && 'code' in one && <Refused why={words.fileText(one)} />}
        {all && 'code' in all && <Refused why={backupText(all)} />}
        {one && 'file' in one && <Look offered={one} bench={bench} />}
        {all && 'backup' in all && <LookAll news={all} bench={bench} />}
      </main>
    </>
  );
}

type FileButtonProps = {
  readonly label: string;
  readonly offer: Incoming['offer'];
  readonly hold: ((file: Blob | undefined) => void) | undefined;
};

/** A file with pictures may be of any size: it is offered by its head, and read piece by piece. */
async function offerFile(
  file: File,
  { offer, hold }: Pick<FileButtonProps, 'offer' | 'hold'>,
): Promise<void> {
  const head = await file.slice(0, 100).text();
  const large = hold !== undefined && isPictured(head);
  hold?.(large ? file : undefined);
  await offer(large ? head : await file.slice(0, mostInBackup + 1).text());
}

const FileButton = ({ label, ...how }: FileButtonProps) => (
  <label class="btn file">
    {label}
    <input
      class="sr"
      type="file"
      accept=".json,.txt,application/json,text/plain"
      onChange={async (event) => {
        const file = event.currentTarget.files?.[0];
        if (file) await offerFile(file, how);
      }}
    />
  </label>
);

const Refused = ({ why }: { readonly why: string }) => (
  <p class="wrongline" role="alert">
    {words.refused(why)}
  </p>
);

function Look({ offered, bench }: { readonly offered: Offered; readonly bench: Bench }) {
  const { file, against } = offered;
  const state = fold(file.entries);
  const { name, boards, stock } = jobOf(file.job, state.values);
  const take = async (how: 'merge' | 'keep-both') => {
    await bench.incoming.take(how);
    // whoever has gone elsewhere meanwhile stays there
    if (bench.route.value.at === 'import') bench.go({ at: 'job' });
  };
  const holds = {
    boards: boards.length,
    stocks: stock.length,
    ticks: state.ticks.size,
    entries: file.entries.length,
  };
  return (
    <section class="look" aria-live="polite">
      <h2 class="sec">{name || words.nameless}</h2>
      <p>{words.holds(holds)}</p>
      {against ? (
        <>
          <p>{words.hereAlready(against.fresh.length, against.differing.length)}</p>
          <div class="acts">
            <Button label={words.merge} look="main" onTap={() => void take('merge')} />
            <Button label={words.keepBoth} onTap={() => void take('keep-both')} />
          </div>
        </>
      ) : (
        <Button label={words.takeIn} look="main full" onTap={() => void take('merge')} />
      )}
    </section>
  );
}
