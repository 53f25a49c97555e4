import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { counted } from '../shared/counted';
import { reckoned as r, exactly as w } from '../shared/exact-words';

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
    Through the box front into the front: {r(at.least)} to {r(at.most)}. Take screws <b>{at.pick}</b> long
    {at.bite && <>, each bites {r(at.bite)}</>}. Pilot first; try one in scrap.
  </>
);

export const upIntoBack = 'Bottom to back';

type Row = { readonly count: number; readonly marks: readonly string[]; readonly in: string };

/** Screws of a bottom that was slid in; the column is named where there are several. */
export const bottomRow = (column: number | undefined, { count, marks, in: off }: Row): string =>
  `${column === undefined ? '' : `Column ${column}: `}${counted(count, 'screw', 'screws')} up through each bottom into its back, ${marks.join(', ')} from the left and ${off} in from the back edge, which is flush with the sides.`;
export const bottomTake = (long: Length, bite: Length | undefined): string =>
  `Take screws ${w(long)} long${bite ? `, each bites ${r(bite)}` : ''}. Pilot first.`;
export const bottomNone = (least: Length, most: Length): string =>
  `No screw on the shelf does: one between ${r(least)} and ${r(most)} is wanted.`;
export const bottomMoves = 'Do not glue it in; in solid wood make the holes slots, so that it can move.';
