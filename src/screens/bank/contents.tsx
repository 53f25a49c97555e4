import { useState } from 'preact/hooks';
import { editThing } from '../../job/edits';
import type { Job } from '../../job/job';
import type { Lot } from '../../job/loads';
import { inches, type Length, longest, type Ratio, ratio, zero } from '../../length/length';
import { type BankPlan, hasDrawer, stuffsRound, thingsIn } from '../../plan/bank-plan';
import type { Plan } from '../../plan/plan';
import { acidRound } from '../../trade/boxes/acid';
import { loadOf, loadSays, tallestIn, whatDoesNotFit } from '../../trade/boxes/contents';
import { drawerWeight } from '../../trade/boxes/drawer-weight';
import { type Drawer, overDrawer, type WorkedDrawers } from '../../trade/boxes/drawers';
import { leastFronts } from '../../trade/boxes/least';
import type { Bank } from '../../trade/fronts/bank';
import { frontNumbers } from '../../trade/fronts/stands';
import { usualBank } from '../../trade/fronts/usual-bank';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { LotLine } from '../shared/lot-line';
import * as lot from '../shared/lot-words';
import { UndoButton } from '../shared/undo-button';
import { acidText } from './acid-words';
import { bankIn } from './column-of';
import * as words from './contents-words';
import { NoBank } from './fronts';
import { drawer as drawerName, nameOf, toFronts, whatGoesIn } from './words';
import '../shared/drawer-row.css';

/**
 * What goes into the drawers: tall, long, heavy, how many; what each front must be for it, and what each pair
 * carries.
 */
