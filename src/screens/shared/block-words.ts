import { blocks, type Checklist } from '../../plan/checklist';
import type { Blocked, FeetStand } from '../../trade/setups/checklist';
import { isStep, type Operation, type What } from '../../trade/setups/operation';
import { whatWords } from './cut-words';
import { ownName } from './machines/machine-names';
import { workWord } from './part-words';
import { setupTitle } from './setup-title';
import { shopFields } from './shop-field-words';

const own = 'I know what I’m doing';
const cutting = ['measured another way', 'cut over size, to be trimmed', own];
const atBench = ['checked another way', 'this comes first here', own];
/** What is put up and finished goes ahead for reasons of its own. */
const puttingUp: Partial<Record<What, readonly string[]>> = {
  'carry-in': ['the rest is made where it stands', 'it goes in in parts', own],
  level: ['set by the level alone', 'it is levelled as one with its neighbour', own],
  scribe: ['it stands as it will stay', 'it is levelled as one with its neighbour', own],
  filler: ['ripped ahead, scribed later', 'it stands as it will stay', own],
  cleat: ['the cleat is screwed up already', 'it goes up after the case here', own],
  anchor: ['it must be held before it is levelled', 'it will be levelled at the anchors', own],
  'check-again': ['only a look for now', own],
  finish: ['finished before it goes in', 'what is left is not finished', own],
  cure: ['cured by its maker’s word', 'nothing was finished', own],
  load: ['it is held to the building another way', 'nothing was finished'],
  label: ['labels go on early here', own],
  'look-back': ['looked back at early', own],
};

/** Why a blocked cut or step may go ahead: kept with it. */
export const reasonsFor = (op: Operation): readonly string[] =>
  puttingUp[op.what] ?? (isAtBench(op) ? atBench : cutting);

/** Nothing is cut at it: on the bench, or on a stick or a jig there. */
export const isAtBench = ({ part }: Pick<Operation, 'part'>): boolean => part.endsWith('~bench');

/** What an operation waits for; the empty word where for nothing. */
export function blockWords(list: Checklist, op: Operation): string {
  const [first, ...more] = blocks(list, op);
  if (!first) return '';
  const says = oneBlock(list, first, op);
  return more.length === 0 ? says : `${says} and ${more.length} more`;
}

/** How a case stands that was read foot by foot. @example feetSet({ set: 3, of: 4 }) // '3 of 4 feet set' */
export const feetSet = ({ set, of }: FeetStand): string => `${set} of ${of} feet set`;

function oneBlock(list: Checklist, block: Blocked, { setup: { own } }: Operation): string {
  switch (block.by) {
    case 'stock':
      return `${list.plan.job.stock.find((s) => s.id === block.stock)?.name ?? 'The sheet'} is not measured`;
    case 'layout':
      return 'its grooves cannot be set out yet, see Marks';
    case 'shop':
      return `measure once for ${own ? ownName(own) : 'the shop'}: ${shopFields[block.field].toLowerCase()}`;
    case 'feet':
      return feetSet(block);
    case 'opening':
      return `its opening is not measured ${block.bank.endsWith('~back') ? 'front and back' : 'yet'}`;
    default:
      return `${workWord(block.op.name)}, ${stepOrCut(block.op, list)}, comes first`;
  }
}

const stepOrCut = (op: Operation, list: Checklist): string =>
  isStep(op) ? setupTitle(op).toLowerCase() : whatWords(op, list.plan.job.tape);
