import { useState } from 'preact/hooks';
import type { Shop, ShopField } from '../../trade/machines/shop';
import { Bar } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { leave } from '../shared/leave';
import { shopFields } from '../shared/shop-field-words';
import { kinds } from './figure-kinds';
import { OwnMachines } from './own-machines';
import * as words from './shop-words';
import { StackBox } from './stack-box';
import { TapesTold } from './tapes-told';
import { ToolOrder } from './tool-order';

/** Figures of the shop's own tools: measured once, used by every job. */
export function ShopScreen({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<ShopField>();
  const shop = bench.shop.value;
  return (
    <>
      <Bar
        title={words.title}
        sub={words.under}
        leave={{ label: words.back, onTap: () => leave(bench, { at: 'job' }) }}
      />
      <main class={open ? 'page docked' : 'page'}>
        {bench.settings.value.figuresFrom === 'sample' && (
          <p class="pad-x note">
            {words.cameWithSample}{' '}
            <Chip label={words.mine} onTap={() => void bench.keep({ figuresFrom: 'own' })} />
          </p>
        )}
        <ToolOrder bench={bench} />
        <OwnMachines bench={bench} />
        <StackBox bench={bench} />
        {words.groups.map(({ title, fields }) => (
          <Group key={title} title={title} fields={fields} shop={shop} onOpen={setOpen} />
        ))}
        <TapesTold bench={bench} />
      </main>
      {open && (
        <KeySheet
          key={open}
          title={shopFields[open]}
          tape="1/64"
          fill="length"
          kind={kinds[open]}
          now={shop[open]}
          signed={open === 'stepError'}
          onLength={(value) => void bench.keepShop(open, value)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type GroupProps = {
  readonly title: string;
  readonly fields: readonly ShopField[];
  readonly shop: Shop;
  readonly onOpen: (field: ShopField) => void;
};

/** The figures of one machine. */
const Group = ({ title, fields, shop, onOpen }: GroupProps) => (
  <section>
    <div class="sechead">
      <h2 class="sec">{title}</h2>
    </div>
    <ul>
      {fields.map((field) => (
        <li key={field}>
          <button type="button" class="nextset" onClick={() => onOpen(field)}>
            <span class="grow">{shopFields[field]}</span>
            {shop[field] ? (
              <Given value={shop[field]} asMade={field.startsWith('slide') && !field.startsWith('sliding')} />
            ) : (
              <span class="muted">{words.notMeasured(field)}</span>
            )}
          </button>
        </li>
      ))}
    </ul>
  </section>
);
