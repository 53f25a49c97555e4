export { sheetTitle } from './sheet-words';

export const cutOf = (title: string, no: number): string => `${title}, cut ${no}`;
export const cut = (which: string): string => `Cut: ${which}`;
export const notCut = (which: string): string => `Not cut: ${which}`;
export const begun = (title: string): string =>
  `${title} came out of this cut and is begun: take its cuts back first.`;
