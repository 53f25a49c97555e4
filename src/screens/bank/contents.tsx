import { useState } from 'preact/hooks';
import { editThing } from '../../job/edits';
import type { InDrawer } from '../../job/job';
import { inches, type Length, longest, type Ratio, ratio, zero } from '../../length/length';
import { type BankPlan, stuffsRound, thingsIn } from '../../plan/bank-plan';
import { acidRound } from '../../trade/boxes/acid';
import { loadOf, loadSays, tallestIn, whatDoesNotFit } from '../../trade/boxes/contents';
import { drawerWeight } from '../../trade/boxes/drawer-weight';
import { type Drawer, overDrawer, type WorkedDrawers } from '../../trade/boxes/drawers';
import { leastFronts } from '../../trade/boxes/least';
import { usualBank } from '../../trade/fronts/bank';
import { frontNumbers } from '../../trade/fronts/stands';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { UndoButton } from '../shared/undo-button';
import { acidText } from './acid-words';
import { bankIn } from './column-of';
import { NoBank } from './fronts';
import { lb } from './words';

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
  const worked = found.drawers?.ok ? found.drawers.value : undefined;
  const add = (front: number) =>
    void bench.act(
      'A thing for a drawer',
      editThing(bench.newId(), { bank: id, front, count: 1, name: 'Thing' }),
    );
  return (
    <>
      <Bar
        title="What goes in"
        sub={bank.name || 'Drawers'}
        leave={{ label: 'Fronts', onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">
          Say the tallest, longest and heaviest for each drawer.{' '}
          {bank.contentsFirst
            ? 'No front comes out less than its things ask for.'
            : 'Turn on Contents first, and no front comes out less than its things ask for.'}
        </p>
        <Caution bench={bench} code="load" />
        {acidRound(
          stuffsRound(job, bank),
          thingsIn(job, id).map(({ name }) => name),
        ).map((round) => (
          <p key={round.stuff} class="pad-x lit">
            {acidText(round)}
          </p>
        ))}
        {frontNumbers(bank).map((no) => (
          <InOne
            key={no}
            {...{ bench, found, worked, no, open }}
            things={thingsIn(job, id, no)}
            onOpen={setOpen}
            onAdd={() => add(no)}
          />
        ))}
      </main>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type InOneProps = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly worked: WorkedDrawers | undefined;
  readonly no: number;
  readonly things: readonly InDrawer[];
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly onAdd: () => void;
};

function InOne({ bench, found, worked, no, things, open, onOpen, onAdd }: InOneProps) {
  const drawer = worked?.drawers.find((d) => d.no === no);
  return (
    <section class="drawerrow" aria-label={`Drawer ${no}`}>
      <div class="sechead bare">
        <h2 class="sec">Drawer {no}</h2>
        <button type="button" class="chip" onClick={onAdd}>
          <Icon name="plus" /> A thing
        </button>
      </div>
      {worked && drawer && <Room worked={worked} drawer={drawer} things={things} />}
      {things.map((thing) => (
        <ThingLine key={thing.id} {...{ bench, thing, open, onOpen }} />
      ))}
      {worked && drawer && <Load bench={bench} found={found} drawer={drawer} things={things} />}
    </section>
  );
}

type ThingProps = Pick<InOneProps, 'bench' | 'open' | 'onOpen'> & { readonly thing: InDrawer };

function ThingLine({ bench, thing, open, onOpen }: ThingProps) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const size = (field: 'tall' | 'long', words: string): Ask => ({
    as: 'length',
    title: `${thing.name || 'Thing'}: ${words}`,
    now: thing[field],
    save: (value) => editThing(thing.id, { [field]: value }),
  });
  const many: Ask = {
    as: 'count',
    title: `${thing.name || 'Thing'}: how many`,
    now: thing.count,
    save: (count) => editThing(thing.id, { count: count ?? 1 }),
  };
  const name: Ask = {
    as: 'text',
    title: `What it is: ${thing.name || 'a thing'}`,
    now: thing.name,
    save: (text) => editThing(thing.id, { name: text }),
  };
  const heavy: Ask = {
    as: 'amount',
    title: `${thing.name || 'Thing'}: pounds, one of them`,
    now: thing.heavy,
    save: (value) => editThing(thing.id, { heavy: value }),
  };
  return (
    <p class="fillin thing">
      {blank(many)} {blank(name)}, {blank(size('tall', 'how tall'))} tall, {blank(size('long', 'how long'))}{' '}
      long, {blank(heavy)} lb
      <span class="runacts">
        <button
          type="button"
          class="chip"
          onClick={() =>
            void bench.act(`${thing.name || 'Thing'} taken out`, editThing(thing.id, { gone: true }))
          }
        >
          Take it out
        </button>
      </span>
    </p>
  );
}

type RoomProps = {
  readonly worked: WorkedDrawers;
  readonly drawer: Drawer;
  readonly things: readonly InDrawer[];
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
    play: fronts.bank.play ?? usualBank.play,
  });
  const asks = leastFronts(fronts.bank, things, (stock) =>
    stock === 'boxBottom' ? drawer.plan.bottom : undefined,
  )[drawer.no - 1];
  const long: Length = longest(drawer.box.insideWide.value, drawer.box.insideDeep.value);
  const off = whatDoesNotFit(things, { tallest, longest: long });
  return (
    <>
      <p class="s muted">
        Front {w(drawer.front)}, takes things up to {w(tallest)} tall and {w(long)} long.
      </p>
      {asks && <p class="s muted">The tallest asks for a front of {w(asks)} at least.</p>}
      {off.map((x, k) => (
        <p key={k} class="wrongline">
          <Icon name="warn" />
          {things.find((t) => t.id === x.thing)?.name || 'A thing'} is {w(x.by)}{' '}
          {x.code === 'too-tall' ? 'too tall' : 'too long'}.
        </p>
      ))}
    </>
  );
}

type LoadProps = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly drawer: Drawer;
  readonly things: readonly InDrawer[];
};

/** What the pair carries, box and front among it: an estimate. */
function Load({ bench, found, drawer, things }: LoadProps) {
  const load = loadOf(things);
  const own = drawerWeight(drawer, frontThick(bench, found, drawer));
  const total = load.contents.add(own) as Ratio;
  const says = loadSays(total, found.bank.rating);
  const share = says.code === 'rating-missing' ? undefined : percent(says.share);
  return (
    <>
      <p class={says.code === 'over' || says.code === 'near' ? 'lit' : 's'}>
        About {lb(total)}: things {lb(load.contents)}, box and front {lb(own)}
        {load.unweighed > 0 && `, ${load.unweighed} not weighed`}.{' '}
        {says.code === 'rating-missing'
          ? 'Say what a pair of slides carries.'
          : `${share}\u00a0% of what the pair carries${says.code === 'over' ? ': too much' : says.code === 'near' ? ': near it' : ''}.`}
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

function frontThick(bench: Bench, found: BankPlan, drawer: Drawer) {
  const column = found.fronts.ok ? found.fronts.value.columns[drawer.column - 1] : undefined;
  const thick =
    bench.plan.value?.stuff.find((s) => s.id === found.bank.stocks.front)?.thickness ?? inches(0n);
  return { wide: column?.width.mark.value ?? zero, thick };
}
