import { cautionCode, type MachineId, machineAt, machineIds, type OwnCaution } from '../machines/machines';
import type { Operation } from '../setups/operation';

/** Steps of the bench that can hurt in a way of their own: spelled as the step. */
const steps = [
  'dry-fit',
  'finish-inside',
  'glue-up',
  'frame-on',
  'marks',
  'box-up',
  'hang',
  'carry-in',
  'level',
  'front-on',
  'anchor',
  'check-again',
  'cure',
  'load',
  'label',
  'look-back',
  'scribe',
  'filler',
  'cleat',
  'stop-block',
] as const satisfies readonly Operation['what'][];

/** Moments that are no operation, and a saw let down along its guide. */
const moments = [
  'sheet-cut',
  'stick-cut',
  'carry',
  'stack',
  'shims',
  'as-built',
  'old-finish',
  'plunge',
] as const;

/** Steps that can hurt as another does. */
const like: Partial<Record<Operation['what'], (typeof steps)[number] | (typeof moments)[number]>> = {
  finish: 'finish-inside',
};

const hasOwn = (id: MachineId): id is OwnCaution => machineAt(id).caution === undefined;
const atMachines = machineIds.filter(hasOwn);

/** Every caution, by a spelling that stands in addresses: one may be added, none is ever spelled otherwise. */
export const cautions = [...atMachines, ...steps, ...moments];

/** What can hurt at an operation or a moment of the work: a code, whose words are the screen's. */
export type Caution = (typeof cautions)[number];

/**
 * The caution of an operation: of its step at the bench, else of the machine it is done on. There is always one.
 *
 * @param op what is done, and on what machine
 * @returns its code
 * @example cautionOf({ what: 'groove', setup: { machine: 'router' } }) // 'router'
 */
export const cautionOf = ({ what, setup: { machine, own } }: Asked): Caution =>
  steps.find((step) => step === what) ??
  like[what] ??
  (own?.like === 'plunge' ? 'plunge' : cautionAt(machine));

const cautionAt = (id: MachineId): OwnCaution => {
  const code = cautionCode(id, machineAt(id));
  return atMachines.find((own) => own === code) ?? 'hand';
};

type Asked = Pick<Operation, 'what'> & { readonly setup: Pick<Operation['setup'], 'machine' | 'own'> };
