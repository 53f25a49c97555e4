import type { OwnField, Tool } from '../../trade/machines/shop';
import { singles } from '../shared/drawer-words';
import { toolNames } from '../shared/limit-words';
import { shopFields } from '../shared/shop-field-words';
import { notMeasured } from './shop-words';

export const title = 'Machines of your own';
export const note =
  'A second saw, or one that travels: name it and measure it. A cut on it is set by its figures alone, and what is blank is asked. Its manual comes first.';
export const thing = 'Machine';
export const likeTitle = 'What does it work like?';

/** What a machine of the shop's own may work like, and what it cuts then. */
export const likes: readonly { readonly value: Tool; readonly label: string; readonly hint: string }[] = [
  { value: 'fence', label: 'Table saw, rip fence', hint: 'rips, and grooves with a stack' },
  { value: 'sled', label: 'Table saw, sled', hint: 'cuts to length, and grooves with a stack' },
  {
    value: 'sliding',
    label: 'Sliding or radial saw',
    hint: 'cuts to length, and grooves where it takes a stack',
  },
  { value: 'router', label: 'Router and guide', hint: 'grooves, with a bit of its own' },
  { value: 'table', label: 'Router table', hint: 'grooves, the end along its fence' },
  {
    value: 'circular',
    label: 'Circular saw and guide',
    hint: 'a plunge or track saw too: rips and cuts to length',
  },
];

/** What it is called until it is named. */
export const firstName = (like: Tool): string => `Another ${toolNames[like].toLowerCase()}`;
export const nameTitle = 'What is it called?';
export const worksLike = (like: Tool): string => `works like: ${toolNames[like].toLowerCase()}`;

const own: Partial<Record<OwnField, string>> = {
  arbor: singles.arbor.row,
  kerf: 'Kerf of its blade',
  circularDepth: 'Deepest it cuts',
  circularGuide: 'Longest guide',
  slidingCross: 'Widest board it cuts across',
};

export const figure = (field: OwnField): string => own[field] ?? (field === 'arbor' ? '' : shopFields[field]);
export const figureOf = (field: OwnField, name: string): string => `${name}: ${figure(field).toLowerCase()}`;
export const blank = (field: OwnField): string => (field === 'arbor' ? 'not measured' : notMeasured(field));

export const rename = 'Name it';
export const takeAway = 'Take it away';
export const takenAway = (name: string): string => `Take ${name} away`;
/** What becomes of the cuts of the job in hand; other jobs say so themselves. */
export const afterwards = (cuts: number): string =>
  cuts === 0
    ? 'No cut of this job is on it. A job whose cuts were put on it says so, and cuts them on the usual machine.'
    : `${cuts === 1 ? 'A cut of this job is' : `${cuts} cuts of this job are`} on it: ${cuts === 1 ? 'it goes' : 'they go'} back to the usual machine. What was cut stays ticked.`;
