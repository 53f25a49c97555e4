import { useState } from 'preact/hooks';
import { editOffcut } from '../../job/edits';
import type { Offcut, Stock } from '../../job/job';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given } from '../../ui/mixed';
import type { Bench } from '../bench';

type OffcutsProps = { readonly bench: Bench; readonly stock: Stock };

/** What is left over of this sheet: a recut looks here first. */
export function Offcuts({ bench, stock }: OffcutsProps) {
  const [open, setOpen] = useState<{ readonly o: Offcut; readonly field: 'length' | 'width' }>();
  const own = (bench.job.value?.offcuts ?? []).filter((o) => o.stock === stock.id);
  const add = async () => {
    const id = bench.newId();
    const done = await bench.act('An offcut', editOffcut(id, { stock: stock.id }));
    if (done) setOpen({ o: { id, stock: stock.id }, field: 'length' });
  };
  const size = (o: Offcut, field: 'length' | 'width', word: string) => (
    <button type="button" class="chip" onClick={() => setOpen({ o, field })}>
      {word} {o[field] ? <Given value={o[field]} /> : '····'}
    </button>
  );
  return (
    <section aria-label="Offcuts">
      <h2 class="sec pad-x">Offcuts of it</h2>
      <ul>
        {own.map((o) => (
          <li key={o.id} class="nextset ascut">
            {size(o, 'length', 'long')}
            {size(o, 'width', 'wide')}
            <button
              type="button"
              class="chip"
              onClick={() => void bench.act('Offcut taken off the list', editOffcut(o.id, { gone: true }))}
            >
              Gone
            </button>
          </li>
        ))}
      </ul>
      <div class="pad-x adds">
        <button type="button" class="btn quiet" onClick={() => void add()}>
          <Icon name="plus" />
          An offcut
        </button>
      </div>
      {open && (
        <KeySheet
          key={`${open.o.id}${open.field}`}
          title={
            open.field === 'length'
              ? 'How long it is, along the face grain'
              : 'How wide it is, across the grain'
          }
          tape="1/64"
          fill="length"
          now={own.find((o) => o.id === open.o.id)?.[open.field]}
          onLength={(value) =>
            void bench.act('Offcut measured', editOffcut(open.o.id, { [open.field]: value }))
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}
