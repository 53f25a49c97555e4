import type { ComponentChildren as Blank } from 'preact';
import { measureUnit } from '../shared/pounds';

export const title = 'What it is of';
export const whatStuff = 'What it is of';
export const whatSpecies = 'Which species it is';
export const howSawn = 'How its boards are sawn';
export const howHeavy = 'How heavy it is by its area';
export const howStiff = 'How stiff it is';
export const notSaid = 'a species not said';
export const sawn = {
  flat: { label: 'flat-sawn, or not known', hint: 'it moves more' },
  quarter: { label: 'quartersawn', hint: 'rings stand across its thickness' },
} as const;
export const pressedHint = 'MDF, particleboard, hardboard';

/** What it is of; of solid wood the species, and how it is sawn. */
export const line = (
  stuff: Blank,
  solid: { readonly species: Blank; readonly sawn: Blank } | undefined,
  at: { readonly heavy: Blank; readonly stiff: Blank },
) => (
  <>
    It is {stuff}
    {solid && (
      <>
        , {solid.species}, {solid.sawn}
      </>
    )}
    ; {at.heavy} {measureUnit('foot')}; {at.stiff} {measureUnit('stiff')} stiff.
  </>
);
