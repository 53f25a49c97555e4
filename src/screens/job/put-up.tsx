import type { Job } from '../../job/job';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { LastNotes } from '../shared/last-notes';
import { failed } from '../shared/last-notes-words';
import * as words from './put-up-words';

type PutUpProps = { readonly bench: Pick<Bench, 'shelf' | 'folded' | 'go' | 'act'>; readonly job: Job };

/** What a job was begun with and ends with: notes of the job before while nothing is cut, labels, the look back. */
export function PutUp({ bench, job }: PutUpProps) {
  const { failed: said } = job.year;
  return (
    <>
      <LastNotes bench={bench} job={job} />
      {said && bench.folded.value.ticks.size === 0 && (
        <section class="pad-x" aria-label={failed}>
          <h2 class="sec">{failed}</h2>
          <p>{said}</p>
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
