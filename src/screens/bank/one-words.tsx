import type { ComponentChildren as Blank } from 'preact';
import type { Bank } from '../../trade/fronts/bank';
import { capital } from '../shared/capital';
import type { OneWhat } from './steps';

export const notYet = 'These drawers cannot be worked out yet.';
export const seeMissing = 'See what is missing';
export const leave = 'Leave';

const kinds: Record<OneWhat, string> = {
  marks: 'Story stick',
  fit: 'Fitting fronts',
  sticks: 'Slides on sticks',
};

const onSticks = { runners: 'Runners on sticks', strips: 'Strips on sticks' } as const;

export const heading = (kind: OneWhat, { name, hung }: Pick<Bank, 'name' | 'hung'>): string =>
  `${kind === 'sticks' && hung ? onSticks[hung] : kinds[kind]}, ${name || 'drawers'}`;
export const progress = (done: number, of: number): string => `${done} of ${of} done`;

/** What the big bar says while something of a step is not ticked yet. */
export const toTick = (kind: OneWhat, label: string, rests = 'slide'): string =>
  kind === 'sticks' ? `${capital(label)} ${rests} is on` : label;

/** What it says where all that is open is blocked: the tap leads to the machine's screen. */
export const seeFirst = 'See what comes first';
export const heldTick = (label: string): string => `${capital(label)}, blocked`;

/** What it says once all of a step is done. */
export function onward(kind: OneWhat, last: boolean): string {
  if (kind === 'fit') return 'Measure it';
  return last ? 'All done' : 'Next';
}

export const tickAct = (ticked: boolean, title: string, label: string): string =>
  `${ticked ? 'Not yet' : 'Done'}: ${title}, ${label.toLowerCase()}`;

export const stickMeasures = (length: Blank) => <>This stick measures {length}</>;
export const stickTitle = (drawer: number): string => `What the stick of drawer ${drawer} measures`;
export const stickAct = (drawer: number): string => `Stick of drawer ${drawer} measured`;
