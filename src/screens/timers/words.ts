import type { ComponentChildren } from 'preact';
import type { Timer } from '../../job/timers';
import { nameOf } from '../shared/timer-words';

export const title = 'Timers';
export const cuts = 'Cuts';
export const none = 'No timer yet. Glue and finish wait as long as their bottle says.';
export const add = 'Timer';
export const added = 'Timer added';
export const named = 'What waits';
export const times = { hours: 'Hours it waits', minutes: 'Minutes it waits' } as const;
export const start = 'Start';
export const startAgain = 'Start again';
export const stop = 'Stop';
export const remove = 'Remove';
export const seen = 'Seen';
export const tellMe = 'Notify me when it is over';
export const told = 'You are notified while this app is open, in front or behind.';
export const notTold = 'This phone gives no notification of it: look here.';
export const asBottle =
  'Take the times from the label, for the temperature of the room: cold and damp make them longer.';

export const isOver = (timer: Timer): string => `${nameOf(timer)}: time is over`;
export const act = (what: string, timer: Timer): string => `${what}: ${nameOf(timer)}`;

type Blanks = Readonly<Record<'name' | 'hours' | 'minutes', ComponentChildren>>;

export const waits = (b: Blanks): ComponentChildren => [
  b.name,
  ' waits ',
  b.hours,
  ' h ',
  b.minutes,
  ' min.',
];
