import { lengthMachines, ripMachines } from '../trade/machines/through';
import { oneOf, silent, stockId, text } from './kinds';

/** A machine of the shop's own as a job that uses it knows it: by name, where a phone has it not. */
export const ownNameFields = { name: silent(text(80)) };

/** Which machine of the shop's own cuts the grooves of a board. */
export const groovedByFields = { by: stockId };

/** Which machines of the shop's own cut the sheets: along the guide, and at the rip fence. */
export const sheetSawFields = { guideSaw: stockId, fenceSaw: stockId };

/** What a part is ripped on, and cut to length, where that was chosen; and which machine of the shop's own that is. */
export const throughFields = {
  ripOn: oneOf(...ripMachines),
  lengthOn: oneOf(...lengthMachines),
  ripBy: stockId,
  lengthBy: stockId,
  edgeBy: stockId,
  alongBy: stockId,
  shoulderBy: stockId,
  boreBy: stockId,
  slotBy: stockId,
};
