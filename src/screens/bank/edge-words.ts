import type { Bank } from '../../trade/fronts/bank';

/** The end of the opening that fronts are fitted from. */
export const endFrom: Record<Bank['order'], 'top' | 'bottom'> = { down: 'top', up: 'bottom' };

/** The end they come to last. */
export const farEnd: Record<Bank['order'], 'top' | 'bottom'> = { down: 'bottom', up: 'top' };

/** The edge of a front that is read: the one away from where the fitting began. */
export const edgeRead: Record<Bank['order'], string> = { down: 'lower', up: 'upper' };

export const edgeOfFront = (no: number, edge: 'top' | 'bottom'): string => `Front ${no}, ${edge}`;

/** An end of the opening, where it stands for an edge. */
export const ends = { top: 'top', bottom: 'bottom' } as const;
