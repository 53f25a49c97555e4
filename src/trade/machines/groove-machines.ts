import { fence } from './fence';
import type { GrooveMachine } from './machine';
import { pencilMarks } from './pencil-marks';
import { router } from './router';
import { saw } from './saw';
import { sliding } from './sliding';
import { spacers } from './spacers';
import { stop } from './stop';

import type { GrooveMachineId } from './stored-ids';
import { tableRouter } from './table-router';

/** Machines that cut the grooves of a board, by their ids as they are stored. */
export const grooveMachines = {
  stop,
  fence,
  router,
  saw,
  spacers,
  index: pencilMarks,
  sliding,
  tablerouter: tableRouter,
} satisfies Readonly<Record<GrooveMachineId, GrooveMachine>>;

/** The board lies still, grooved face up, and a guide is clamped to it. */
export const isGuided = (id: GrooveMachineId): boolean => machineFor(id).holds === 'guide';

/** @example machineFor('saw').cuts // 'blade' */
export const machineFor = (id: GrooveMachineId): GrooveMachine => grooveMachines[id];
