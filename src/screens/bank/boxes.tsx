import { useState } from 'preact/hooks';
import { drawerId } from '../../job/place-code';
import { isZero } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { BankPlan } from '../../plan/bank-plan';
import { packingOf } from '../../plan/packing';
import type { Drawer, WorkedDrawers } from '../../trade/boxes/drawers';
import type { Stick } from '../../trade/boxes/sticks';
import { frontNo } from '../../trade/fronts/bank';
import { Bar } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { InlineMark, MarkAndRest } from '../shared/mark-and-rest';
import { Noted } from '../shared/noted';
import { partWord } from '../shared/part-words';
import { UndoButton } from '../shared/undo-button';
import { Why } from '../shared/why';
import { boxHigh } from './asks';
import { sizesOf } from './box-sizes';
import * as words from './boxes-words';
import { bankIn } from './column-of';
import { Asks } from './facts';
import { NoBank } from './fronts';
import { Bottoms, Pulls, Screws } from './holes';
import { HungIn } from './hung';
import { hangOnes, kickerOf, sticksFor } from './hung-words';
import { Joint } from './joint';
import { boxesSlidesPulls, change, drawer as drawerName, nameOf, toFronts, worthALook } from './words';
import { drawersWorth, othersThan } from './worth';
import '../shared/drawer-row.css';

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
        title={boxesSlidesPulls}
        sub={nameOf(found.bank)}
        leave={{ label: toFronts, onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Asks bench={bench} bank={found} />
        {worked && (
          <>
            <Worth bench={bench} worked={worked} />
            <Boxes {...{ bench, found, worked, open }} tape={job.tape} onOpen={setOpen} />
            <Sticks bench={bench} worked={worked} tape={job.tape} />
            <HungIn bench={bench} found={found} worked={worked} tape={job.tape} />
            <Pulls worked={worked} tape={job.tape} />
            <Screws bench={bench} found={found} />
            <Bottoms bench={bench} worked={worked} tape={job.tape} />
          </>
        )}
      </main>
      <Ways bench={bench} id={id} />
      <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </>
  );
}

const Ways = ({ bench, id }: { readonly bench: Pick<Bench, 'go'>; readonly id: string }) => (
  <div class="fixedbar">
    <Button label={change} onTap={() => bench.go({ at: 'bank', id, page: 'boxes' })} />
    <Onward label={words.toCuts} onTap={() => bench.go({ at: 'cuts' })} />
  </div>
);

type WorthProps = { readonly bench: Pick<Bench, 'plan'>; readonly worked: WorkedDrawers };

function Worth({ bench, worked }: WorthProps) {
  const banks = bench.plan.value?.banks ?? new Map();
  const lines = drawersWorth(worked, othersThan(worked.fronts.bank, banks));
  if (lines.length === 0) return null;
  return (
    <ul class="problems pad-x" aria-label={worthALook}>
      {lines.map((text) => (
        <li key={text} class="note">
          {text}
        </li>
      ))}
    </ul>
  );
}

type BoxesProps = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly worked: WorkedDrawers;
  readonly tape: Tape;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function Boxes({ bench, found, worked, tape, open, onOpen }: BoxesProps) {
  const { bank } = worked.fronts;
  return (
    <section aria-label={words.boxes}>
      <h2 class="sec pad-x">{words.boxes}</h2>
      <ul>
        {worked.drawers.map((drawer) => (
          <li key={`${drawer.column}~${drawer.no}`} class="drawerrow">
            <div class="kv">
              <b>{partWord({ role: 'drawer', ...drawer.place })}</b>
              <span>{words.wide(<InlineMark mark={drawer.box.width.mark} tape={tape} />)}</span>
            </div>
            {drawer.column === 1 && (
              <div class="kv">
                <span>
                  {words.high(
                    <AskBlank ask={boxHigh(bank, drawer.no, drawer.high)} open={open} onOpen={onOpen} />,
                  )}
                </span>
                {frontNo(bank, drawer.no).boxHigh && (
                  <span class="s muted">
                    {isZero(drawer.trim)
                      ? words.atMost(markAt(drawer.most, tape, 'floor').value)
                      : words.cutTo(drawer.high)}
                  </span>
                )}
              </div>
            )}
            <Noted bench={bench} place={{ of: 'drawer', id: drawerId(bank.id, drawer) }} />
            <BoxDetail found={found} drawer={drawer} tape={tape} />
          </li>
        ))}
      </ul>
    </section>
  );
}

type DetailProps = { readonly found: BankPlan; readonly drawer: Drawer; readonly tape: Tape };

/** One drawer for its glue-up: every size with its sum, and the joint. */
function BoxDetail({ found, drawer, tape }: DetailProps) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" class="whyrow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          {words.sizesAndJoint} <span class="s muted">{words.why}</span>
        </span>
        <Icon name="down" />
      </button>
      {open && (
        <>
          <ul>
            {sizesOf(drawer, found, tape).map(({ name, mark, sum }) => (
              <li key={name}>
                <div class="kv">
                  <span>{name}</span>
                  <MarkAndRest mark={mark} tape={tape} />
                </div>
                <Why sum={sum} tape={tape} />
              </li>
            ))}
          </ul>
          <Joint bank={found.bank} drawer={drawer} tape={tape} />
        </>
      )}
    </>
  );
}

type SticksProps = {
  readonly bench: Pick<Bench, 'go' | 'plan'>;
  readonly worked: WorkedDrawers;
  readonly tape: Tape;
};

function Sticks({ bench, worked, tape }: SticksProps) {
  const { sticks } = worked;
  const { bank } = worked.fronts;
  const { hung } = bank;
  const title = hung ? sticksFor(hung) : words.sticks;
  if (!sticks.ok) return null;
  return (
    <section aria-label={title}>
      <div class="sechead">
        <h2 class="sec">{title}</h2>
      </div>
      <ul class="marklist pad-x">
        {sticks.value.map((stick) => (
          <StickRow key={`${stick.as ?? ''}${stick.drawer}`} stick={stick} tape={tape} />
        ))}
      </ul>
      <p class="note pad-x">{words.stand(worked, packingOf(bench.plan.value?.worked, bank))}</p>
      <div class="pad-x adds">
        <Button
          label={hung ? hangOnes(hung) : words.hang}
          onTap={() => bench.go({ at: 'one', id: bank.id, what: 'sticks' })}
        />
      </div>
    </section>
  );
}

function StickRow({ stick, tape }: { readonly stick: Stick; readonly tape: Tape }) {
  const [open, setOpen] = useState(false);
  return (
    <li class="block">
      <button type="button" class="whyrow bare" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          {stick.as ? kickerOf(drawerName(stick.drawer)) : drawerName(stick.drawer)}{' '}
          <span class="s muted">{words.why}</span>
        </span>
        <MarkAndRest mark={markAt(stick.length, tape)} tape={tape} />
      </button>
      {open && <Why sum={stick.sum} tape={tape} />}
    </li>
  );
}
