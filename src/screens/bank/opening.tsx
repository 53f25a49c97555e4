import { useState } from 'preact/hooks';
import { editColumn, editFitted } from '../../job/edits';
import type { Change } from '../../job/entry';
import { absolute, equals, isZero, type Length, less, subtract } from '../../length/length';
import { fineOf, type Tape } from '../../length/tape';
import { packOver } from '../../trade/boxes/box';
import { type Bank, type Column, columnNo, fittedNo } from '../../trade/fronts/bank';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { Bar } from '../../ui/bar';
import { Dots } from '../../ui/blank';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import { Inline } from '../../ui/mixed';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { againstPlan } from '../shared/plan-words';
import { TakeUp } from '../shared/take-up';
import { UndoButton } from '../shared/undo-button';
import { bankIn, frontIsCut } from './column-of';
import { NoBank } from './fronts';
import type { Place } from './opening-words';
import * as words from './opening-words';
import { column as columnName, frontsProblemText, nameOf, openingMeasured, toFronts } from './words';
import '../shared/places.css';

const places = ['left', 'right', 'front', 'back'] as const satisfies readonly Place[];

const used = {
  left: 'usedLeft',
  right: 'usedRight',
  front: 'usedFront',
  back: 'usedBack',
} as const;

/** Differences over this are lit. */
const lit = (): Length => packOver(unitInHand());

/** The opening of every column as measured; nothing moves until it is used. */
export function OpeningScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Asked>();
  const found = bankIn(bench.plan.value, id);
  if (!found) return <NoBank bench={bench} />;
  const { bank, fronts } = found;
  return (
    <>
      <Bar
        title={openingMeasured}
        sub={nameOf(bank)}
        leave={{ label: toFronts, onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">{words.when}</p>
        {!fronts.ok && <p class="pad-x wrongline">{words.again(fronts.error.map(frontsProblemText))}</p>}
        {Array.from({ length: Math.max(1, bank.across) }, (_, k) => (
          <Rows
            key={k}
            {...{ bench, bank }}
            no={k + 1}
            all={fronts.ok ? fronts.value.columns : []}
            onOpen={(place) => setOpen({ column: k + 1, place })}
          />
        ))}
      </main>
      {open && <Reading {...{ bench, bank }} at={open} onClose={() => setOpen(undefined)} />}
    </>
  );
}

type Asked = { readonly column: number; readonly place: Place };

type ReadingProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly at: Asked;
  readonly onClose: () => void;
};

/** The keys for one reading. */
const Reading = ({ bench, bank, at: { column, place }, onClose }: ReadingProps) => (
  <KeySheet
    key={`${column}${place}`}
    title={words.ask(place)}
    tape={bench.job.value?.tape ?? '1/32'}
    fill="length"
    kind="length"
    now={columnNo(bank, column)[place]}
    onLength={(value) =>
      void bench.act(words.measured(place), editColumn(bank.id, column, { [place]: value }))
    }
    onClose={onClose}
  />
);

type RowsProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly no: number;
  /** The columns as they work out; none while they do not. */
  readonly all: readonly WorkedColumn[];
  readonly onOpen: (place: Place) => void;
};

function Rows({ bench, bank, no, all, onOpen }: RowsProps) {
  const column = all.find((c) => c.no === no);
  const read = columnNo(bank, no);
  const changes = takeUp(bench, bank, { no, all });
  const name = bank.across > 1 ? columnName(no) : words.opening;
  return (
    <section class="opening" aria-label={name}>
      <div class="sechead">
        <h2 class="sec">{name}</h2>
        {column && <Reckoned column={column} tape={fineOf(bench.job.value?.tape ?? '1/32')} />}
      </div>
      <div class="pad-x places">
        {places.map((place) => (
          <PlaceChip key={place} {...{ place, read, column }} onTap={() => onOpen(place)} />
        ))}
      </div>
      <Uneven read={read} />
      {changes.length > 0 && (
        <TakeUp bench={bench} label={words.takenUp} changes={changes}>
          {words.seeChange}
        </TakeUp>
      )}
    </section>
  );
}

const Reckoned = ({ column, tape }: { readonly column: WorkedColumn; readonly tape: Tape }) => (
  <span class="s muted rests">
    {words.reckoned(
      <Inline value={column.opening.wide.value} tape={tape} />,
      <Inline value={column.opening.high.value} tape={tape} />,
    )}
  </span>
);

type PlaceProps = {
  readonly place: Place;
  readonly read: Column;
  readonly column: WorkedColumn | undefined;
  readonly onTap: () => void;
};

/** What was read at one place, or dots for it, and how far it is from what was planned. */
function PlaceChip({ place, read, column, onTap }: PlaceProps) {
  const value = read[place];
  const planned = place === 'left' || place === 'right' ? column?.opening[place] : column?.opening.wide.value;
  return (
    <button type="button" class="chip place-chip" onClick={onTap}>
      <span class="s">{words.placeNames[place]}</span>
      <span>{value ? <Given value={value} /> : <Dots />}</span>
      {value && <Difference value={value} planned={planned} taken={read[used[place]]} />}
    </button>
  );
}

/** What two readings that should be the same differ by. */
function Uneven({ read: { left, right, front, back } }: { readonly read: Column }) {
  const [high, wide] = [apart(left, right), apart(front, back)];
  return (
    <>
      {high && !isZero(high) && <p class="pad-x note">{words.outOfSquare(high)}</p>}
      {wide && less(lit(), wide) && <p class="pad-x note">{words.notParallel(wide)}</p>}
    </>
  );
}

const apart = (a: Length | undefined, b: Length | undefined): Length | undefined =>
  a && b && absolute(subtract(a, b));

/** What was read and is not used yet; fronts already cut keep their size, the others share what is left. */
function takeUp(
  bench: Bench,
  bank: Bank,
  at: { readonly no: number; readonly all: readonly WorkedColumn[] },
): readonly Change[] {
  const { all } = at;
  const read: Column = columnNo(bank, at.no);
  const fresh = places.filter((place) => {
    const [now, then] = [read[place], read[used[place]]];
    return now && !(then && equals(now, then));
  });
  if (fresh.length === 0) return [];
  // columns keep one line: what is cut in any of them keeps its size
  const held = all.flatMap(({ no, heights }) =>
    heights.flatMap((height, k) =>
      frontIsCut(bench, bank, { column: no, no: k + 1 }) && !fittedNo(columnNo(bank, no), k + 1).held
        ? editFitted({ bank: bank.id, column: no, front: k + 1 }, { held: height })
        : [],
    ),
  );
  return [...fresh.flatMap((place) => editColumn(bank.id, at.no, { [used[place]]: read[place] })), ...held];
}

type DifferenceProps = {
  readonly value: Length;
  readonly planned: Length | undefined;
  readonly taken: Length | undefined;
};

/** Signed, in words; over a thirty-second, or .8 mm, it is lit. */
function Difference({ value, planned, taken }: DifferenceProps) {
  if (taken && equals(taken, value)) return <span class="s">{words.inUse}</span>;
  if (!planned) return null;
  const off = subtract(value, planned);
  return <span class={less(lit(), absolute(off)) ? 'rem lit' : 's'}>{againstPlan(off)}</span>;
}
