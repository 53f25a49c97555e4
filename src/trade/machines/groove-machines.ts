import { fence } from './fence';
import type { GrooveMachine } from './machine';
import { pencilMarks } from './pencil-marks';
import { router } from './router';
import { saw } from './saw';
import { sliding } from './sliding';
import { spacers } from './spacers';
import { stop } from './stop';

/** Machines that cut the grooves of a board, as they are offered. The ids are stored: no spelling is ever changed. */
export const grooveMachines = { stop, fence, router, saw, spacers, index: pencilMarks, sliding };

export type GrooveMachineId = keyof typeof grooveMachines;

export const grooveMachineIds = Object.keys(grooveMachines) as readonly GrooveMachineId[];

/** The board lies still, grooved face up, and a guide is clamped to it. */
export const isGuided = (id: GrooveMachineId): boolean => machineFor(id).holds === 'guide';

/** @example machineFor('saw').cuts // 'blade' */
export const machineFor = (id: GrooveMachineId): GrooveMachine => grooveMachines[id];
