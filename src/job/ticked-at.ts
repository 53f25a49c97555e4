import type { Length } from '../length/length';
import { toStored } from '../length/stored';
import type { Folded } from './folded';

/** Whether a step is ticked at the figure it has now. At another it is not done yet. */
export const tickedAt = (ticks: Folded['ticks'], op: string, figure: Length): boolean =>
  ticks.get(op)?.figure === toStored(figure);
