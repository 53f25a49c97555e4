import type { Checklist } from '../../plan/checklist';
import type { Held } from '../../plan/offers';
import type { Cuts } from '../../trade/machines/machine';
import { machineAt } from '../../trade/machines/machines';
import type { Operation } from '../../trade/setups/operation';
import { blockWords } from './block-words';
import { notWorkedOut } from './too-much-words';

export const blocked = 'Blocked:';
export const inRing = 'The cuts of this job wait for one another in a ring, so none has its turn.';

const changes: Partial<Record<Cuts, string>> = {
  stack: 'Change the stack',
  shoulders: 'Set the stack',
  bit: 'Change the bit',
  blade: 'Put the blade on',
};

/** What is done to the machine before anything is cut at an operation's stack, bit or height. */
export const changeWords = (to: Operation): string =>
  changes[machineAt(to.setup.machine).cuts] ?? 'Change the cutter';

const small = (says: string): string => says.charAt(0).toLowerCase() + says.slice(1);

/** Why a cut cannot be ticked, wherever it stands: in the words of the machine's screen. */
export function heldWords(list: Checklist, held: Held): string {
  switch (held.by) {
    case 'what-comes-first':
      return `${blocked} ${blockWords(list, held.op)}`;
    case 'change':
      return `${blocked} ${small(changeWords(held.to))} first`;
    case 'ring':
      return inRing;
    default:
      return notWorkedOut;
  }
}
