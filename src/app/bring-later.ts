import { type Signal, signal } from '@preact/signals';

type Home = typeof import('./home');
type Later = typeof import('./later');

/** The page of the job in hand, once it is there. */
export const home = signal<Home | undefined>(undefined);

/** Everything that is not the first thing seen, once it is there. */
export const later = signal<Later | undefined>(undefined);

/** It did not come: a page that needs it says so. */
export const laterMissing = signal(false);

/** Brings in the page of the job in hand, or the screens that are not the first thing seen. */
export async function bringInto<T>(place: Signal<T | undefined>, coming: Promise<T>): Promise<void> {
  try {
    place.value = await coming;
  } catch {
    laterMissing.value = true;
  }
}

/** The page of the job in hand, and what reads a job. */
export const homeHere = (): Promise<void> => bringInto(home, import('./home'));

/** What works a job out; never without what reads one. */
export async function planningHere(): Promise<typeof import('./planning')> {
  const [planning] = await Promise.all([import('./planning'), homeHere()]);
  return planning;
}
