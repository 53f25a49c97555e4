import { useState } from 'preact/hooks';
import { editColumn, editFitted } from '../../job/edits';
import type { Change } from '../../job/entry';
import { absolute, equals, inches, type Length, less, subtract } from '../../length/length';
import { fineOf } from '../../length/tape';
import { remainder } from '../../length/write';
import { type Bank, type Column, columnNo, fittedNo } from '../../trade/fronts/bank';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { Bar } from '../../ui/bar';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { TakeUp } from '../shared/take-up';
import { UndoButton } from '../shared/undo-button';
import { bankIn, frontIsCut } from './column-of';
import { NoBank } from './fronts';
import { frontsProblemText } from './words';
import '../shared/places.css';

const places = ['left', 'right', 'front', 'back'] as const;
type Place = (typeof places)[number];

const placeNames: Record<Place, string> = {
  left: 'high, at the left',
  right: 'high, at the right',
  front: 'wide, in front',
  back: 'wide, at the back',
};

const used = {
  left: 'usedLeft',
  right: 'usedRight',
  front: 'usedFront',
  back: 'usedBack',
} as const;

/** As fine as the tape goes, in its own unit. */
/** Differences over this are lit. Common practice, no source. */
const lit = inches(1n, 32n);

/** The opening of every column as measured; nothing moves until it is used. */
export function OpeningScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<{ readonly column: number; readonly place: Place }>();
  const found = bankIn(bench.plan.value, id);
  if (!found) return <NoBank bench={bench} />;
  const { bank, fronts } = found;
  const columns = fronts.ok ? fronts.value.columns : [];
  return (
    <>
      <Bar
        title="Opening, as measured"
        sub={bank.name || 'Drawers'}
        leave={{ label: 'Fronts', onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">
          Measure once the case stands square and the frame is on. Nothing changes until you use it.
        </p>
        {!fronts.ok && (
          <p class="pad-x wrongline">
            {fronts.error.map(frontsProblemText).join(' ')} Measure it again here.
          </p>
        )}
        {Array.from({ length: Math.max(1, bank.across) }, (_, k) => (
          <Rows
            key={k}
            {...{ bench, bank }}
            no={k + 1}
            all={columns}
            onOpen={(place) => setOpen({ column: k + 1, place })}
          />
        ))}
      </main>
      {open && (
        <KeySheet
          key={`${open.column}${open.place}`}
          title={`Opening, ${placeNames[open.place]}`}
          tape={bench.job.value?.tape ?? '1/32'}
          fill="length"
          now={columnNo(bank, open.column)[open.place]}
          onLength={(value) =>
            void bench.act(
              `Opening measured: ${placeNames[open.place]}`,
              editColumn(id, open.column, { [open.place]: value }),
            )
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type RowsProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly no: number;
  /** The columns as they work out; none while they do not. */
  readonly all: readonly WorkedColumn[];
  readonly onOpen: (place: Place) => void;
};

function Rows({ bench, bank, no, all, onOpen }: RowsProps) {
  const tape = bench.job.value?.tape ?? '1/32';
  const column = all.find((c) => c.no === no);
  const read = columnNo(bank, no);
  const changes = takeUp(bench, bank, { no, all });
  const planned = (place: Place): Length | undefined =>
    place === 'left' || place === 'right' ? column?.opening[place] : column?.opening.wide.value;
  const name = bank.across > 1 ? `Column ${no}` : 'Opening';
  return (
    <section class="opening" aria-label={name}>
      <div class="sechead">
        <h2 class="sec">{name}</h2>
        {column && (
          <span class="s muted">
            reckoned <Inline value={column.opening.wide.value} tape={fineOf(tape)} /> ×{' '}
            <Inline value={column.opening.high.value} tape={fineOf(tape)} />
          </span>
        )}
      </div>
      <div class="pad-x places">
        {places.map((place) => {
          const value = read[place];
          return (
            <button key={place} type="button" class="chip place-chip" onClick={() => onOpen(place)}>
              <span class="s">{placeNames[place]}</span>
              {value ? <Given value={value} /> : <span class="dots">····</span>}
              {value && <Difference value={value} planned={planned(place)} taken={read[used[place]]} />}
            </button>
          );
        })}
      </div>
      {read.left && read.right && !equals(read.left, read.right) && (
        <p class="pad-x note">
          Out of square by {w(absolute(subtract(read.left, read.right)))}: heights are shared out of the
          lesser.
        </p>
      )}
      {read.front && read.back && less(lit, absolute(subtract(read.front, read.back))) && (
        <p class="pad-x note">
          Front and back differ by {w(absolute(subtract(read.front, read.back)))}: pack the slides parallel
          before you trust a box. Boxes are made to the lesser.
        </p>
      )}
      {changes.length > 0 && (
        <TakeUp bench={bench} label="Opening taken up" changes={changes}>
          See what this would change
        </TakeUp>
      )}
    </section>
  );
}

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

/** Signed, in words; over a thirty-second it is lit. */
function Difference({ value, planned, taken }: DifferenceProps) {
  if (taken && equals(taken, value)) return <span class="s">in use</span>;
  if (!planned) return null;
  const off = subtract(value, planned);
  const says = remainder(off);
  if (!says) return <span class="s">as planned</span>;
  return <span class={less(lit, absolute(off)) ? 'rem lit' : 's'}>{`${says.word} ${says.by}`}</span>;
}
