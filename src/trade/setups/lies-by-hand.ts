import type { Part } from '../carcass/part';
import type { MachineId } from '../machines/machines';
import { crosscut, rippedOn } from './lies-through';
import type { Placing } from './placing';

/**
 * How a piece lies for work added by hand, by the machine that was said: what cuts from below has the face to be cut
 * down, what cuts from above has it up. Its true edge is on the fence, the end it is measured from on the stop.
 *
 * @returns nothing at the bench, where nothing is cut
 */
export function handLies(machine: MachineId, part: Part): Placing | undefined {
  const edge = { at: 'edge', named: 'true' } as const;
  const end = { at: 'end', named: part.end } as const;
  const cut = (lies: 'up' | 'down') => ({ face: { named: 'cut', lies } }) as const;
  switch (machine) {
    case 'rip':
      return rippedOn('rip');
    case 'crosscut':
      return crosscut(part);
    case 'fence':
      return { ...cut('down'), onFence: edge, stop: 'right' };
    case 'stop':
      return { ...cut('down'), onFence: edge, toStop: end, stop: 'left', fence: 'near' };
    case 'sliding':
      return { ...cut('up'), onFence: edge, toStop: end, stop: 'left', fence: 'far' };
    case 'router':
    case 'saw':
      return { ...cut('up'), measured: end, stop: 'left', toYou: edge };
    case 'hand':
      return cut('up');
    default:
      return undefined;
  }
}
