import { counted } from '../shared/counted';

export const title = 'On paper';
export const toJob = 'Job';
export const sticks = 'Story sticks';
export const noSticks = 'No stick yet: a case, a bank of drawers or a board with grooves makes one.';
export const stickSays = (long: string, marks: number): string =>
  `${long} long, ${counted(marks, 'mark', 'marks')}`;
export const lists = 'Lists for the shop';
export const tickIn = 'Tick a page in';
export const tickInSays = 'What a helper has ticked, by number and letter';
export const labels = 'Labels';
export const labelsSay = 'Of drawers, trays and loaded shelves, as text';
