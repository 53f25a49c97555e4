import type { ComponentChildren } from 'preact';
import { title } from './words';

export const back = title;
export const toWorkOut = 'The case has to work out first: say what is missing.';
export const how =
  'Dry-fit and square the case, then measure each opening. Nothing changes until you take a measure up.';

const backNames: ReadonlyMap<string, string> = new Map([
  ['backw', 'Back, rabbet to rabbet'],
  ['backh', 'Back, height to cover'],
  ['backgw', 'Back, groove floor to floor'],
  ['backgh', 'Back, up from the groove floor'],
  ['backcw', 'Back, width to cover'],
  ['backch', 'Back, height to cover'],
]);

/** An opening, by the key its readings are kept under: `bay2`, `clear`, `backw`, `backh`, `frame2w`. */
export function openingName(key: string, bays: number): string {
  const [, bay] = /^bay(\d+)$/.exec(key) ?? [];
  if (bay) return bays === 1 ? 'Clear width' : `Bay ${bay}`;
  const [, frame] = /^frame(\d+)w$/.exec(key) ?? [];
  if (frame) return bays === 1 ? 'Frame opening' : `Frame opening, bay ${frame}`;
  const [, pins] = /^pins(\d+)$/.exec(key) ?? [];
  if (pins) return bays === 1 ? 'Four pins of a shelf' : `Four pins of a shelf, bay ${pins}`;
  return backNames.get(key) ?? 'Clear height';
}

export const placeNames = (across: boolean) =>
  across
    ? ({ frontA: 'front, low', frontB: 'front, high', backA: 'back, low', backB: 'back, high' } as const)
    : ({ frontA: 'front, left', frontB: 'front, right', backA: 'back, left', backB: 'back, right' } as const);

export const placeOf = (opening: string, place: string): string => `${opening}, ${place}`;
export const measured = (opening: string, place: string): string => `As built: ${placeOf(opening, place)}`;
export const takenUp = (opening: string, least: string): string => `Taken up: ${opening} ${least}`;
export const spread = (by: string): string => `Spread ${by}: square it again, or pack to the least.`;

export const planned = (figure: ComponentChildren) => <>planned {figure}</>;
export const reckonedFrom = (figure: ComponentChildren) => (
  <>What is not cut yet is worked out from {figure}.</>
);
export const seeChange = (figure: ComponentChildren) => <>See what {figure} would change</>;

// The four pins of a shelf.

export const fourPins = 'From one level face, up to each pin of one shelf.';
export const steady = (rock: string): string => `The four agree within ${rock}: the shelf lies still.`;
export const rocks = (rock: string, over: string): string =>
  `The shelf rocks: ${rock} under the fourth pin, ${over} more than 1/32. Pack the low pin.`;
