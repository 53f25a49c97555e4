import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { add, type Length } from '../../length/length';
import { markAt } from '../../length/tape';
import { writeMark } from '../../length/write';
import { throughBack } from '../../trade/carcass/back-how';
import type { Worked } from '../../trade/carcass/parts';
import { Segment } from '../../ui/bar';
import { CaseDrawing } from '../../ui/case-drawing';
import { WhyRow } from '../shared/why-row';
import { frontOf, sectionOf } from './drawn';
import * as words from './words';

type DrawnProps = {
  readonly worked: Worked;
  readonly job: Job;
  readonly stale: boolean;
  readonly onPart: (part: string) => void;
};

/** The case to scale, from the front or cut through, with its clear sizes. */
export function DrawnCase({ worked, job, stale, onPart }: DrawnProps) {
  const [view, setView] = useState<'front' | 'section'>('front');
  const drawing = view === 'front' ? frontOf(worked) : sectionOf(worked);
  const { width, height, plinth } = worked.sizes;
  const across = view === 'front' ? width.value : throughBack(worked.sizes).value;
  const told = (x: Length) => writeMark(markAt(x, job.tape), job.tape);
  const choice = (to: 'front' | 'section') => ({
    label: words.views[to],
    chosen: view === to,
    onTap: () => setView(to),
  });
  return (
    <div class="pad-x drawing">
      <CaseDrawing
        {...drawing}
        stale={stale}
        across={told(across)}
        up={told(add(height.value, plinth))}
        label={words.drawn[view]}
        onPart={onPart}
      />
      {stale && <p class="note">{words.beforeChange}</p>}
      <Segment label={words.view} choices={[choice('front'), choice('section')]} />
      <ClearSizes worked={worked} job={job} stale={stale} />
    </div>
  );
}

const ClearSizes = ({ worked, job, stale }: Omit<DrawnProps, 'onPart'>) => {
  const { bays, clearHeight } = worked.sizes;
  return (
    <ul class={stale ? 'bays stale' : 'bays rests'}>
      {bays.map((bay, k) => (
        <WhyRow key={k} words={words.bayClear(k + 1, bays.length)} sum={bay} tape={job.tape} />
      ))}
      <WhyRow words={words.clearHeight} sum={clearHeight} tape={job.tape} />
    </ul>
  );
};
