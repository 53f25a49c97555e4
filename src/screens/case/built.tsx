import { useState } from 'preact/hooks';
import { editBuilt } from '../../job/edits';
import {
  absolute,
  inches,
  isZero,
  type Length,
  less,
  longest,
  shortest,
  subtract,
} from '../../length/length';
import { remainder } from '../../length/write';
import type { Built } from '../../trade/carcass/case';
import { frameOf } from '../../trade/carcass/frame';
import type { Worked } from '../../trade/carcass/parts';
import { Bar } from '../../ui/bar';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Inline, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { exactly as w } from '../shared/exact-words';
import { TakeUp } from '../shared/take-up';
import { UndoButton } from '../shared/undo-button';

/** Differences over this are lit. Common practice, no source. */
const lit = inches(1n, 32n);

type Opening = {
  readonly key: string;
  readonly name: string;
  readonly planned: Length;
  readonly across: boolean;
};

function openingsOf({ sizes }: Worked): readonly Opening[] {
  const { case: c, bays, clearHeight } = sizes;
  const frame = c.hasFrame ? frameOf(sizes) : undefined;
  return [
    ...bays.map((bay, k) => ({
      key: `bay${k + 1}`,
      name: bays.length === 1 ? 'Clear width' : `Bay ${k + 1}`,
      planned: bay.value,
      across: true,
    })),
    { key: 'clear', name: 'Clear height', planned: clearHeight.value, across: false },
    ...(c.hasBack
      ? [
          { key: 'backw', name: 'Back, rabbet to rabbet', planned: backWide(sizes), across: true },
          {
            key: 'backh',
            name: 'Back, height to cover',
            planned: subtract(sizes.height.value, c.feet ?? inches(0n)),
            across: false,
          },
        ]
      : []),
    ...(frame?.openings.map((o, k) => ({
      key: `frame${k + 1}w`,
      name: bays.length === 1 ? 'Frame opening' : `Frame opening, bay ${k + 1}`,
      planned: o.wide.value,
      across: true,
    })) ?? []),
  ];
}

const backWide = ({ width, thick, joints }: Worked['sizes']): Length => {
  const seat = subtract(thick('side'), joints.backDeep);
  return subtract(subtract(width.value, seat), seat);
};

const places = ['frontA', 'frontB', 'backA', 'backB'] as const;
type Place = (typeof places)[number];
const placeNames = (across: boolean): Record<Place, string> =>
  across
    ? { frontA: 'front, low', frontB: 'front, high', backA: 'back, low', backB: 'back, high' }
    : { frontA: 'front, left', frontB: 'front, right', backA: 'back, left', backB: 'back, right' };

/** As-built rows beside planned; a measure flows nowhere until it is taken up. */
export function BuiltScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<{ readonly opening: Opening; readonly place: Place }>();
  const plan = bench.plan.value;
  const found = plan?.worked.get(id);
  const c = plan?.job.cases.find((x) => x.id === id);
  const leave = { label: 'Case', onTap: () => bench.go({ at: 'case', id }) };
  if (!plan || !c || !found?.ok) {
    return (
      <>
        <Bar title="As built" leave={leave} />
        <main class="page">
          <p class="pad-x empty-line">The case has to work out first: say what is missing.</p>
        </main>
      </>
    );
  }
  return (
    <>
      <Bar title="As built" sub={c.name || 'Case'} leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">
          Dry-fit and square the case, then measure each opening. Nothing changes until you take a measure up.
        </p>
        <Caution bench={bench} code="as-built" />
        {openingsOf(found.value).map((opening) => (
          <OpeningRows
            key={opening.key}
            {...{ bench, id, opening }}
            built={c.built[opening.key] ?? {}}
            onOpen={(place) => setOpen({ opening, place })}
          />
        ))}
      </main>
      {open && (
        <KeySheet
          key={`${open.opening.key}${open.place}`}
          title={`${open.opening.name}, ${placeNames(open.opening.across)[open.place]}`}
          tape="1/64"
          fill="length"
          now={c.built[open.opening.key]?.[open.place]}
          onLength={(value) =>
            void bench.act(
              `As built: ${open.opening.name}`,
              editBuilt(id, open.opening.key, { [open.place]: value }),
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
  readonly id: string;
  readonly opening: Opening;
  readonly built: Built;
  readonly onOpen: (place: Place) => void;
};

function OpeningRows({ bench, id, opening, built, onOpen }: RowsProps) {
  const names = placeNames(opening.across);
  const read = places.flatMap((p) => built[p] ?? []);
  const [first, ...rest] = read;
  const least = first && shortest(first, ...rest);
  const spread = first && least && subtract(longest(first, ...rest), least);
  // the clear height is for the eye: partitions and sides are cut before it can be measured
  const pending = opening.key !== 'clear' && least && !(built.used && isZero(subtract(built.used, least)));
  return (
    <section class="opening" aria-label={opening.name}>
      <div class="sechead">
        <h2 class="sec">{opening.name}</h2>
        <span class="s muted">
          planned <Inline value={opening.planned} tape={opening.planned.d > 128n ? '0.001' : '1/64'} />
        </span>
      </div>
      <div class="pad-x places">
        {places.map((place) => (
          <button key={place} type="button" class="chip place-chip" onClick={() => onOpen(place)}>
            <span class="s">{names[place]}</span>
            {built[place] ? <Given value={built[place]} /> : <span class="dots">····</span>}
            {built[place] && <Difference value={built[place]} planned={opening.planned} />}
          </button>
        ))}
      </div>
      {spread && less(lit, spread) && (
        <p class="pad-x note">Spread {w(spread)}: square it again, or pack to the least.</p>
      )}
      {built.used && (
        <p class="pad-x note">
          What is not cut yet is reckoned from{' '}
          <Inline value={built.used} tape={built.used.d > 128n ? '0.001' : '1/64'} />.
        </p>
      )}
      {pending && least && <TakeLeast {...{ bench, id, opening }} least={least} />}
    </section>
  );
}

/** Signed, in words; over a thirty-second it is lit. */
function Difference({ value, planned }: { readonly value: Length; readonly planned: Length }) {
  const off = subtract(value, planned);
  const says = remainder(off);
  if (!says) return <span class="s">as planned</span>;
  return <span class={less(lit, absolute(off)) ? 'rem lit' : 's'}>{`${says.word} ${says.by}`}</span>;
}

type TakeProps = Omit<RowsProps, 'built' | 'onOpen'> & { readonly least: Length };

const TakeLeast = ({ bench, id, opening, least }: TakeProps) => (
  <TakeUp
    bench={bench}
    label={`Taken up: ${opening.name} ${w(least)}`}
    changes={editBuilt(id, opening.key, { used: least })}
  >
    See what <Mixed value={least} tape={least.d % 127n === 0n ? '1 mm' : '1/64'} /> would change
  </TakeUp>
);
