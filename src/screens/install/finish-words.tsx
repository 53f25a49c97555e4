import type { ComponentChildren as Blank } from 'preact';
import type { Cure } from '../../plan/put-up-plan';
import { counted } from '../shared/counted';

export const title = 'Finish';
export const toCuts = 'Cuts';
export const what = 'What it is finished with';
export const days = 'Days it cures before anything goes in';

export const sentence = (finish: Blank, wait: Blank) => (
  <>
    Finished with {finish}. Nothing goes in for {wait} days.
  </>
);

const dayOf = (at: string): string =>
  new Date(at).toLocaleDateString(undefined, { weekday: 'short', month: 'short', day: 'numeric' });

/** How far it has cured. The clock is that of the phone that ticked it. */
export function cure(x: Cure): string {
  if (x.is === 'cured') return 'Ticked as cured.';
  if (x.is === 'not-on')
    return `Once it is ticked as on, ${counted(x.days, 'day is', 'days are')} counted from there.`;
  return `On since ${dayOf(x.since)}: cured on ${dayOf(x.until)} or later, if that phone’s clock is right.`;
}

export const usual =
  'Seven days stand in until you say otherwise. What its maker says comes first; damp and cold make it longer.';
export const smell = 'It has cured when it no longer smells, also after a night in a closed drawer.';
