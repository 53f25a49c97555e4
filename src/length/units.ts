/** A unit system: what a number without a unit is. The graduations of tapes (`tape.ts`) each belong to one. */
export type Units = 'in' | 'mm';
