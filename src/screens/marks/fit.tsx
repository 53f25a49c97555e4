import { useState } from 'preact/hooks';
import { editRun } from '../../job/edits';
import { inches } from '../../length/length';
import { writeDecimal, writeLength } from '../../length/write';
import { sheetsOf } from '../../plan/measured-sheets';
import { clearances, type Fit, fitFrom } from '../../trade/grooves/fit';
import { Bar } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { ChoiceDock } from '../../ui/dock';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { NoBoard } from '../shared/no-board';
import { useLength, useLengths, useStays } from '../shared/stays';
import { fitErrorText } from './fit-words';

const kinds = [
  { value: 'gluedSnug', label: 'glued, snug', hint: '0.003 over the thickest' },
  { value: 'glued', label: 'glued', hint: '0.005 over' },
  { value: 'gluedEasy', label: 'glued, easy', hint: '0.008 over' },
  { value: 'slides', label: 'slides', hint: '1/32 over: trays' },
  { value: 'slidesEasy', label: 'slides easily', hint: '1/16 over; after finish add two films' },
] as const;

type Kind = (typeof kinds)[number]['value'];
/** Stands among the ids of sheets for readings given on this screen. */
const here = '-';
type Open = 'sheet' | 'kind' | 'other' | number | undefined;

/** Groove width from a sheet as measured: the thickest reading and a clearance. */
export function FitScreen({
  bench,
  id,
  groove,
}: {
  readonly bench: Bench;
  readonly id: string;
  readonly groove: string;
}) {
  const job = bench.job.value;
  const board = job?.boards.find((b) => b.id === id);
  const run = board?.runs.find((r) => r.id === groove);
  const sheets = sheetsOf(job);
  const [sheet, setSheet] = useStays(
    `fit sheet ${groove}`,
    [here, ...sheets.map((s) => s.id)],
    sheets[0]?.id ?? here,
  );
  const [own, setOwn] = useLengths(`fit readings ${groove}`);
  const [kind, setKind] = useStays<Kind>(
    `fit kind ${groove}`,
    kinds.map(({ value }) => value),
    'glued',
  );
  const [other, setOther] = useLength(`fit clearance ${groove}`);
  const [open, setOpen] = useState<Open>();
  if (!job || !board || !run) return <NoBoard bench={bench} />;
  const readings = job.stock.find((s) => s.id === sheet)?.readings ?? own;
  const clearance = other ?? clearances[kind];
  const fit = fitFrom(readings, clearance, kind.startsWith('glued'));
  const back = () => bench.go({ at: 'change', board: id });
  return (
    <>
      <Bar title="Fit to a sheet" sub={board.name} leave={{ label: 'Back', onTap: back }} />
      <main class={open ? 'page docked' : 'page'}>
        <div class="fillin">
          The parts are from{' '}
          <Blank label="Which sheet" choice open={open === 'sheet'} onTap={() => setOpen('sheet')}>
            {sheets.find((s) => s.id === sheet)?.name ?? 'readings here'}
          </Blank>
          {sheet === here && (
            <>
              {' '}
              reading{' '}
              {[...own, undefined].map((reading, k) => (
                <Blank
                  key={k}
                  label={reading ? `Reading ${k + 1}` : 'Another reading'}
                  open={open === k}
                  onTap={() => setOpen(k)}
                >
                  {reading && writeDecimal(reading)}
                </Blank>
              ))}
            </>
          )}
          . They are{' '}
          <Blank label="How they fit" choice open={open === 'kind'} onTap={() => setOpen('kind')}>
            {kinds.find((k) => k.value === kind)?.label}
          </Blank>
          , with{' '}
          <Blank label="Clearance over the thickest" open={open === 'other'} onTap={() => setOpen('other')}>
            {writeDecimal(clearance)}
          </Blank>{' '}
          of clearance.
        </div>
        {fit.ok ? <FitFound fit={fit.value} /> : <p class="pad-x note">{fitErrorText(fit.error)}</p>}
      </main>
      <div class="fixedbar">
        <button
          type="button"
          class="btn main"
          aria-disabled={!fit.ok}
          onClick={() => {
            if (!fit.ok) return;
            void bench
              .act('Groove width from the sheet', editRun(id, groove, { width: fit.value.width }))
              .then(back);
          }}
        >
          {fit.ok ? `Cut grooves ${writeDecimal(fit.value.width)} wide` : 'Give a reading first'}
        </button>
      </div>
      {open === 'sheet' && (
        <ChoiceDock
          title="Which sheet"
          choices={[
            ...sheets.map((s) => ({ value: s.id, label: s.name, hint: s.says })),
            { value: here, label: 'readings given here' },
          ]}
          chosen={sheet}
          onChoose={(value: string) => {
            setSheet(value);
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'kind' && (
        <ChoiceDock
          title="How the parts fit (common practice)"
          choices={kinds}
          chosen={kind}
          onChoose={(value) => {
            setKind(value);
            setOther(undefined);
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'other' && (
        <KeySheet
          title="Clearance over the thickest"
          tape="1/64"
          fill="length"
          now={clearance}
          onLength={setOther}
          onClose={() => setOpen(undefined)}
        />
      )}
      {typeof open === 'number' && (
        <KeySheet
          key={open}
          title={own[open] ? `Reading ${open + 1}` : 'Another reading'}
          tape="1/64"
          fill="length"
          now={own[open]}
          onLength={(value) =>
            setOwn([...own.slice(0, open), ...(value ? [value] : []), ...own.slice(open + 1)])
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

function FitFound({ fit }: { readonly fit: Fit }) {
  return (
    <section class="pad-x facts" aria-live="polite">
      <div class="marked">
        <span class="note">Groove, for the stack</span>
        <Mixed value={fit.width} size="arm" tape="0.001" />
        <span class="note">
          For a mark, nearest 64th: {writeLength(fit.nearest64.value)}. Never set a stack from the 64th.
        </span>
      </div>
      <p class="fact">
        At the thinnest, {writeDecimal(fit.thinnest)}, the play is {writeDecimal(fit.loosest)}.
      </p>
      {fit.wideSpread && (
        <p class="fact warn">
          The readings spread by {writeDecimal(fit.spread)}, more than {writeLength(inches(1n, 64n))}: two
          lots, perhaps, or measured over fuzz.
        </p>
      )}
      {fit.weakGlueLine && !fit.groups && (
        <p class="fact warn">Play over 0.015 makes a weak glue line: take less clearance.</p>
      )}
      {fit.groups && (
        <p class="fact warn">
          Play over 0.015 makes a weak glue line. Two stacks would do better: one for{' '}
          {fit.groups[0].map(writeDecimal).join(', ')}, one for {fit.groups[1].map(writeDecimal).join(', ')}.
        </p>
      )}
    </section>
  );
}
