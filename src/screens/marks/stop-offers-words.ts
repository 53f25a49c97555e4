import type { Setting } from '../../trade/grooves/settings';
import { cutTick } from './words';

/** The box of a setting, by how many of its open copies may be cut: where none may, a tap leads to the machine. */
export function box(
  setting: Setting,
  { free, open }: { readonly free: number; readonly open: number },
): string {
  const says = cutTick(setting);
  if (free === open) return says;
  return free > 0 ? `${says}, all that is not blocked` : `${says}, blocked: see it at the machine`;
}
