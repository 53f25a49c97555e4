import { useState } from 'preact/hooks';
import { editOffcut } from '../../job/edits';
import type { Offcut, Stock } from '../../job/job';
import type { Length } from '../../length/length';
import { Dots } from '../../ui/blank';
import { Button, Chip } from '../../ui/button';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import * as words from './words';

type OffcutsProps = {
  readonly bench: Bench;
  readonly stock: Stock;
  /** Those of the whole job. */
  readonly offcuts: readonly Offcut[];
};
type Size = 'length' | 'width';

/** What is left over of this sheet: a recut looks here first. */
export function Offcuts({ bench, stock, offcuts }: OffcutsProps) {
  const [open, setOpen] = useState<{ readonly id: string; readonly size: Size }>();
  const own = offcuts.filter((o) => o.stock === stock.id);
  const add = async () => {
    const id = bench.newId();
    const done = await bench.act(words.anOffcut, editOffcut(id, { stock: stock.id }));
    if (done) setOpen({ id, size: 'length' });
  };
  return (
    <section aria-label={words.offcuts}>
      <h2 class="sec pad-x">{words.offcutsOfIt}</h2>
      <ul>
        {own.map((o) => (
          <OffcutLine key={o.id} offcut={o} onSize={(size) => setOpen({ id: o.id, size })} act={bench.act} />
        ))}
      </ul>
      <div class="pad-x adds">
        <Button label={words.anOffcut} look="quiet" icon="plus" onTap={() => void add()} />
      </div>
      {open && (
        <SizeSheet
          key={`${open.id}${open.size}`}
          size={open.size}
          now={own.find((o) => o.id === open.id)?.[open.size]}
          onLength={(value) =>
            void bench.act(words.offcutMeasured, editOffcut(open.id, { [open.size]: value }))
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

type LineProps = {
  readonly offcut: Offcut;
  readonly onSize: (size: Size) => void;
  readonly act: Bench['act'];
};

const OffcutLine = ({ offcut, onSize, act }: LineProps) => (
  <li class="nextset ascut">
    {(['length', 'width'] as const).map((size) => (
      <button key={size} type="button" class="chip" onClick={() => onSize(size)}>
        {words.sizes[size]} {offcut[size] ? <Given value={offcut[size]} /> : <Dots />}
      </button>
    ))}
    <Chip
      label={words.gone}
      onTap={() => void act(words.offcutGone, editOffcut(offcut.id, { gone: true }))}
    />
  </li>
);

type SheetProps = {
  readonly size: Size;
  readonly now: Length | undefined;
  readonly onLength: (value: Length | undefined) => void;
  readonly onClose: () => void;
};

const SizeSheet = ({ size, ...rest }: SheetProps) => (
  <KeySheet title={words.sizeAsked[size]} tape="1/64" fill="length" kind="length" {...rest} />
);