export function ContentsScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const found = bankIn(bench.plan.value, id);
  const job = bench.job.value;
  if (!found || !job) return <NoBank bench={bench} />;
  const { bank } = found;
  return (
    <>
      <Bar
        title={whatGoesIn}
        sub={nameOf(bank)}
        leave={{ label: toFronts, onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">{words.say(bank.contentsFirst)}</p>
        <Caution bench={bench} code="load" />
        <Acids job={job} bank={bank} />
        {drawersIn(bank).map((at) => (
          <InOne key={`${at.column} ${at.no}`} {...{ bench, job, found, at, open }} onOpen={setOpen} />
        ))}
        <NoDrawer {...{ bench, job, bank, open }} onOpen={setOpen} />
      </main>
      <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </>
  );
}

type At = { readonly no: number; readonly column: number };

const drawersIn = (bank: Bank): readonly At[] =>
  Array.from({ length: bank.across }, (_, k) => k + 1).flatMap((column) =>
    frontNumbers(bank).map((no) => ({ no, column })),
  );

type NoDrawerProps = Pick<InOneProps, 'bench' | 'job' | 'open' | 'onOpen'> & { readonly bank: Bank };

/** What went into a drawer there is no longer: it is not dropped. */
function NoDrawer({ bench, job, bank, open, onOpen }: NoDrawerProps) {
  const lost = thingsIn(job, bank.id).filter((thing) => !hasDrawer(job, thing));
  if (lost.length === 0) return null;
  return (
    <section class="drawerrow" aria-label={words.noDrawer}>
      <h2 class="sec">{words.noDrawer}</h2>
      <p class="wrongline">{words.lost}</p>
      {lost.map((thing) => (
        <LotLine
          key={thing.id}
          {...{ bench, job, thing, open, onOpen }}
          parts={bench.plan.value?.parts ?? []}
        />
      ))}
    </section>
  );
}

/** Woods round the drawers that give off what harms the things in them. */
function Acids({ job, bank }: { readonly job: Job; readonly bank: Bank }) {
  const names = thingsIn(job, bank.id).map(({ name }) => name);
  return (
    <>
      {acidRound(stuffsRound(job, bank), names).map((round) => (
        <p key={round.stuff} class="pad-x lit">
          {acidText(round)}
        </p>
      ))}
    </>
  );
}

type InOneProps = {
  readonly bench: Pick<Bench, 'act' | 'newId' | 'plan'>;
  readonly job: Job;
  readonly found: BankPlan;
  readonly at: At;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function InOne({ bench, job, found, at, open, onOpen }: InOneProps) {
  const { bank } = found;
  const { no, column } = at;
  const name = drawerName(no, bank.across > 1 ? column : undefined);
  const worked = found.drawers?.ok ? found.drawers.value : undefined;
  const drawer = worked?.drawers.find((d) => d.no === no && d.column === column);
  const things = thingsIn(job, bank.id, at);
  const add = () =>
    void bench.act(
      lot.added,
      editThing(bench.newId(), {
        bank: bank.id,
        front: no,
        ...(bank.across > 1 ? { column } : {}),
        count: 1,
        name: lot.thing,
      }),
    );
  return (
    <section class="drawerrow" aria-label={name}>
      <div class="sechead bare">
        <h2 class="sec">{name}</h2>
        <button type="button" class="chip" onClick={add}>
          <Icon name="plus" /> {lot.addThing}
        </button>
      </div>
      {worked && drawer && <Room worked={worked} drawer={drawer} things={things} />}
      {things.map((thing) => (
        <LotLine
          key={thing.id}
          {...{ bench, job, thing, open, onOpen }}
          parts={bench.plan.value?.parts ?? []}
        />
      ))}
      {worked && drawer && (
        <Load stuff={bench.plan.value?.stuff ?? []} found={found} drawer={drawer} things={things} />
      )}
    </section>
  );
}

type RoomProps = {
  readonly worked: WorkedDrawers;
  readonly drawer: Drawer;
  readonly things: readonly Lot[];
};

/** The tallest that goes in, and what does not. */
function Room({ worked, drawer, things }: RoomProps) {
  const { fronts, slides } = worked;
  const tallest = tallestIn({
    front: drawer.front,
    ...overDrawer(fronts, drawer.no),
    boxUp: slides.boxUp,
    grooveUp: drawer.plan.groove.up,
    bottom: drawer.plan.bottom,
    play: fronts.bank.play ?? usualBank(fronts.bank).play,
  });
  const least = leastFronts(fronts.bank, things, (stock) =>
    stock === 'boxBottom' ? drawer.plan.bottom : undefined,
  )[drawer.no - 1];
  const long: Length = longest(drawer.box.insideWide.value, drawer.box.insideDeep.value);
  const off = whatDoesNotFit(things, { tallest, longest: long });
  return (
    <>
      <p class="s muted">{words.room(drawer.front, { tall: tallest, long })}</p>
      {least && <p class="s muted">{words.asks(least)}</p>}
      {off.map((x, k) => (
        <p key={k} class="wrongline">
          <Icon name="warn" />
          {words.unfit(things.find((t) => t.id === x.thing)?.name, x)}
        </p>
      ))}
    </>
  );
}

type LoadProps = {
  readonly stuff: Plan['stuff'];
  readonly found: BankPlan;
  readonly drawer: Drawer;
  readonly things: readonly Lot[];
};

/** What the pair carries, box and front among it: an estimate. */
function Load({ stuff, found, drawer, things }: LoadProps) {
  const { contents, unweighed } = loadOf(things);
  const own = drawerWeight(drawer, frontThick(stuff, found, drawer));
  const total = contents.add(own) as Ratio;
  const { hung, rating } = found.bank;
  const says = loadSays(total, hung ? undefined : rating);
  const share = says.code === 'rating-missing' ? undefined : percent(says.share);
  return (
    <>
      <p class={says.code === 'over' || says.code === 'near' ? 'lit' : 's'}>
        {words.load({ total, things: contents, own, unweighed, says: hung ? 'in-wood' : says.code, share })}
      </p>
      {share !== undefined && (
        <div class={says.code === 'over' ? 'ratingbar over' : 'ratingbar'} aria-hidden="true">
          <span style={{ width: `${Math.min(100, share)}%` }} />
        </div>
      )}
    </>
  );
}

const percent = (share: Ratio): number => Math.round(share.mul(ratio(100n)).valueOf());

function frontThick(stuff: Plan['stuff'], found: BankPlan, drawer: Drawer) {
  const column = found.fronts.ok ? found.fronts.value.columns[drawer.column - 1] : undefined;
  const thick = stuff.find((s) => s.id === found.bank.stocks.front)?.thickness ?? inches(0n);
  return { wide: column?.width.mark.value ?? zero, thick };
}
