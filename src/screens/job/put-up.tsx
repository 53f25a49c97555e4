import type { Job } from '../../job/job';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import * as words from './put-up-words';

type PutUpProps = { readonly bench: Pick<Bench, 'shelf' | 'folded' | 'go'>; readonly job: Job };

/** What a job was begun with and ends with: notes of the job before while nothing is cut, labels, the look back. */
export function PutUp({ bench, job }: PutUpProps) {
  const before = bench.shelf.jobs.value.find(
    (line) => line.id !== job.id && line.deleted === undefined && line.next,
  );
  const isNew = bench.folded.value.ticks.size === 0;
  return (
    <>
      {isNew && before?.next && (
        <section class="pad-x" aria-label={words.fromLast(before.name)}>
          <h2 class="sec">{words.fromLast(before.name)}</h2>
          <ul class="problems">
            {before.next.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </section>
      )}
      {job.cases.length + job.banks.length > 0 && (
        <>
          <Row label={words.labels} onTap={() => bench.go({ at: 'labels' })} />
          <Row label={words.lookBack} onTap={() => bench.go({ at: 'lookback' })} />
        </>
      )}
    </>
  );
}

const Row = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <button type="button" class="sect" onClick={onTap}>
    <b>{label}</b>
    <Icon name="next" />
  </button>
);
