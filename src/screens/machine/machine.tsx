import { checklistOf } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { cardOfGroove, changeFor } from '../../plan/run';
import type { Board } from '../../trade/grooves/board';
import { layOut } from '../../trade/grooves/lay-out';
import type { Card } from '../../trade/setups/checklist';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { GonePage } from '../shared/gone-page';
import { inRing } from '../shared/held-words';
import { NoBoard } from '../shared/no-board';
import { useStepInAddress } from '../shared/steps-in-row';
import { TooManyOperations } from '../shared/too-many';
import { ChangeOfBuild } from './change-of-build';
import { Recipe } from './recipe';
import { SettingInHand } from './setting';
import * as words from './words';
import './machine.css';

/** One setting, the same from wherever it is opened: its figure giant, and for each piece how it lies. */
export function MachineScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const list = plan && checklistOf(plan, bench.folded.value);
  // a stack's page names its build alone
  const card =
    list?.cards.find((c) => c.id === id) ?? list?.cards.find((c) => c.operations[0]?.setup.build === id);
  if (!list || !card) return <Gone bench={bench} id={id} />;
  const change = changeFor(list, card);
  return change ? (
    <ChangeOfBuild key={card.id} {...{ bench, list, card, change }} />
  ) : (
    <SettingInHand key={card.id} {...{ bench, list, card }} />
  );
}

type GrooveProps = { readonly bench: Bench; readonly board: string; readonly setting: string | undefined };

/** The setting of a groove, by the board it is in: it keeps its address when the figure changes. */
export function GrooveScreen({ bench, board: id, setting }: GrooveProps) {
  const plan = bench.plan.value;
  const board = boardOf(bench, id);
  if (!board || !plan) return <NoBoard bench={bench} />;
  const list = checklistOf(plan, bench.folded.value);
  const card = cardOfGroove(list, id, setting) ?? cardOfGroove(list, id, undefined);
  return card ? <Fixed {...{ bench, card, id, setting }} /> : <NothingToCut {...{ bench, plan, board }} />;
}

type FixedProps = Pick<GrooveProps, 'bench' | 'setting'> & { readonly card: Card; readonly id: string };

/** Keeps the setting that is shown in the address: nothing but a tap changes the figure. */
function Fixed({ bench, card, id, setting }: FixedProps) {
  const shown = card.operations.find((op) => op.groove?.board === id)?.groove?.setting;
  useStepInAddress(shown, setting, (to) => bench.go({ at: 'saw', board: id, setting: to }, true));
  return <MachineScreen bench={bench} id={card.id} />;
}

type NothingProps = { readonly bench: Bench; readonly plan: Plan; readonly board: Board };

/** Why no groove of a board can be set. */
function NothingToCut({ bench, plan, board }: NothingProps) {
  const broken = layOut(board).problems.length > 0;
  const ring = !plan.order.ok;
  const says = ring ? inRing : broken ? words.cannotBeCut : words.figureWanted;
  if (plan.over !== undefined)
    return (
      <main class="page nothing">
        <TooManyOperations over={plan.over} />
      </main>
    );
  return (
    <main class="page nothing">
      <p>{says}</p>
      <Button
        label={ring ? words.toCuts : words.seeMissing}
        look="main"
        onTap={() => bench.go(ring ? { at: 'cuts' } : { at: broken ? 'change' : 'stops', board: board.id })}
      />
    </main>
  );
}

/** The figure of a setup changes with the readings; its recipe stays under the figure it had. */
function Gone({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  return (
    <GonePage
      title={words.setup}
      leave={{ label: words.cuts, word: true, onTap: () => bench.go({ at: 'cuts' }) }}
      says={words.setupGone}
    >
      <Recipe bench={bench} id={id.split('~~')[0] ?? id} />
    </GonePage>
  );
}
