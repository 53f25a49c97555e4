import { useState } from 'preact/hooks';
import type { ShopField } from '../../trade/grooves/settings';
import { Bar } from '../../ui/bar';
import { KeySheet } from '../../ui/key-sheet';
import { Given } from '../../ui/mixed';
import type { Bench } from '../bench';
import { shopFields } from '../shared/layout-words';
import { leave } from '../shared/leave';
import { StackBox } from '../shared/stack-box';

const groups: readonly { readonly title: string; readonly fields: readonly ShopField[] }[] = [
  { title: 'Table saw', fields: ['single', 'block', 'capacity'] },
  { title: 'Crosscut', fields: ['stopReach', 'stepError'] },
  { title: 'Router', fields: ['routerBase', 'bit'] },
  { title: 'Circular saw', fields: ['kerf', 'shoeKeep', 'shoeWaste'] },
  { title: 'Passes', fields: ['overlap'] },
  { title: 'Slides', fields: ['slideThickness', 'slideHeight', 'slideLength'] },
];

/** Figures of the shop's own tools: measured once, used by every job. */
export function ShopScreen({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<ShopField>();
  const shop = bench.shop.value;
  return (
    <>
      <Bar
        title="Shop figures"
        sub="measured once, for every job"
        leave={{ label: 'Back', onTap: () => leave(bench, { at: 'job' }) }}
      />
      <main class={open ? 'page docked' : 'page'}>
        {bench.settings.value.figuresFrom === 'sample' && (
          <p class="pad-x note">
            Figures came with the sample job where this phone had none. Measure your own before you cut by
            them.{' '}
            <button type="button" class="chip" onClick={() => void bench.keep({ figuresFrom: 'own' })}>
              They are mine
            </button>
          </p>
        )}
        <StackBox bench={bench} />
        {groups.map(({ title, fields }) => (
          <section key={title}>
            <div class="sechead">
              <h2 class="sec">{title}</h2>
            </div>
            <ul>
              {fields.map((field) => (
                <li key={field}>
                  <button type="button" class="nextset" onClick={() => setOpen(field)}>
                    <span class="grow">{shopFields[field]}</span>
                    {shop[field] ? (
                      <Given value={shop[field]} />
                    ) : (
                      <span class="muted">{field === 'overlap' ? '1/16, usual' : 'not measured'}</span>
                    )}
                  </button>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </main>
      {open && (
        <KeySheet
          key={open}
          title={shopFields[open]}
          tape="1/64"
          fill="length"
          now={shop[open]}
          signed={open === 'stepError'}
          onLength={(value) => void bench.keepShop(open, value)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}
