import type { Machine } from '../../trade/grooves/board';

/** What a person calls the machine they stand at. */
export const machineWord = (machine: Machine): string => (machine === 'router' ? 'router' : 'saw');
