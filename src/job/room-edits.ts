import { edits, type Patch } from './edits';
import * as r from './room-fields';

/** The edits that change the room, and how a case stands in it; `undefined` takes a value away. */
export const editRoom = (patch: Patch<typeof r.roomFields>) => edits('room/', r.roomFields, patch);
/** One spot of the walls: wide across, and off each plumb line. */
export const editAcross = (id: string, patch: Patch<typeof r.acrossFields>) =>
  edits(`room/across/${id}/`, r.acrossFields, patch);
/** One spot of floor and ceiling: high between them, and down and up from the level line. */
export const editUpright = (id: string, patch: Patch<typeof r.uprightFields>) =>
  edits(`room/upright/${id}/`, r.uprightFields, patch);
export const editCorner = (side: 'left' | 'right', patch: Patch<typeof r.cornerFields>) =>
  edits(`room/corner/${side}/`, r.cornerFields, patch);
export const editZone = (id: string, patch: Patch<typeof r.zoneFields>) =>
  edits(`room/zone/${id}/`, r.zoneFields, patch);
/** One thing on the way in. */
export const editWay = (id: string, patch: Patch<typeof r.wayFields>) =>
  edits(`room/way/${id}/`, r.wayFields, patch);
/** How a case stands in the room. */
export const editStand = (of: string, patch: Patch<typeof r.standFields>) =>
  edits(`cases/${of}/stand/`, r.standFields, patch);
export const editFoot = (of: string, foot: string, patch: Patch<typeof r.footFields>) =>
  edits(`cases/${of}/foot/${foot}/`, r.footFields, patch);
/** One gap between an edge of a case and its wall. */
export const editGap = (of: string, id: string, patch: Patch<typeof r.gapFields>) =>
  edits(`cases/${of}/gap/${id}/`, r.gapFields, patch);
