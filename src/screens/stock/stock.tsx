import { useState } from 'preact/hooks';
import { editStock } from '../../job/edits';
import type { Job, Stock } from '../../job/job';
import { equals } from '../../length/length';
import { greatestOf } from '../../plan/greatest';
import { sheetOf } from '../../plan/measured-sheets';
import { stuffOf } from '../../plan/parts-of-job';
import type { Plan } from '../../plan/plan';
import { isBegun } from '../../plan/progress';
import { isCutOf } from '../../plan/readings';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import type { Ask } from '../shared/ask';
import { AskDock, TextDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { StockSlip } from '../shared/stock-slip';
import { UndoButton } from '../shared/undo-button';
import { InUse } from './in-use';
import { Offcuts } from './offcuts';
import { OtherJob } from './other-job';
import { ReadChanges } from './read-changes';
import { type Reading, ReadingSheet, Readings, Spread } from './readings';
import { StuffSlip } from './stuff';
import * as words from './words';

type StockProps = {
  readonly bench: Bench;
  readonly id: string;
  /** The case or drawers it is measured for: the page comes back to them. */
  readonly of?: string | undefined;
};

/** A sheet as measured: a set of readings, not one number. */
export function StockScreen({ bench, id, of }: StockProps) {
  const job = bench.job.value;
  const stock = job?.stock.find((s) => s.id === id);
  if (!job || !stock) {
    const leave = () => bench.go({ at: 'job' });
    return <Bar title={words.sheet} leave={{ label: words.back, word: true, onTap: leave }} />;
  }
  return <Sheet bench={bench} job={job} stock={stock} back={backTo(job, of)} />;
}

type Back = { readonly label: string; readonly form?: string; readonly route: Route };

/** The form it is measured for, else the job. */
function backTo({ cases, banks }: Job, of: string | undefined): Back {
  const c = cases.find((x) => x.id === of);
  if (c) return { label: words.toCase, form: words.backTo(c.name), route: { at: 'case', id: c.id } };
  const bank = banks.find((x) => x.id === of);
  if (bank)
    return {
      label: words.toDrawers,
      form: words.backTo(bank.name),
      route: { at: 'bank', id: bank.id, page: 'wood' },
    };
  return { label: words.back, route: { at: 'job' } };
}

/** What is keyed in below: a name, a thickness, a reading, or a blank of the slip. */
type Open = 'name' | 'planned' | Reading | Ask;

type SheetProps = { readonly bench: Bench; readonly job: Job; readonly stock: Stock };
type PageProps = SheetProps & { readonly back: Back };

function Sheet({ bench, job, stock, back }: PageProps) {
  const [open, setOpen] = useState<Open>();
  const [sheet] = sheetOf(stock, job.tape);
  const cut = isAnyCut(bench, stock);
  const [was, setWas] = useState<Plan>();
  const openReading = (reading: Reading) => {
    setWas(was ?? bench.plan.value);
    setOpen(reading);
  };
  const leave = () => bench.go(back.route);
  const ask = typeof open === 'object' && 'as' in open ? open : undefined;
  return (
    <>
      <Bar title={stock.name || words.sheet} sub={words.under} leave={{ label: back.label, onTap: leave }}>
        <UndoButton bench={bench} wordless />
        <BarButton label={words.name} boxed onTap={() => setOpen('name')} />
      </Bar>
      <main class={open === undefined ? 'page' : 'page docked'}>
        {stock.readings.length < 4 && <p class="pad-x empty-line">{words.how}</p>}
        <Caution bench={bench} code="old-finish" />
        <Readings stock={stock} newId={bench.newId} onOpen={openReading} />
        <OtherJob bench={bench} stock={stock} cut={cut} />
        {was && <ReadChanges {...{ bench, was }} stock={stock.id} />}
        {sheet && <Spread sheet={sheet} inUse={isInUse(stock)} />}
        <InUse bench={bench} stock={stock} cut={cut} onPlanned={() => setOpen('planned')} />
        <Kind stock={stock} act={bench.act} />
        <StockSlip bench={bench} stock={stock} open={ask} onOpen={setOpen} />
        <StuffSlip stock={stock} open={ask} onOpen={setOpen} />
        <Offcuts bench={bench} stock={stock} offcuts={job.offcuts} />
        <Remove stock={stock} begun={isAnyBegun(bench, job, stock)} act={bench.act} leave={leave} />
      </main>
      {back.form && (sheet || stock.planned) && <ToForm label={back.form} onTap={leave} />}
      <Docks {...{ bench, job, stock, cut, open }} onClose={() => setOpen(undefined)} />
    </>
  );
}

/** On to the form that asked for the sheet. */
const ToForm = (props: { readonly label: string; readonly onTap: () => void }) => (
  <div class="fixedbar">
    <Onward {...props} />
  </div>
);

const isAnyBegun = ({ folded }: Bench, { sheets }: Job, { id }: Stock): boolean =>
  sheets.some((sheet) => sheet.stock === id && isBegun(sheet, folded.value));

/** Whether any cut is made of it. Before the plan is worked out nothing is known of its parts: any cut may be one. */
const isAnyCut = ({ plan, folded }: Bench, { id }: Stock): boolean =>
  plan.value ? isCutOf(id, plan.value, folded.value) : folded.value.ticks.size > 0;

/** Whether the greatest reading is what parts go by. */
function isInUse(stock: Stock): boolean {
  const [stuff] = stuffOf(stock);
  const read = greatestOf(stock);
  return stuff !== undefined && read !== undefined && equals(stuff.thickness, read);
}

type ActProps = { readonly stock: Stock; readonly act: Bench['act'] };

const Kind = ({ stock, act }: ActProps) => (
  <div class="pad-x segs">
    <Segment
      label={words.whatItIs}
      choices={(['sheet', 'stick'] as const).map((kind) => ({
        label: words.kinds[kind],
        chosen: stock.kind === kind,
        onTap: () => void act(words.kindChosen(stock.name, kind), editStock(stock.id, { kind })),
      }))}
    />
  </div>
);

type RemoveProps = ActProps & { readonly begun: boolean; readonly leave: () => void };

/** Taking it off the list, as long as none of its sheets is being cut. */
const Remove = ({ stock, begun, act, leave }: RemoveProps) => (
  <div class="pad-x adds">
    {begun ? (
      <p class="note">{words.staysListed}</p>
    ) : (
      <Button
        label={words.remove}
        look="quiet"
        onTap={() => {
          void act(words.removed(stock.name), editStock(stock.id, { gone: true }));
          leave();
        }}
      />
    )}
  </div>
);

type DocksProps = SheetProps & {
  readonly cut: boolean;
  readonly open: Open | undefined;
  readonly onClose: () => void;
};

function Docks({ bench: { act }, job, stock, cut, open, onClose }: DocksProps) {
  const { id } = stock;
  if (open === undefined) return null;
  if (open === 'name') {
    const keep = (name: string) => void act(words.named, editStock(id, { name }));
    return <TextDock title={words.nameOfSheet} now={stock.name} onDone={keep} onClose={onClose} />;
  }
  if (open === 'planned') {
    return (
      <KeySheet
        title={words.plannedThickness}
        tape="1/64"
        fill="length"
        kind="thickness"
        now={stock.planned}
        onLength={(planned) => void act(words.plannedGiven, editStock(id, { planned }))}
        onClose={onClose}
      />
    );
  }
  if ('no' in open) return <ReadingSheet key={open.id} {...{ stock, cut, act, onClose }} reading={open} />;
  return <AskDock ask={open} tape={job.tape} act={act} onClose={onClose} />;
}
