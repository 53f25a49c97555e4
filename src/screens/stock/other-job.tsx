import { useState } from 'preact/hooks';
import type { Stock } from '../../job/job';
import { readingsFrom } from '../../plan/readings';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import * as words from './other-job-words';

type Props = {
  readonly bench: Bench;
  readonly stock: Stock;
  /** Something of it is cut. */
  readonly cut: boolean;
};

/** A sheet left over from another job was measured there: its readings are taken here by a tap. */
export function OtherJob({ bench, stock, cut }: Props) {
  const [open, setOpen] = useState<'jobs' | readonly Stock[]>();
  const others = bench.shelf.jobs.value.filter(
    ({ id, deleted }) => deleted === undefined && id !== bench.job.value?.id,
  );
  if (others.length === 0) return null;
  const close = () => setOpen(undefined);
  const measured = async (job: string) =>
    setOpen((await bench.shelf.stockOf(job)).filter(({ readings }) => readings.length > 0));
  const take = (other: Stock) => {
    void bench.act(words.taken(other.name), readingsFrom(stock, other, { cut, newId: bench.newId }));
    close();
  };
  return (
    <div class="pad-x adds">
      <Button label={words.take} onTap={() => setOpen('jobs')} />
      {open !== 'jobs' && open?.length === 0 && <p role="alert">{words.noneMeasured}</p>}
      {open === 'jobs' && (
        <ChoiceDock
          title={words.whichJob}
          choices={others.map(({ id, name, place }) => ({
            value: id,
            label: name || words.nameless,
            ...(place ? { hint: place } : {}),
          }))}
          chosen={undefined}
          onChoose={(id) => void measured(id)}
          onClose={close}
        />
      )}
      {open !== 'jobs' && open && open.length > 0 && (
        <ChoiceDock
          key="stock"
          title={words.whichSheet}
          choices={open.map(({ id, name, readings }) => ({
            value: id,
            label: name || words.sheet,
            hint: words.readAs(readings.map(closely)),
          }))}
          chosen={undefined}
          onChoose={(id) => open.filter((one) => one.id === id).forEach(take)}
          onClose={close}
        />
      )}
    </div>
  );
}
