import type { Length } from '../length/length';
import { toStored } from '../length/stored';
import * as b from './bank-fields';
import type { Change } from './entry';
import * as f from './fields';
import { boardFields, type Field, jobFields, runFields, stockFields, wideFields } from './fields';
import * as h from './hand-fields';
import * as i from './install-fields';
import { liftFields, shelfFields, solidFields } from './loads-fields';
import { ownNameFields } from './own-fields';

export type Patch<T extends object> = {
  readonly [K in keyof T]?: T[K] extends Field<infer V> ? V | undefined : never;
};

/** The edits of a table under a path. */
export function edits<T extends object>(at: string, table: T, patch: Patch<T>): readonly Change[] {
  return Object.entries(patch).map(([name, value]) => {
    const field = (table as Record<string, Field<unknown>>)[name];
    if (!field) throw new RangeError(`no field ${name}`);
    return { kind: 'edit', path: `${at}${name}`, value: value === undefined ? null : field.write(value) };
  });
}

/** The edits that change a job, a board, a run, a wide groove or a sheet; `undefined` takes a value away. */
export const editJob = (patch: Patch<typeof jobFields>) => edits('', jobFields, patch);
export const editBoard = (id: string, patch: Patch<typeof boardFields>) =>
  edits(`boards/${id}/`, boardFields, patch);
export const editRun = (boardId: string, id: string, patch: Patch<typeof runFields>) =>
  edits(`boards/${boardId}/runs/${id}/`, runFields, patch);
export const editWide = (boardId: string, id: string, patch: Patch<typeof wideFields>) =>
  edits(`boards/${boardId}/wides/${id}/`, wideFields, patch);
export const editStock = (id: string, patch: Patch<typeof stockFields>) =>
  edits(`stock/${id}/`, stockFields, patch);
/** One thickness read of a sheet. */
export const editReading = (stock: string, id: string, patch: Patch<typeof f.readingFields>) =>
  edits(`stock/${stock}/reading/${id}/`, f.readingFields, patch);
export const editBadPlace = (stock: string, id: string, patch: Patch<typeof f.badFields>) =>
  edits(`stock/${stock}/badplace/${id}/`, f.badFields, patch);
/** One place of a run whose places are given one by one. */
export const editPlace = (
  of: { readonly board: string; readonly run: string },
  id: string,
  patch: Patch<typeof f.placeFields>,
) => edits(`boards/${of.board}/runs/${of.run}/place/${id}/`, f.placeFields, patch);
/** A bay's own width; without one it shares what is left. */
export const editBay = (of: string, no: number, wide: Length | undefined) =>
  edits(`cases/${of}/bay/b${no}/`, f.bayFields, { wide, open: wide ? undefined : true });
export const editCase = (id: string, patch: Patch<typeof f.caseFields>) =>
  edits(`cases/${id}/`, f.caseFields, patch);
export const editInside = (of: string, id: string, patch: Patch<typeof f.insideFields>) =>
  edits(`cases/${of}/inside/${id}/`, f.insideFields, patch);
export const editBuilt = (of: string, opening: string, patch: Patch<typeof f.builtFields>) =>
  edits(`cases/${of}/built/${opening}/`, f.builtFields, patch);
export const editBank = (id: string, patch: Patch<typeof b.bankFields>) =>
  edits(`banks/${id}/`, b.bankFields, patch);
export const editFront = (bank: string, no: number, patch: Patch<typeof b.frontFields>) =>
  edits(`banks/${bank}/fronts/f${no}/`, b.frontFields, patch);
export const editColumn = (bank: string, no: number, patch: Patch<typeof b.columnFields>) =>
  edits(`banks/${bank}/columns/c${no}/`, b.columnFields, patch);
/** A front of a column as fitted. */
export const editFitted = (
  at: { readonly bank: string; readonly column: number; readonly front: number },
  patch: Patch<typeof b.fittedFields>,
) => edits(`banks/${at.bank}/columns/c${at.column}/fitted/f${at.front}/`, b.fittedFields, patch);
export const editThing = (id: string, patch: Patch<typeof b.thingFields>) =>
  edits(`things/${id}/`, b.thingFields, patch);
