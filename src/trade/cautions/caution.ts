import { assertNever } from '../../length/result';
import type { Operation } from '../setups/operation';

/** Every caution, by a spelling that stands in addresses: one may be added, none is ever spelled otherwise. */
export const cautions = [
  // at a machine, spelled as the machine
  'rip',
  'crosscut',
  'mitre',
  'stop',
  'fence',
  'router',
  'saw',
  'spacers',
  'index',
  'rabbet',
  'notch',
  'lap',
  'dovetail',
  'stick',
  'jig',
  'hand',
  // at a step of the bench, spelled as the step
  'dry-fit',
  'finish-inside',
  'glue-up',
  'frame-on',
  'marks',
  'box-up',
  'hang',
  'level',
  'front-on',
  // at a moment that is no operation
  'sheet-cut',
  'stick-cut',
  'carry',
  'stack',
  'shims',
  'as-built',
  'load',
  'old-finish',
] as const;

/** What can hurt at an operation or a moment of the work: a code, whose words are the screen's. */
export type Caution = (typeof cautions)[number];

/**
 * The caution of an operation: of its step at the bench, else of the machine it is done on. There is always one.
 *
 * @param op what is done, and on what machine
 * @returns its code
 * @example cautionOf({ what: 'groove', setup: { machine: 'router' } }) // 'router'
 */
export function cautionOf({ what, setup }: Asked): Caution {
  switch (what) {
    case 'dry-fit':
    case 'finish-inside':
    case 'glue-up':
    case 'frame-on':
    case 'marks':
    case 'box-up':
    case 'hang':
    case 'level':
    case 'front-on':
      return what;
    case 'rip':
    case 'length':
    case 'groove':
    case 'rabbet':
    case 'notch':
    case 'lap':
    case 'mitre':
    case 'along':
    case 'tails':
    case 'pins':
    case 'test':
    case 'hand':
    case 'slide':
    case 'pulls':
      return setup.machine === 'bench' ? 'hand' : setup.machine;
    default:
      return assertNever(what);
  }
}

type Asked = Pick<Operation, 'what'> & { readonly setup: Pick<Operation['setup'], 'machine'> };
