import type { OwnField, ShopField, Tool } from '../../trade/machines/shop';
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
  {
    value: 'router',
    label: 'Router and guide',
    hint: 'grooves, along its own guide or that of a saw',
  },
  { value: 'table', label: 'Router table', hint: 'grooves, the end along its fence' },
  {
    value: 'circular',
    label: 'Circular saw and guide',
    hint: 'rips and cuts to length, its shoe along the guide',
  },
  {
    value: 'plunge',
    label: 'Plunge saw on its guide',
    hint: 'rips and cuts to length, the guide’s edge at the cut',
  },
  { value: 'press', label: 'Drill press', hint: 'rows of holes, off its fence' },
  { value: 'plate', label: 'Plate joiner', hint: 'slots for biscuits' },
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
  guideEdge: 'Edge of the guide to the teeth',
  pressThroat: 'Middle of the bit to the column',
  pressStroke: 'Deepest it bores at one stroke',
  pressBit: 'Largest bit it takes',
  plateDeep: 'Deepest it plunges',
  plateFence: 'Fence to the middle of the cutter, at most',
  plateBase: 'Base to the middle of the cutter',
};

const isOwn = (field: OwnField): field is Exclude<OwnField, ShopField> =>
  field === 'arbor' || field === 'guideEdge';

export const figure = (field: OwnField): string => own[field] ?? (isOwn(field) ? '' : shopFields[field]);
export const figureOf = (field: OwnField, name: string): string => `${name}: ${figure(field).toLowerCase()}`;
/** What stands for a figure not measured: a plunge saw's guide is cut off at its teeth by its first cut. */
export function blank(field: OwnField): string {
  if (field === 'guideEdge') return '0, usual';
  return isOwn(field) ? 'not measured' : notMeasured(field);
}

export const rename = 'Name it';
export const takeAway = 'Take it away';
export const takenAway = (name: string): string => `Take ${name} away`;
export const sheetsAfterwards =
  'The sheets of this job are cut on it: they go back to the usual saw, and its kerf.';
/** What becomes of the cuts of the job in hand; other jobs say so themselves. */
export const afterwards = (cuts: number): string =>
  cuts === 0
    ? 'No cut of this job is on it. A job whose cuts were put on it says so, and cuts them on the usual machine.'
    : `${cuts === 1 ? 'A cut of this job is' : `${cuts} cuts of this job are`} on it: ${cuts === 1 ? 'it goes' : 'they go'} back to the usual machine. What was cut stays ticked.`;
