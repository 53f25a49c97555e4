import type { Length } from '../../length/length';
import { gaugeOf, type ScrewPlace } from '../../plan/screw-plan';
import { upFrom } from '../shared/cleat-words';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

const screwsSaid = ({ count, screw, screws }: ScrewPlace): string => {
  const many = count === undefined ? 'Screws' : counted(count, 'screw', 'screws');
  const long = screw?.pick ? `, ${w(screw.pick)} long` : '';
  return `${many}, number ${gaugeOf(screws)}${long}`;
};

/** What is not known of some screws stands with them. */
const unsaid = ({ count, screw }: ScrewPlace): string =>
  screw?.pick && count !== undefined
    ? ''
    : ` ${screw?.pick ? 'How many' : 'Which screw'}: see Screws and anchors.`;

/** @param at the studs that take a screw, where they were read */
export function driven(place: ScrewPlace, at: readonly string[] | undefined): string {
  const into = place.usual.bite === 'face' ? 'the sheathing' : 'the studs';
  const where = at && at.length > 0 ? `: at ${at.join(', ')} from the left end of the wall` : '';
  return `${screwsSaid(place)}, through the cleat into ${into}${where}.${unsaid(place)}`;
}

export const holes = ({ pilot, clearance }: ScrewPlace['holes']): string =>
  `Drill ${w(clearance)} in the cleat and what is behind it, ${w(pilot)} in what the screw bites.`;

export const stands = (low: Length): string => `The lower edge of the cleat: ${w(low)} ${upFrom}.`;

export const toCleat = (place: ScrewPlace): string =>
  `${screwsSaid(place)}, through the case into its cleat.${unsaid(place)}`;
export const toCleatUnsaid =
  'Screws from the case into its cleat are not said: add them under Screws and anchors.';

export const noZones =
  'No places to keep off are said for this room. Find pipes, wires and heating tubes before the first hole.';
