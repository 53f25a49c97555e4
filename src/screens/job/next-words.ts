import type { GrooveMachineId } from '../../trade/machines/stored-ids';
import { grooveWords } from '../shared/machines/groove-words';

export const pickUpAt = (machine: GrooveMachineId): string => `Pick up at the ${grooveWords[machine].at}`;
