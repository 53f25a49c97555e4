import { blocks, type Checklist } from '../../plan/checklist';
import type { Blocked } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { whatWords } from './cut-words';
import { shopFields } from './layout-words';
import { workWord } from './part-words';
import { setupTitle } from './setup-title';

/** Why a blocked cut may go ahead: kept with it. */
export const reasons = ['measured another way', 'cut over size, to be trimmed', 'I know what I’m doing'];

/** What an operation waits for; the empty word where for nothing. */
export function blockWords(list: Checklist, op: Operation): string {
  const [first, ...more] = blocks(list, op);
  if (!first) return '';
  const says = oneBlock(list, first);
  return more.length === 0 ? says : `${says} and ${more.length} more`;
}

function oneBlock(list: Checklist, block: Blocked): string {
  switch (block.by) {
    case 'stock':
      return `${list.plan.job.stock.find((s) => s.id === block.stock)?.name ?? 'The sheet'} is not measured`;
    case 'layout':
      return 'its grooves cannot be set out yet, see Marks';
    case 'shop':
      return `measure once for the shop: ${shopFields[block.field].toLowerCase()}`;
    case 'opening':
      return `its opening is not measured ${block.bank.endsWith('~back') ? 'front and back' : 'yet'}`;
    default:
      return `${workWord(block.op.name)}, ${stepOrCut(block.op, list)}, comes first`;
  }
}

const stepOrCut = (op: Operation, list: Checklist): string =>
  isStep(op) ? setupTitle(op).toLowerCase() : whatWords(op, list.plan.job.tape);
