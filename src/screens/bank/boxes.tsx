import { useState } from 'preact/hooks';
import type { Change } from '../../job/entry';
import { forDrawing, type Length } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Drawer, WorkedDrawers } from '../../trade/boxes/drawers';
import { frameOf } from '../../trade/carcass/frame';
import { frontNo } from '../../trade/fronts/bank';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { Inline, Mixed } from '../../ui/mixed';
import { TailDrawing } from '../../ui/tail-drawing';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { counted } from '../shared/counted';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { UndoButton } from '../shared/undo-button';
import { Why } from '../shared/why';
import { boxHigh } from './asks';
import { bankIn } from './column-of';
import { Asks } from './facts';
import { NoBank } from './fronts';
import { Pulls, Screws } from './holes';
import { grooveText, standText, tailsErrorText } from './words';
import { drawersWorth } from './worth';

/** The boxes of a bank, their joint drawn, the sticks their slides stand on, and the holes for the pulls. */
export function BoxesScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const found = bankIn(bench.plan.value, id);
  const job = bench.job.value;
  if (!found || !job) return <NoBank bench={bench} />;
  const worked = found.drawers?.ok ? found.drawers.value : undefined;
  return (
    <>
      <Bar
        title="Boxes, slides, pulls"
        sub={found.bank.name || 'Drawers'}
        leave={{ label: 'Fronts', onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Asks bench={bench} bank={found} />
        {worked && (
          <>
            <Worth worked={worked} />
            <Boxes worked={worked} tape={job.tape} open={open} onOpen={setOpen} />
            <Sticks bench={bench} worked={worked} tape={job.tape} />
            <Pulls worked={worked} tape={job.tape} />
            <Screws bench={bench} found={found} />
          </>
        )}
      </main>
      <div class="fixedbar">
        <button type="button" class="btn" onClick={() => bench.go({ at: 'bank', id })}>
          Change
        </button>
        <button type="button" class="btn main" onClick={() => bench.go({ at: 'cuts' })}>
          To the cuts <Icon name="next" />
        </button>
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes: readonly Change[]) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

function Worth({ worked }: { readonly worked: WorkedDrawers }) {
  const lines = drawersWorth(worked);
  if (lines.length === 0) return null;
  return (
    <ul class="problems pad-x" aria-label="Worth a look">
      {lines.map((text) => (
        <li key={text} class="note">
          {text}
        </li>
      ))}
    </ul>
  );
}

type BoxesProps = {
  readonly worked: WorkedDrawers;
  readonly tape: Tape;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function Boxes({ worked, tape, open, onOpen }: BoxesProps) {
  const { bank } = worked.fronts;
  return (
    <section aria-label="Boxes">
      <h2 class="sec pad-x">Boxes</h2>
      <ul>
        {worked.drawers.map((drawer) => (
          <li key={`${drawer.column}~${drawer.no}`} class="drawerrow">
            <div class="kv">
              <b>{partWord({ role: 'drawer', ...drawer.place })}</b>
              <span class="nb">
                <Inline value={drawer.box.width.mark.value} tape={tape} /> wide
              </span>
            </div>
            {drawer.column === 1 && (
              <div class="kv">
                <span>
                  high <AskBlank ask={boxHigh(bank, drawer.no, drawer.high)} open={open} onOpen={onOpen} />
                </span>
                {frontNo(bank, drawer.no).boxHigh && (
                  <span class="s muted">at most {w(markAt(drawer.most, tape, 'floor').value)}</span>
                )}
              </div>
            )}
            <BoxDetail drawer={drawer} tape={tape} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** One drawer for its glue-up: every size with its sum, and the joint. */
function BoxDetail({ drawer, tape }: { readonly drawer: Drawer; readonly tape: Tape }) {
  const [open, setOpen] = useState(false);
  const { box, plan } = drawer;
  const lines: readonly (readonly [string, Length, Parameters<typeof Why>[0]['sum']])[] = [
    ['Sides, long', box.side.value, box.side],
    ['Back, long', box.back.value, box.back],
    ['Back, high', plan.bottomHow === 'captured' ? plan.height : box.backHeight.value, box.backHeight],
    ['Bottom, wide', box.bottomWide.value, box.bottomWide],
    ['Bottom, deep', box.bottomDeep.value, box.bottomDeep],
    ['Inside, wide', box.insideWide.value, box.insideWide],
    ['Inside, deep', box.insideDeep.value, box.insideDeep],
  ];
  return (
    <>
      <button type="button" class="whyrow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          Sizes and joint <span class="s muted">why?</span>
        </span>
        <Icon name="down" />
      </button>
      {open && (
        <>
          <ul>
            {lines.map(([words, value, sum]) => (
              <li key={words}>
                <div class="kv">
                  <span>{words}</span>
                  <Mixed value={markAt(value, tape).value} rest={markAt(value, tape).rest} tape={tape} />
                </div>
                <Why sum={sum} tape={tape} />
              </li>
            ))}
          </ul>
          <Joint drawer={drawer} />
        </>
      )}
    </>
  );
}

function Joint({ drawer }: { readonly drawer: Drawer }) {
  const { joint, plan, box } = drawer;
  if (joint.kind === 'plain') return null;
  if (!joint.tails.ok) return <p class="wrongline">{tailsErrorText(joint.tails.error)}</p>;
  const { value } = joint.tails;
  const d = forDrawing;
  const inside = value.groove?.inside ?? true;
  const where = inside
    ? `the groove runs out inside tail ${value.groove?.tail ?? ''} from the lower edge, out of sight`
    : grooveText(value, { up: plan.groove.up, wide: box.grooveWide });
  return (
    <>
      <TailDrawing
        height={d(plan.height)}
        long={d(box.reach)}
        tails={value.tails.map((t) => ({
          near: d(t.near),
          far: d(t.far),
          baseNear: d(t.baseNear),
          baseFar: d(t.baseFar),
        }))}
        groove={{ up: d(plan.groove.up), wide: d(box.grooveWide), clear: inside }}
        label={`Front end of a side with ${counted(value.tails.length, 'tail', 'tails')}: ${where}`}
      />
      <p class={inside ? 's' : 'wrongline'}>
        {counted(value.tails.length, 'tail', 'tails')} {w(value.tail)} wide at the end line,{' '}
        {w(value.baseTail)} at the baseline, pins {w(value.basePin)} there: {where}.
      </p>
    </>
  );
}

/** Where a face frame stands into the bay the slides are packed out to it. */
function packingText(bench: Bench, { fronts }: WorkedDrawers): string {
  const { bank } = fronts;
  const found = bench.plan.value?.worked.get(bank.of ?? '');
  if (!found?.ok || !found.value.sizes.case.hasFrame) return '';
  const at = frameOf(found.value.sizes).openings[bank.bay - 1];
  if (!at) return '';
  const [left, right] = [at.left.value, at.right.value];
  return ` Pack them out behind the frame: ${w(left)} at the left, ${w(right)} at the right.`;
}

type SticksProps = { readonly bench: Bench; readonly worked: WorkedDrawers; readonly tape: Tape };

function Sticks({ bench, worked, tape }: SticksProps) {
  const { sticks, slides } = worked;
  if (!sticks.ok) return null;
  return (
    <section aria-label="Sticks for the slides">
      <div class="sechead">
        <h2 class="sec">Sticks for the slides</h2>
      </div>
      <ul class="marklist pad-x">
        {sticks.value.map((stick) => (
          <StickRow key={stick.drawer} stick={stick} tape={tape} />
        ))}
      </ul>
      <p class="note pad-x">
        From the {standText(worked)} to the lower edge of the slide, the longest first.{' '}
        {slides.setBack.n === 0n
          ? 'Slides flush with the front edge.'
          : `Slides set back ${w(slides.setBack)}, the front’s thickness.`}
        {packingText(bench, worked)}
      </p>
      <div class="pad-x adds">
        <button
          type="button"
          class="btn"
          onClick={() => bench.go({ at: 'one', id: worked.fronts.bank.id, what: 'sticks' })}
        >
          Hang slides one at a time
        </button>
      </div>
    </section>
  );
}

function StickRow({
  stick,
  tape,
}: {
  readonly stick: {
    readonly drawer: number;
    readonly length: Length;
    readonly sum: Parameters<typeof Why>[0]['sum'];
  };
  readonly tape: Tape;
}) {
  const [open, setOpen] = useState(false);
  const mark = markAt(stick.length, tape);
  return (
    <li class="block">
      <button type="button" class="whyrow bare" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          Drawer {stick.drawer} <span class="s muted">why?</span>
        </span>
        <Mixed value={mark.value} rest={mark.rest} tape={tape} />
      </button>
      {open && <Why sum={stick.sum} tape={tape} />}
    </li>
  );
}
