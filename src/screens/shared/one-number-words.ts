import type { Wake } from './wake';

export const leave = 'Leave';
export const back = 'Back';
export const skip = 'Skip';
export const undo = 'Undo';

/** The button that takes the last act back, as a reader hears it. */
export const undoSays = (act: string | undefined): string => (act ? `Undo: ${act}` : undo);

export const wakeSays = (wake: Wake): string => (wake === 'on' ? 'Stays on' : 'May sleep');

/** Which of the numbers this is, counted from one. */
export const placeSays = (at: number, of: number): string => `${at + 1} of ${of}`;
