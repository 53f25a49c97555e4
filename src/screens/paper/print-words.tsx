import type { ComponentChildren } from 'preact';
import type { ListProblem } from '../../plan/list-print';
import { counted } from '../shared/counted';
import { exactly } from '../shared/exact-words';

/** What is printed of a job beside its sticks, with a frozen spelling: it stands in addresses. */
export const prints = ['setups', 'parts', 'sheets'] as const;
export type PrintId = (typeof prints)[number];

export const titles: Readonly<Record<PrintId, string>> = {
  setups: 'Setup sheets',
  parts: 'Cut list by part',
  sheets: 'Sheets with their cuts',
};
export const says: Readonly<Record<PrintId, string>> = {
  setups: 'A page for each blade, stack or height, with boxes to tick',
  parts: 'Sizes, stock, and what is done to each in order',
  sheets: 'Each sheet to scale, its cuts numbered',
};
export const nothing: Readonly<Record<PrintId, string>> = {
  setups: 'Nothing to print: no cut is left to be made.',
  parts: 'Nothing to print: no part has its sizes yet.',
  sheets: 'Nothing to print: no sheet is laid out that is not cut.',
};
export const back = 'Back';
export const cutOf = (cut: number, of: number): string => `${cut} of ${of} cut`;
export const which = 'Which setups';
export const allSetups = 'All that are open';
export const nextBuild = 'The next cutter alone';
export const paper = 'Printed on';
export const papers = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const;
export const rollOrSheets = [...papers, { value: 'roll', label: 'a roll' }] as const;
export const margin = 'White all round';
export const overlap = 'Sheets lap';
export const makePdf = 'Make the PDF';
export const today = (): string =>
  new Date().toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
export const gone = 'There is no such print.';
export const goneTitle = 'Print';

export const printedOn = (b: Readonly<Record<'on' | 'margin', ComponentChildren>>) => (
  <>
    Printed on {b.on}, with {b.margin} white all round.
  </>
);

export const fileName = (job: string, title: string): string =>
  `${job ? `${job.replace(/[:/\\]/g, '')}, ` : ''}${title.toLowerCase()}`;

export const leftOut = (setups: number): string =>
  `${counted(setups, 'setup is', 'setups are')} done and left out.`;

/** Why it cannot be printed, by how much, and what would fit. */
export const cannot = ({ by, most }: ListProblem): string =>
  `The white leaves too little room for a list: ${exactly(by)} too much at each side. ${exactly(most)} or less fits.`;
