import { roomIn } from '../../job/room';
import { writeMark } from '../../length/write';
import { cleatAt } from '../../plan/cleat-plan';
import type { Plan } from '../../plan/plan';
import { placesOnWall } from '../../plan/put-up-plan';
import { anchorScrews, screwPlace, screwsOf } from '../../plan/screw-plan';
import type { Operation } from '../../trade/setups/operation';
import type { Bench } from '../bench';
import { CleatLines } from '../shared/cleat-lines';
import { listsOf } from '../shared/shop-lists';
import * as words from './cleat-told-words';

type ToldProps = { readonly bench: Pick<Bench, 'settings'>; readonly plan: Plan; readonly op: Operation };

/** What is driven at a step that holds a case to its wall: how many, which screw, the drills, where, how high. */
export function CleatTold({ bench, plan, op: { what, part, cleat } }: ToldProps) {
  const id = part.replace(/~bench$/, '');
  const { screws } = listsOf(bench.settings.value);
  if (what === 'anchor' && cleat === 'wall') return <ToCleat {...{ plan, id, screws }} />;
  return what === 'cleat' || cleat ? <ToWall {...{ plan, id, screws }} /> : null;
}

type OfProps = {
  readonly plan: Plan;
  readonly id: string;
  /** Lengths on the shelf. */
  readonly screws: Parameters<typeof screwPlace>[2];
};

/** The case before a cleat on the wall. */
function ToCleat({ plan, id, screws }: OfProps) {
  const own = screwsOf(plan.job, id).filter(({ kind }) => kind === 'tocleat');
  return (
    <div class="pad-x">
      {own.length === 0 && <p>{words.toCleatUnsaid}</p>}
      {own.map((each) => (
        <p key={each.id}>{words.toCleat(screwPlace(plan, each, screws))}</p>
      ))}
    </div>
  );
}

/** The cleat to the wall. */
function ToWall({ plan, id, screws }: OfProps) {
  const place = screwPlace(plan, anchorScrews(plan, id), screws);
  const { height } = cleatAt(plan, id);
  return (
    <div class="pad-x">
      <p>{words.driven(place, studsAt(plan, id))}</p>
      {place.screw?.pick && <p>{words.holes(place.holes)}</p>}
      {height && <p>{words.stands(height.low)}</p>}
      <CleatLines on={plan} place={id} />
      {roomIn(plan.job).zones.length === 0 && <p class="note">{words.noZones}</p>}
    </div>
  );
}

/** The studs that take a screw, as marked; nothing while the wall is not read, or a screw goes anywhere. */
function studsAt(plan: Plan, id: string): readonly string[] | undefined {
  const found = placesOnWall(plan, id);
  return found?.ok ? found.value.fix.map((mark) => writeMark(mark, plan.job.tape)) : undefined;
}
