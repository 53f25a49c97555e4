import type { GrooveMachineId } from '../../trade/machines/stored-ids';
import { grooveWords } from '../shared/machines/groove-words';

export const pickUpAt = (machine: GrooveMachineId, own?: { readonly name: string }): string =>
  own ? `Pick up: ${own.name}` : `Pick up at the ${grooveWords[machine].at}`;
