import type { Checklist } from '../../plan/checklist';
import { throughOn } from '../../plan/through-on';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { otherSize } from '../shared/came-out-words';
import { reachOf } from '../shared/shop-lists';
import { sized } from './other-size';
import { StepPage } from './step-page';
import * as words from './words';
import './machine.css';

/** What may have become of a piece, or that it goes to another machine. */
export type AskedHere = 'spoiled' | 'other-size' | 'machine';

type WaysProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly first: Operation;
  readonly onAsk: (what: AskedHere) => void;
};

const oneByOne: Partial<Record<Operation['what'], string>> = {
  marks: 'marks',
  slide: 'sticks',
  runner: 'sticks',
  'front-on': 'fit',
};

const isPiece = (op: Operation) => op.part !== 'test' && !op.part.endsWith('~bench');

/** A single blade of the usual saws, whose kerf a test cut finds: a machine of the shop's own has its own. */
const cutsWithBlade = ({ setup: { machine, own } }: Operation) => {
  const { cuts, noRecipe } = machineAt(machine);
  return cuts === 'blade' && !noRecipe && !own;
};

/**
 * What else is done at a setting: a piece spoiled, or come out another size, the stack and its test cut, what a dry-fit
 * is measured for, a bank's steps one at a time.
 */
export function Ways({ bench, list, card, first, onAsk }: WaysProps) {
  const { go } = bench;
  const what = oneByOne[first.what];
  // grooves are moved where they are laid out
  const machines = throughOn(card.operations, list.plan, reachOf(bench))?.tools ?? [];
  /** The case or the drawers a step at the bench is of. */
  const of = first.part.replace(/~bench$/, '');
  return (
    <div class="pad-x chips ways">
      {card.operations.some(isPiece) && <Chip label={words.spoiled} onTap={() => onAsk('spoiled')} />}
      {sized(list, card).length > 0 && <Chip label={otherSize} onTap={() => onAsk('other-size')} />}
      {machines.length > 1 && <Chip label={words.otherMachine} onTap={() => onAsk('machine')} />}
      {machineAt(first.setup.machine).cuts === 'stack' && (
        <Chip label={words.stackAndTest} onTap={() => go({ at: 'stack', id: first.setup.build })} />
      )}
      {cutsWithBlade(first) && <Chip label={words.kerfTest} onTap={() => go({ at: 'lookback' })} />}
      {what && <Chip label={words.oneAtATime} onTap={() => go({ at: 'one', id: of, what })} />}
      {what && <Chip label={words.frontsDrawn} onTap={() => go({ at: 'fronts', id: of })} />}
      <StepPage go={go} job={list.plan.job} op={first} feet={list.doing.feet?.(of)} />
      {first.what === 'dry-fit' && <Chip label={words.diagonals} onTap={() => go({ at: 'built', id: of })} />}
    </div>
  );
}
