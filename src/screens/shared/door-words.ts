import { compare, isZero, type Length } from '../../length/length';
import { type DoorField, type DoorFound, isInTheWay } from '../../plan/door-plan';
import type { DoorPlaceError, Move, Swing } from '../../trade/room/door-swing';
import { exactly as w } from './exact-words';
import { wayName } from './way-words';

const fields: Record<DoorField, string> = {
  corner: 'from which corner it is measured',
  fromCorner: 'how far from the corner its opening begins',
  width: 'how wide it is clear',
  hung: 'at which side it is hung',
  swing: 'whether it opens into the room',
  deep: 'how far the wall is that faces the case',
  wide: 'how wide the room is',
};

/** What is missing to see what the door does to a case. */
const askDoor = ({ way, asks }: DoorFound): string =>
  `${wayName(way)}: to see whether it strikes the case, say ${asks.map((field) => fields[field]).join(', ')}.`;

/** Why an opening cannot be where it was said to be, by how much, and what would fit. */
export function doorPlaceText(name: string, error: DoorPlaceError): string {
  switch (error.code) {
    case 'past-corner':
      return `${name}: its opening would end ${w(error.by)} past the other corner. From its own corner 0 to ${w(error.most)} fits.`;
    case 'wider-than-wall':
      return `${name}: its opening is ${w(error.by)} wider than the wall it is in. Up to ${w(error.most)} fits.`;
  }
}

/** The least move that there is room for; else the least. */
const best = (moves: readonly Move[]): Move | undefined =>
  [...moves].sort((a, b) => Number(Boolean(a.short)) - Number(Boolean(b.short)) || compare(a.by, b.by))[0];

function moveText(moves: readonly Move[]): string {
  const move = best(moves);
  if (!move) return '';
  const { by, toward, short } = move;
  if (!short) return `Stand the case ${w(by)} farther to the ${toward}, and it opens to a right angle.`;
  return `The case would have to stand ${w(by)} farther to the ${toward}, ${w(short)} more than is free there. Opening out of the room the door would clear it.`;
}

const opens = (to: Length): string =>
  isZero(to) ? 'it does not open at all' : `it opens until its edge is ${w(to)} off its own wall`;

function swingText(swing: Swing): string {
  switch (swing.code) {
    case 'away':
      return 'its leaf opens away from the case.';
    case 'clear':
      return isZero(swing.spare)
        ? 'its leaf just clears the case.'
        : `its leaf keeps ${w(swing.spare)} off the case.`;
    case 'strikes':
      return `its leaf strikes the case, ${opens(swing.opensTo)}. ${moveText(swing.moves)}`;
  }
}

/** What a door of the room does to the case as it stands; nothing where that is not known. */
export function doorText(found: DoorFound): { readonly says: string; readonly wrong: boolean } | undefined {
  const { way, swing, before } = found;
  const says = [
    ...(before ? [`the case stands ${w(before)} before its opening.`] : []),
    ...(swing && !(before && swing.code !== 'strikes') ? [swingText(swing)] : []),
  ];
  if (says.length === 0) return undefined;
  return { says: `${wayName(way)}: ${says.join(' And ')}`, wrong: isInTheWay(found) };
}

/** The same for the page it is said on: there what is missing, or cannot be, is said too. */
export function doorTold(found: DoorFound): { readonly says: string; readonly wrong: boolean } | undefined {
  const { way, asks, opening } = found;
  if (opening && !opening.ok) return { says: doorPlaceText(wayName(way), opening.error), wrong: true };
  const told = doorText(found);
  if (asks.length === 0 || told?.wrong) return told;
  return { says: askDoor(found), wrong: false };
}
