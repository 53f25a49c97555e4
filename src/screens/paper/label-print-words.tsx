import type { ComponentChildren } from 'preact';
import type { Length } from '../../length/length';
import { isPositive } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { PartSides } from '../../plan/part-sides';
import type { Part } from '../../trade/carcass/part';
import { counted } from '../shared/counted';
import { exactly } from '../shared/exact-words';
import { faceWords } from '../shared/placing-words';
import { bySize } from '../shared/size-words';

export const title = 'Labels on paper';
export const listSays = 'Of parts, drawers and trays, to cut apart or on a sheet of labels';
export const of = 'Labels of';
export const parts = 'Parts';
export const drawers = 'Drawers and trays';
export const noParts = 'No label: no part has its sizes yet.';
export const noDrawers = 'No label: there is no drawer, tray or loaded shelf yet.';
export const wide = 'A label, across';
export const high = 'A label, high';
export const gap = 'Between two, side by side';
export const down = 'Between two, one over the other';
export const act = 'Labels on paper';

type Blanks = Readonly<Record<'on' | 'margin' | 'wide' | 'high' | 'gap' | 'down', ComponentChildren>>;

export const printedOn = (b: Blanks) => (
  <>
    Each label is {b.wide} across and {b.high} high, with {b.gap} between two side by side and {b.down}{' '}
    between two one over the other. Printed on {b.on}, with at least {b.margin} white all round.
  </>
);

export const takes = (labels: number, pages: number): string =>
  `${counted(labels, 'label', 'labels')} on ${counted(pages, 'page', 'pages')}, in the middle of each. A thin line goes round each one. Print at actual size: no fitting to the page.`;

/** Not one label goes on the sheet: by how much it is too large. */
export function tooLarge({ across, long }: { readonly across: Length; readonly long: Length }): string {
  const over = [
    ...(isPositive(across) ? [`${exactly(across)} too wide`] : []),
    ...(isPositive(long) ? [`${exactly(long)} too high`] : []),
  ];
  return `Not one label goes on the sheet, whichever way it lies: ${over.join(' and ')}. Make it smaller by that, or leave less white.`;
}

/** The words of a label take more than it has. */
export const tooSmall = (name: string, by: Length): string =>
  `Nothing was handed out: the words on the label of ${name} want ${exactly(by)} more height. Make the labels higher, or wider.`;

// On a label.

export const size = ({ length, width }: Part, tape: Tape): string =>
  bySize(writeMark(length.mark, tape), writeMark(width.mark, tape));
export const edge = (named: string): string => `Top of label: ${named} edge`;
export const lies = ({ face, up }: PartSides): string =>
  [...(face ? [on(faceWords(face))] : []), ...(up ? [`${up} end up`] : [])].join(', ');
const on = (face: string): string => (face.startsWith('face') ? `on ${face}` : `on the ${face}`);
export const end = ({ end: named, endAt }: PartSides): string =>
  endAt ? `${named} end` : `Reference end: ${named}`;
