import { useState } from 'preact/hooks';
import { less, longest } from '../../length/length';
import { writeDecimal, writeLength } from '../../length/write';
import { editStock } from '../../store/edits';
import { leastSpreadToWarn } from '../../trade/grooves/fit';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../cautions/caution';
import { type Ask, AskDock, TextDock } from '../marks/ask';
import { isBegun } from '../sheets/progress';
import { StockSlip } from '../sheets/stock-slip';
import { UndoButton } from '../undo-button';
import { InUse } from './in-use';
import { Offcuts } from './offcuts';
import { sheetOf } from './sheets';

/** A sheet as measured: a set of readings, not one number. */
export function StockScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<'name' | 'planned' | number | Ask>();
  const job = bench.job.value;
  const stock = job?.stock.find((s) => s.id === id);
  const leave = () => bench.go({ at: 'job' });
  if (!job || !stock) {
    return <Bar title="Sheet" leave={{ label: 'Job', word: true, onTap: leave }} />;
  }
  const [sheet] = sheetOf(stock);
  const begun = job.sheets.some((s) => s.stock === id && isBegun(s, bench.folded.value));
  const readings = stock.readings;
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
            <li key={k}>
              <button type="button" class="nextset" onClick={() => setOpen(k)}>
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
            onClick={() => setOpen(readings.length)}
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
          {...{ bench, stock, open: typeof open === 'object' ? open : undefined, onOpen: setOpen }}
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
      {typeof open === 'object' && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
      {typeof open === 'number' && (
        <KeySheet
          key={open}
          title={`Reading ${open + 1}`}
          tape="1/64"
          fill="length"
          now={readings[open]}
          onLength={(value) => {
            const rest = [...readings];
            if (value) rest.splice(open, 1, value);
            else rest.splice(open, 1);
            void bench.act(`Reading ${open + 1}`, [
              ...editStock(id, { readings: rest }),
              // the first reading of a sheet nothing was planned for changes nothing: it is taken up at once
              ...(value && !stock.used && !stock.planned
                ? editStock(id, { used: longest(value, ...rest) })
                : []),
            ]);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}
