import { editBoard, editPart } from '../../job/edits';

/** How a board is cut is its own even where its layout comes from a case: kept with the part. */
export const editHow = (board: { readonly id: string }, patch: Parameters<typeof editPart>[1]) =>
  board.id.includes('~') ? editPart(board.id, patch) : editBoard(board.id, patch);
