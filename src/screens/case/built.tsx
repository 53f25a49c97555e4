import { useState } from 'preact/hooks';
import { editBuilt } from '../../job/edits';
import { fineOf } from '../../length/tape';
import type { Built, Case } from '../../trade/carcass/case';
import type { Worked } from '../../trade/carcass/parts';
import { Bar } from '../../ui/bar';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { Caution } from '../shared/caution';
import { Diagonals } from '../shared/diagonals';
import { GonePage } from '../shared/gone-page';
import { UndoButton } from '../shared/undo-button';
import * as words from './built-words';
import { FourPins } from './four-pins';
import { OpeningRows, type Place } from './opening-rows';
import { type Opening, openingsOf } from './openings';
import { pages, title } from './words';

/** As-built rows beside planned; a measure flows nowhere until it is taken up. */
export function BuiltScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const found = plan?.worked.get(id);
  const c = plan?.job.cases.find((x) => x.id === id);
  if (c && found?.ok) return <BuiltInHand bench={bench} c={c} worked={found.value} />;
  return <GonePage title={pages.built} leave={leaveTo(bench, id)} says={words.toWorkOut} />;
}

const leaveTo = (bench: Bench, id: string) => ({
  label: words.back,
  onTap: () => bench.go({ at: 'case', id }),
});

type InHandProps = { readonly bench: Bench; readonly c: Case; readonly worked: Worked };

/** What is keyed in below: a place of an opening, or a diagonal. */
type Open = { readonly opening: Opening; readonly place: Place } | Ask;

function BuiltInHand({ bench, c, worked }: InHandProps) {
  const [open, setOpen] = useState<Open>();
  const at = open && 'opening' in open ? open : undefined;
  const readings = (opening: Opening): Built => c.built[opening.key] ?? {};
  return (
    <>
      <Bar title={pages.built} sub={c.name || title} leave={leaveTo(bench, c.id)}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">{words.how}</p>
        <Caution bench={bench} code="as-built" />
        <Diagonals {...{ bench, worked }} open={open && 'as' in open ? open : undefined} onOpen={setOpen} />
        {openingsOf(worked).map((opening) => {
          const Rows = opening.planned ? OpeningRows : FourPins;
          return (
            <Rows
              key={opening.key}
              {...{ bench, id: c.id, opening }}
              built={readings(opening)}
              onOpen={(place) => setOpen({ opening, place })}
            />
          );
        })}
      </main>
      {at && (
        <KeySheet
          key={`${at.opening.key}${at.place}`}
          title={words.placeOf(at.opening.name, words.placeNames(at.opening.across)[at.place])}
          tape={fineOf(bench.job.value?.tape ?? '1/32')}
          fill="length"
          kind="length"
          now={readings(at.opening)[at.place]}
          onLength={(value) =>
            void bench.act(
              words.measured(at.opening.name, words.placeNames(at.opening.across)[at.place]),
              editBuilt(c.id, at.opening.key, { [at.place]: value }),
            )
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}
