import type { Change } from '../../job/entry';
import { cutterTape, markAt } from '../../length/tape';
import { writeDecimals } from '../../length/write';
import { blocks, type Checklist } from '../../plan/checklist';
import { type BuildChange, cardStanding, passedBy, runOf, runsOfBuild } from '../../plan/run';
import { standChanges, tickChanges } from '../../plan/ticking';
import { cautionOf } from '../../trade/cautions/caution';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { stocksFitted } from '../shared/at-setup';
import { Caution } from '../shared/caution';
import { changeWords } from '../shared/held-words';
import { leave } from '../shared/leave';
import { OneNumber } from '../shared/one-number';
import { setAct } from '../shared/piece-words';
import { onArbor, testOn } from '../shared/setup-words';
import { sizeWords } from '../shared/stack-words';
import { ThinnerLines } from '../shared/thinner-lines';
import { useWake } from '../shared/use-wake';
import { Blocked } from './blocked';
import { Finish } from './finish';
import { Strip } from './strip';
import * as words from './words';
import './machine.css';

type ChangeProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly change: BuildChange;
};

/** Another stack, bit or height: a step of its own. Nothing of the new build is cut before it is set. */
export function ChangeOfBuild({ bench, list, card, change: { from, to } }: ChangeProps) {
  const wake = useWake(bench);
  const { tape } = list.plan.job;
  const runs = runsOfBuild(list.cards);
  const at = runs.findIndex((run) => run.includes(card));
  const now = cardStanding(list);
  const toCuts = () => leave(bench, { at: 'cuts' });
  const back = () => (now ? bench.go({ at: 'setup', id: now.id }, true) : toCuts());
  const test = card.operations.find((op) => op.what === 'test' && !list.doing.done(op.id));
  const tested = test && blocks(list, test).length === 0 ? test : undefined;
  const set: readonly Change[] = tested ? tickChanges(list, card, tested) : standChanges(list, card);
  return (
    <OneNumber
      {...{ bench, wake, tape }}
      heading={words.changeTo(to, tape)}
      leave={{ label: words.leave, onTap: toCuts }}
      tool={<Finish bench={bench} />}
      strip={<Strip {...{ list, card }} first={from ?? to} now={from !== undefined} />}
      row={{ done: runs.map((_, k) => k < at), at }}
      progress={words.buildOf(at + 1, runs.length)}
      title={changeWords(to)}
      figure={undefined}
      aloud={[changeWords(to), words.aloudSet(to, tape)].filter(Boolean).join('; ')}
      scrolls={<Caution bench={bench} code={cautionOf(to)} />}
      goTo={back}
      skip={{ label: words.notYet, onTap: back }}
      main={{
        label: words.isSet(tested !== undefined),
        sub: words.setSays(to, tape, tested !== undefined),
        onTap: () => void bench.act(setAct(to, tape), set),
      }}
    >
      <Both {...{ list, to }} />
      <ThinnerLines plan={list.plan} operations={card.operations} inset />
      <Steps {...{ bench, list, card, from, to }} />
      {test && !tested && <Blocked {...{ bench, list }} op={test} />}
      <PassedBy list={list} now={now} />
    </OneNumber>
  );
}

/** Both figures giant: they are read now. */
function Both({ list, to: { setup } }: { readonly list: Checklist; readonly to: Operation }) {
  const { tape } = list.plan.job;
  const { cutter, height, machine } = setup;
  const fine = cutterTape(tape);
  return (
    <div class="giant mboth">
      {cutter && (
        <div>
          <p>{words.cutter(machineAt(machine).cuts, false)}</p>
          <Mixed value={markAt(cutter, fine).value} size="setting" tape={fine} />
          <p>{words.wide(writeDecimals(cutter, tape))}</p>
        </div>
      )}
      {height && (
        <div>
          <p>{words.raiseTo(machine)}</p>
          <Mixed value={height} size="setting" tape={tape} />
          <p>{words.offTheTable(machine)}</p>
        </div>
      )}
    </div>
  );
}

type StepsProps = Omit<ChangeProps, 'change'> & BuildChange;

/** What is done for it: the old one off, the new one on in its order, a test in scrap of the sheet it must fit. */
function Steps({ bench, list, card, from, to }: StepsProps) {
  const { tape, recipes } = list.plan.job;
  const { cuts } = machineAt(to.setup.machine);
  const stack = recipes[to.setup.build]?.stack;
  const isStack = cuts === 'stack' || cuts === 'shoulders';
  return (
    <ol class="pad-x msteps">
      <li>{words.offAndOn(from, to, tape)}</li>
      {isStack && stack && <li>{onArbor(stack.map(sizeWords))}</li>}
      {isStack && (
        <li>
          {testOn(stocksFitted(list, card))}{' '}
          {cuts === 'stack' && (
            <Chip
              label={stack ? words.measured : words.buildStack}
              onTap={() => bench.go({ at: 'stack', id: to.setup.build })}
            />
          )}
        </li>
      )}
    </ol>
  );
}

/** What was passed by on the build that stands, with its figures: it goes when the stack does. */
function PassedBy({ list, now }: { readonly list: Checklist; readonly now: Card | undefined }) {
  const left = now ? passedBy(list, runOf(list, now)) : [];
  if (left.length === 0) return null;
  return <p class="pad-x note">{words.passedBy(left, list.plan.job.tape)}</p>;
}
