import { useState } from 'preact/hooks';
import { editReading, editStock } from '../../job/edits';
import type { Stock } from '../../job/job';
import { less, longest } from '../../length/length';
import { writeDecimal, writeLength } from '../../length/write';
import { sheetOf } from '../../plan/measured-sheets';
import { isBegun } from '../../plan/progress';
import { leastSpreadToWarn } from '../../trade/grooves/fit';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock, TextDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { StockSlip } from '../shared/stock-slip';
import { UndoButton } from '../shared/undo-button';
import { InUse } from './in-use';
import { Offcuts } from './offcuts';

/** A sheet as measured: a set of readings, not one number. */
export function StockScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<'name' | 'planned' | Reading | Ask>();
  const job = bench.job.value;
  const stock = job?.stock.find((s) => s.id === id);
  const leave = () => bench.go({ at: 'job' });
  if (!job || !stock) {
    return <Bar title="Sheet" leave={{ label: 'Job', word: true, onTap: leave }} />;
  }
  const [sheet] = sheetOf(stock);
  const begun = job.sheets.some((s) => s.stock === id && isBegun(s, bench.folded.value));
  const { readings, readingIds } = stock;
  const next = (): Reading => ({ id: bench.newId(), no: readings.length + 1 });
  return (
    <>
      <Bar title={stock.name || 'Sheet'} sub="by calipers" leave={{ label: 'Job', onTap: leave }}>
        <UndoButton bench={bench} wordless />
        <BarButton label="Name" boxed onTap={() => setOpen('name')} />
      </Bar>
      <main class={open === undefined ? 'page' : 'page docked'}>
        <p class="pad-x empty-line">
          Put calipers on the sheet you will cut, near two corners and the middle: four places at least.
        </p>
        <Caution bench={bench} code="old-finish" />
        <ol class="readings">
          {readings.map((reading, k) => (
            <li key={readingIds[k]}>
              <button
                type="button"
                class="nextset"
                onClick={() => setOpen({ id: readingIds[k] ?? '', no: k + 1 })}
              >
                <b class="grow">Reading {k + 1}</b>
                <span class="dec reading-big">{writeDecimal(reading)}</span>
              </button>
            </li>
          ))}
        </ol>
        <div class="pad-x">
          <button
            type="button"
            class={readings.length < 4 ? 'btn main full' : 'btn full'}
            onClick={() => setOpen(next())}
          >
            <Icon name="measure" />
            {readings.length === 0 ? 'First reading' : 'Another reading'}
          </button>
        </div>
        {sheet && (
          <section class="pad-x facts">
            <div class="marked">
              <span class="note">Thickest: parts and stacks go by this</span>
              <Mixed value={sheet.thickest} size="arm" tape="0.001" />
            </div>
            <p class="fact">
              Thinnest {writeDecimal(sheet.thinnest)}, spread {writeDecimal(sheet.spread)}.
            </p>
            {less(leastSpreadToWarn, sheet.spread) && (
              <p class="fact warn">
                <Icon name="warn" />A spread over {writeLength(leastSpreadToWarn)} is two lots, perhaps, or
                measured over fuzz.
              </p>
            )}
          </section>
        )}
        <div class="pad-x segs">
          <Segment
            label="What it is"
            choices={(['sheet', 'stick'] as const).map((kind) => ({
              label: kind === 'sheet' ? 'A sheet' : 'A stick or board',
              chosen: stock.kind === kind,
              onTap: () => void bench.act(`${stock.name} is a ${kind}`, editStock(id, { kind })),
            }))}
          />
        </div>
        <StockSlip
          {...{
            bench,
            stock,
            open: typeof open === 'object' && 'as' in open ? open : undefined,
            onOpen: setOpen,
          }}
        />
        <InUse bench={bench} stock={stock} onPlanned={() => setOpen('planned')} />
        <Offcuts bench={bench} stock={stock} />
        <div class="pad-x adds">
          {begun ? (
            <p class="note">Sheets of it are being cut: it stays on the list.</p>
          ) : (
            <button
              type="button"
              class="btn quiet"
              onClick={() => {
                void bench.act(`${stock.name || 'Sheet'} removed`, editStock(id, { gone: true }));
                leave();
              }}
            >
              Remove this sheet
            </button>
          )}
        </div>
      </main>
      {open === 'name' && (
        <TextDock
          title="Name of the sheet"
          now={stock.name}
          onDone={(name) => void bench.act('Sheet named', editStock(id, { name }))}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'planned' && (
        <KeySheet
          title="Planned thickness, until it is measured"
          tape="1/64"
          fill="length"
          now={stock.planned}
          onLength={(planned) => void bench.act('Planned thickness', editStock(id, { planned }))}
          onClose={() => setOpen(undefined)}
        />
      )}
      {typeof open === 'object' && 'as' in open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
      {typeof open === 'object' && 'no' in open && (
        <ReadingSheet key={open.id} {...{ bench, stock }} reading={open} onClose={() => setOpen(undefined)} />
      )}
    </>
  );
}

/** A reading is kept by an id of its own: what is added or changed beside it is not touched. */
type Reading = { readonly id: string; readonly no: number };

type ReadingProps = {
  readonly bench: Bench;
  readonly stock: Stock;
  readonly reading: Reading;
  readonly onClose: () => void;
};

function ReadingSheet({ bench, stock, reading: { id, no }, onClose }: ReadingProps) {
  return (
    <KeySheet
      title={`Reading ${no}`}
      tape="1/64"
      fill="length"
      now={stock.readings[stock.readingIds.indexOf(id)]}
      onLength={(size) =>
        void bench.act(`Reading ${no}`, [
          ...editReading(stock.id, id, size ? { size } : { gone: true }),
          // the first reading of a sheet nothing was planned for changes nothing: it is taken up at once
          ...(size && !stock.used && !stock.planned
            ? editStock(stock.id, { used: longest(size, ...stock.readings) })
            : []),
        ])
      }
      onClose={onClose}
    />
  );
}
