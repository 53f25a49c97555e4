import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { KeptLine } from './kept-line';
import { LeftClosed } from './left-closed';
import * as words from './words';
import './job.css';

type FirstProps = {
  readonly bench: Bench;
  /** What begins a job: it comes in a file of its own. */
  readonly begin: Readonly<Record<'board' | 'case', (bench: Bench) => Promise<void>>>;
};

/** Before any job: four things to tap. */
export function First({ bench, begin }: FirstProps) {
  return (
    <main class="page first">
      <h1>{words.app}</h1>
      <LeftClosed bench={bench} />
      <p>{words.purpose}</p>
      {bench.phone.home.at() === 'home-screen' && bench.shelf.jobs.value.length === 0 && (
        <p class="bring">
          {words.usedInBrowser}
          <a class="btn" href="#/import">
            {words.bringCopyIn}
          </a>
        </p>
      )}
      <a class="btn main big" href="#/figure">
        <Icon name="figure" />
        {words.sum}
      </a>
      <Button look="big" icon="job" label={words.workOutCase} onTap={() => void begin.case(bench)} />
      <Button look="big" icon="marks" label={words.layOutBoard} onTap={() => void begin.board(bench)} />
      <Button look="big" icon="job" label={words.openSample} onTap={() => void bench.incoming.openSample()} />
      <KeptLine phone={bench.phone} />
      <p class="note">
        <a href="#/import">{words.bringJobIn}</a> · <a href="#/jobs">{words.allJobs}</a> ·{' '}
        <a href="#/phone">{words.thisPhone}</a>
      </p>
    </main>
  );
}
