import { useState } from 'preact/hooks';
import { Bar, BarButton } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { TextDock } from '../shared/ask-dock';
import { CopyOut } from './copy-out';
import { LeftClosed } from './left-closed';

/** All jobs on this phone, and the deleted ones that can still come back. */
export function JobsScreen({ bench }: { readonly bench: Bench }) {
  const [naming, setNaming] = useState(false);
  const lines = bench.shelf.jobs.value;
  const alive = lines.filter((line) => line.deleted === undefined);
  const deleted = lines.filter((line) => line.deleted !== undefined);
  const open = async (id: string) => {
    await bench.shelf.openJob(id);
    bench.go({ at: 'job' });
  };
  return (
    <>
      <Bar title="All jobs">
        <BarButton icon="plus" label="New job" boxed onTap={() => setNaming(true)} />
      </Bar>
      <main class="page">
        <LeftClosed bench={bench} />
        {alive.length === 0 && <p class="pad-x empty-line">No job yet. A job can be one board.</p>}
        <ul>
          {alive.map((line) => (
            <li key={line.id}>
              <button
                type="button"
                class="sect"
                aria-current={line.id === bench.job.value?.id}
                onClick={() => void open(line.id)}
              >
                <b>{line.name || 'A job without a name'}</b>
                <span class="muted s">{line.id === bench.job.value?.id ? 'in hand' : ''}</span>
                {line.place && <span class="muted s">{line.place}</span>}
              </button>
            </li>
          ))}
        </ul>
        <div class="pad-x adds">
          <button type="button" class="btn" onClick={() => bench.go({ at: 'import' })}>
            Bring a job file in
          </button>
          <CopyOut bench={bench} />
          <button type="button" class="btn" onClick={() => void bench.incoming.openSample()}>
            Open the sample job
          </button>
          {bench.job.value && (
            <button type="button" class="btn quiet" onClick={() => void bench.shelf.deleteJob()}>
              Delete “{bench.job.value.name || 'this job'}”
            </button>
          )}
        </div>
        {deleted.length > 0 && (
          <>
            <div class="sechead">
              <h2 class="sec">Deleted</h2>
            </div>
            <p class="pad-x note">They come back for 30 days at least.</p>
            <ul>
              {deleted.map((line) => (
                <li key={line.id} class="sect">
                  <b>{line.name || 'A job without a name'}</b>
                  <button
                    type="button"
                    class="chip"
                    onClick={() => void bench.shelf.bringBack(line.id).then(() => bench.go({ at: 'job' }))}
                  >
                    <Icon name="undo" />
                    Bring back
                  </button>
                </li>
              ))}
            </ul>
          </>
        )}
      </main>
      {naming && (
        <TextDock
          title="Name of the new job"
          now=""
          most={120}
          onDone={(name) => void bench.shelf.newJob(name).then(() => bench.go({ at: 'job' }))}
          onClose={() => setNaming(false)}
        />
      )}
    </>
  );
}
