import type { Checklist } from '../../plan/checklist';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { otherSize } from '../shared/came-out-words';
import { sized } from './other-size';
import { StepPage } from './step-page';
import * as words from './words';
import './machine.css';

/** What may have become of a piece, or that it goes to another machine. */
export type AskedHere = 'spoiled' | 'other-size' | 'machine';

type WaysProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly list: Checklist;
  readonly card: Card;
  readonly first: Operation;
  readonly onAsk: (what: AskedHere) => void;
};

const oneByOne: Partial<Record<Operation['what'], string>> = {
  marks: 'marks',
  slide: 'sticks',
  'front-on': 'fit',
};

const isPiece = (op: Operation) => op.part !== 'test' && !op.part.endsWith('~bench');

/** What parts a piece may be moved to another machine here; grooves are where they are laid out. */
const isThrough = ({ what }: Operation) => what === 'rip' || what === 'length';

/** A single blade of the usual saws, whose kerf a test cut finds: a machine of the shop's own has its own. */
const cutsWithBlade = ({ setup: { machine, own } }: Operation) => {
  const { cuts, noRecipe } = machineAt(machine);
  return cuts === 'blade' && !noRecipe && !own;
};

/**
 * What else is done at a setting: a piece spoiled, or come out another size, the stack and its test cut, what a dry-fit
 * is measured for, a bank's steps one at a time.
 */
export function Ways({ bench: { go }, list, card, first, onAsk }: WaysProps) {
  const what = oneByOne[first.what];
  /** The case or the drawers a step at the bench is of. */
  const of = first.part.replace(/~bench$/, '');
  return (
    <div class="pad-x chips ways">
      {card.operations.some(isPiece) && <Chip label={words.spoiled} onTap={() => onAsk('spoiled')} />}
      {sized(list, card).length > 0 && <Chip label={otherSize} onTap={() => onAsk('other-size')} />}
      {isThrough(first) && <Chip label={words.otherMachine} onTap={() => onAsk('machine')} />}
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
