import type { ComponentChildren as Blank } from 'preact';

export const title = 'What it is of';
export const whatStuff = 'What it is of';
export const whatSpecies = 'Which species it is';
export const howSawn = 'How its boards are sawn';
export const howHeavy = 'What a square foot of it weighs, pounds';
export const howStiff = 'How stiff it is, millions of pounds a square inch';
export const notSaid = 'a species not said';
export const sawn = {
  flat: { label: 'flat-sawn, or not known', hint: 'it moves more' },
  quarter: { label: 'quartersawn', hint: 'rings stand across its thickness' },
} as const;
export const millions = 'million lb/in²';
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
    ; {at.heavy} lb a square foot; {at.stiff} million pounds a square inch stiff.
  </>
);
