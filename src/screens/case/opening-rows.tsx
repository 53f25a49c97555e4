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
import { figureIn } from '../../length/metric-figures';
import type { Built } from '../../trade/carcass/case';
import { Dots } from '../../ui/blank';
import { Given } from '../../ui/given';
import { Inline, Mixed } from '../../ui/mixed';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { exactly as w } from '../shared/exact-words';
import { againstPlan } from '../shared/plan-words';
import { TakeUp } from '../shared/take-up';
import * as words from './built-words';
import type { Opening } from './openings';
import '../shared/places.css';

/** Differences over this are lit. Common practice, no source. */
const thirtySecond = inches(1n, 32n);
const lit = (): Length => figureIn(unitInHand(), thirtySecond);

const places = ['frontA', 'frontB', 'backA', 'backB'] as const;
export type Place = (typeof places)[number];

export type RowsProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly opening: Opening;
  readonly built: Built;
  readonly onOpen: (place: Place) => void;
};

/** One opening as planned and as read at its four places, with what to do about the difference. */
export function OpeningRows({ bench, id, opening, built, onOpen }: RowsProps) {
  const [first, ...rest] = places.flatMap((p) => built[p] ?? []);
  const least = first && shortest(first, ...rest);
  const spread = first && least && subtract(longest(first, ...rest), least);
  // the clear height is for the eye: partitions and sides are cut before it can be measured
  const pending = opening.key !== 'clear' && least && !(built.used && isZero(subtract(built.used, least)));
  return (
    <section class="opening" aria-label={opening.name}>
      <div class="sechead">
        <h2 class="sec">{opening.name}</h2>
        {opening.planned && <span class="s muted">{words.planned(<Fine value={opening.planned} />)}</span>}
      </div>
      <Places opening={opening} built={built} onOpen={onOpen} />
      {spread && less(lit(), spread) && <p class="pad-x note">{words.spread(w(spread))}</p>}
      {built.used && <p class="pad-x note">{words.reckonedFrom(<Fine value={built.used} />)}</p>}
      {pending && least && <TakeLeast {...{ bench, id, opening }} least={least} />}
    </section>
  );
}

/** In decimals where no tape shows it. */
const Fine = ({ value }: { readonly value: Length }) => (
  <Inline value={value} tape={value.d > 128n ? '0.001' : '1/64'} />
);

export function Places({ opening, built, onOpen }: Omit<RowsProps, 'bench' | 'id'>) {
  const names = words.placeNames(opening.across);
  return (
    <div class="pad-x places">
      {places.map((place) => {
        const read = built[place];
        return (
          <button key={place} type="button" class="chip place-chip" onClick={() => onOpen(place)}>
            <span class="s">{names[place]}</span>
            <span>{read ? <Given value={read} /> : <Dots />}</span>
            {read && opening.planned && <Difference value={read} planned={opening.planned} />}
          </button>
        );
      })}
    </div>
  );
}

/** In words; over a thirty-second, or .8 mm, it is lit. */
function Difference({ value, planned }: { readonly value: Length; readonly planned: Length }) {
  const off = subtract(value, planned);
  return <span class={less(lit(), absolute(off)) ? 'rem lit' : 's'}>{againstPlan(off)}</span>;
}

type TakeProps = Omit<RowsProps, 'built' | 'onOpen'> & { readonly least: Length };

const TakeLeast = ({ bench, id, opening, least }: TakeProps) => (
  <TakeUp
    bench={bench}
    label={words.takenUp(opening.name, w(least))}
    changes={editBuilt(id, opening.key, { used: least })}
  >
    {words.seeChange(<Mixed value={least} tape={least.d % 127n === 0n ? '1 mm' : '1/64'} />)}
  </TakeUp>
);
