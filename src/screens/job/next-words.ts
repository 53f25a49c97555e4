import type { GrooveMachineId } from '../../trade/machines/groove-machines';
import { grooveWords } from '../shared/machines/groove-words';

export const pickUpAt = (machine: GrooveMachineId): string => `Pick up at the ${grooveWords[machine].at}`;
