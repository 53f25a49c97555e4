import type { GrooveMachineId } from '../../trade/machines/stored-ids';
import { standsAt } from '../shared/machines/set-words';

export const pickUpAt = (machine: GrooveMachineId, own?: { readonly name: string }): string =>
  own ? `Pick up: ${own.name}` : `Pick up at the ${standsAt({ machine })}`;
