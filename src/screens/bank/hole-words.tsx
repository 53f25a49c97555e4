import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { exactly as w } from '../shared/exact-words';

export const pulls = 'Pulls';

/** A hole from the left end; the column is named where there are several. */
export const hole = (no: number, column: number | undefined): string =>
  column === undefined ? `hole ${no}, from the left end` : `Column ${column}, hole ${no}, from the left end`;

/** How far down the holes are; `apart`: the outer holes of a jig used from both ends, where there are several. */
export const down = (at: string, apart: Length | undefined): string =>
  apart
    ? `${at} down from the top edge. Use a jig with an end stop, marked TOP, from both ends: the outer holes come ${w(apart)} apart. An error in the jig shows doubled.`
    : `${at} down from the top edge.`;

export const screws = 'Screws';
export const fromInside = 'Screw from inside';

export const take = (at: {
  readonly least: Length;
  readonly most: Length;
  readonly pick: Blank;
  readonly bite: Length | undefined;
}) => (
  <>
    Through the box front into the front: {w(at.least)} to {w(at.most)}. Take <b>{at.pick}</b>
    {at.bite && <>, it bites {w(at.bite)}</>}. Pilot first; try one in scrap.
  </>
);
