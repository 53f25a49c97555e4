import { placeOfCode } from '../../job/place-code';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { GonePage } from '../shared/gone-page';
import { leave } from '../shared/leave';
import { placeWord } from '../shared/noted-words';
import { UndoButton } from '../shared/undo-button';
import { AtPlace } from './at-place';
import { OfJob } from './of-job';
import * as words from './words';
import '../shared/rows.css';

type PicturesProps = { readonly bench: Bench; readonly of: string | undefined };

/** Notes and pictures: of one place, or of the whole job. */
export function PicturesScreen({ bench, of }: PicturesProps) {
  const job = bench.job.value;
  const toJob = { label: words.toJob, word: true, onTap: () => bench.go({ at: 'job' }) };
  if (!job) return <GonePage title={words.title} leave={toJob} says={words.noJob} />;
  const place = of === undefined ? undefined : placeOfCode(of);
  const goBack = { label: words.back, onTap: () => leave(bench, { at: 'pictures' }) };
  return (
    <>
      <Bar
        title={words.title}
        sub={place ? placeWord(place, bench.plan.value) : job.name}
        leave={place ? goBack : toJob}
      >
        <UndoButton bench={bench} wordless />
      </Bar>
      <main class="page">
        {place ? <AtPlace {...{ bench, job, place }} /> : <OfJob bench={bench} job={job} />}
      </main>
    </>
  );
}