/** How a shelf or a run of trays is loaded and held, by part. */
export const editShelf = (part: string, patch: Patch<typeof shelfFields>) =>
  edits(`shelves/${part}/`, shelfFields, patch);
/** How a case is moved in, and a load of it lifted. */
export const editLift = (of: string, patch: Patch<typeof liftFields>) =>
  edits(`lifts/${of}/`, liftFields, patch);
/** Solid wood, by part. */
export const editSolid = (part: string, patch: Patch<typeof solidFields>) =>
  edits(`solid/${part}/`, solidFields, patch);
export const editPart = (id: string, patch: Patch<typeof f.partFields>) =>
  edits(`parts/${id}/`, f.partFields, patch);
/** What a machine of the shop's own is called, beside the cuts put on it. */
export const editOwnName = (id: string, name: string) => edits(`machines/${id}/`, ownNameFields, { name });
export const editPiece = (part: string, copy: string, patch: Patch<typeof f.pieceFields>) =>
  edits(`parts/${part}/pieces/${copy}/`, f.pieceFields, patch);
export const editWork = (id: string, patch: Patch<typeof h.workFields>) =>
  edits(`work/${id}/`, h.workFields, patch);
export const editHandJoint = (id: string, patch: Patch<typeof h.jointFields>) =>
  edits(`joints/${id}/`, h.jointFields, patch);
export const editRecipe = (key: string, patch: Patch<typeof f.recipeFields>) =>
  edits(`recipes/${key}/`, f.recipeFields, patch);
export const editOffcut = (id: string, patch: Patch<typeof f.offcutFields>) =>
  edits(`offcuts/${id}/`, f.offcutFields, patch);
export const editSheet = (id: string, patch: Patch<typeof f.sheetFields>) =>
  edits(`sheets/${id}/`, f.sheetFields, patch);
export const editLayout = (stockId: string, patch: Patch<typeof f.layoutFields>) =>
  edits(`layouts/${stockId}/`, f.layoutFields, patch);
/** A copy is spoiled: its first making is 1. Two phones that spoil one making say one thing. */
export const spoilPiece = (part: string, copy: string, making: number) =>
  edits(`parts/${part}/pieces/${copy}/spoils/g${making}/`, f.spoilFields, { spoiled: true });
/** A tick with the figure it was cut to; of a joint how wide too, where something stands in it, and how deep. */
export const tickOf = (
  op: string,
  figure: Length,
  joint: Patch<typeof f.widthFields> = {},
): readonly Change[] => [
  { kind: 'tick', op, figure: toStored(figure) },
  ...editJoint(op, Object.fromEntries(Object.entries(joint).filter(([, x]) => x !== undefined))),
];
/** What a tick of a groove keeps of it: its depth, and its width where something stands in it. */
export const jointCut = (groove: {
  readonly width: Length;
  readonly depth?: Length;
  readonly fits?: string;
}) => ({
  depth: groove.depth,
  width: groove.fits === undefined ? undefined : groove.width,
});
/** How wide and how deep a joint was cut, beside its tick. */
export const editJoint = (op: string, joint: Patch<typeof f.widthFields>) =>
  edits(`widths/${op.replace(/^cut\//, '')}/`, f.widthFields, joint);
/** Lets a blocked operation go ahead, and says why. */
export const letAheadOf = (op: string, why: string | undefined) =>
  edits(`let/${op.replace(/^cut\//, '')}/`, f.letFields, { why });
export const editPutUp = (place: string, patch: Patch<typeof i.putUpFields>) =>
  edits(`putup/${place}/`, i.putUpFields, patch);
export const editScrews = (id: string, patch: Patch<typeof i.screwFields>) =>
  edits(`screws/${id}/`, i.screwFields, patch);
export const editJoin = (id: string, patch: Patch<typeof i.joinFields>) =>
  edits(`joins/${id}/`, i.joinFields, patch);
/** A test of the kerf of a blade: by the shop's figure of it, or by the machine of the shop's own it is in. */
export const editKerfTest = (blade: string, patch: Patch<typeof i.kerfFields>) =>
  edits(`kerftest/${blade}/`, i.kerfFields, patch);
/** One thing to do otherwise next time. */
export const editNextTime = (id: string, patch: Patch<typeof i.nextFields>) =>
  edits(`next/${id}/`, i.nextFields, patch);
