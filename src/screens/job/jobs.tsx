import { useState } from 'preact/hooks';
import { Bar, BarButton } from '../../ui/bar';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import { Icon } from '../../ui/icon';
import type { Bench, JobLine } from '../bench';
import { TextDock } from '../shared/ask-dock';
import { CopyOut } from './copy-out';
import * as words from './jobs-words';
import { LeftClosed } from './left-closed';

/** A new job is being named; or, where it is begun like the one in hand, what goes along is chosen first. */
type Naming = 'choose' | { readonly like?: { readonly readings: boolean } };

/** All jobs on this phone, and the deleted ones that can still come back. */
export function JobsScreen({ bench }: { readonly bench: Bench }) {
  const [naming, setNaming] = useState<Naming>();
  const { jobs, newJob, openJob, bringBack } = bench.shelf;
  const alive = jobs.value.filter((line) => line.deleted === undefined);
  const deleted = jobs.value.filter((line) => line.deleted !== undefined);
  const toJob = () => bench.go({ at: 'job' });
  return (
    <>
      <Bar title={words.title}>
        <BarButton icon="plus" label={words.newJob} boxed onTap={() => setNaming({})} />
      </Bar>
      <main class="page">
        <LeftClosed bench={bench} />
        {alive.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
        <Alive lines={alive} inHand={bench.job.value?.id} onOpen={(id) => void openJob(id).then(toJob)} />
        <Adds bench={bench} onLike={() => setNaming('choose')} />
        {deleted.length > 0 && (
          <Deleted lines={deleted} onBringBack={(id) => void bringBack(id).then(toJob)} />
        )}
      </main>
      {naming === 'choose' && (
        <Along
          onChoose={(readings) => setNaming({ like: { readings } })}
          onClose={() => setNaming(undefined)}
        />
      )}
      {typeof naming === 'object' && (
        <TextDock
          title={words.newName}
          now=""
          most={120}
          onDone={(name) => void newJob(name, naming.like).then(toJob)}
          onClose={() => setNaming(undefined)}
        />
      )}
    </>
  );
}

type AlongProps = { readonly onChoose: (readings: boolean) => void; readonly onClose: () => void };

const Along = ({ onChoose, onClose }: AlongProps) => (
  <ChoiceDock
    title={words.takeAlong}
    choices={[
      { value: 'decided', label: words.decided, hint: words.decidedHint },
      { value: 'readings', label: words.readings, hint: words.readingsHint },
    ]}
    chosen={undefined}
    onChoose={(value) => onChoose(value === 'readings')}
    onClose={onClose}
  />
);

type AliveProps = {
  readonly lines: readonly JobLine[];
  /** Id of the job in hand. */
  readonly inHand: string | undefined;
  readonly onOpen: (id: string) => void;
};

const Alive = ({ lines, inHand, onOpen }: AliveProps) => (
  <ul>
    {lines.map(({ id, name, place }) => (
      <li key={id}>
        <button type="button" class="sect" aria-current={id === inHand} onClick={() => onOpen(id)}>
          <b>{name || words.nameless}</b>
          <span class="muted s">{id === inHand ? words.inHand : ''}</span>
          {place && <span class="muted s">{place}</span>}
        </button>
      </li>
    ))}
  </ul>
);

/** What can be done beside opening one. */
function Adds({ bench, onLike }: { readonly bench: Bench; readonly onLike: () => void }) {
  const job = bench.job.value;
  return (
    <div class="pad-x adds">
      <Button label={words.bringIn} onTap={() => bench.go({ at: 'import' })} />
      <CopyOut copies={bench.incoming.copies.value} />
      <Button label={words.openSample} onTap={() => void bench.incoming.openSample()} />
      {job && (
        <>
          <Button label={words.beginLike} onTap={onLike} />
          <Button label={words.deleteJob(job.name)} look="quiet" onTap={() => void bench.shelf.deleteJob()} />
        </>
      )}
    </div>
  );
}

type DeletedProps = { readonly lines: readonly JobLine[]; readonly onBringBack: (id: string) => void };

const Deleted = ({ lines, onBringBack }: DeletedProps) => (
  <>
    <div class="sechead">
      <h2 class="sec">{words.deleted}</h2>
    </div>
    <p class="pad-x note">{words.comeBack}</p>
    <ul>
      {lines.map(({ id, name }) => (
        <li key={id} class="sect">
          <b>{name || words.nameless}</b>
          <button type="button" class="chip" onClick={() => onBringBack(id)}>
            <Icon name="undo" />
            {words.bringBack}
          </button>
        </li>
      ))}
    </ul>
  </>
);
