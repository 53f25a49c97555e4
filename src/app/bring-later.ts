import { signal } from '@preact/signals';

type Home = typeof import('./home');
type Later = typeof import('./later');

/** The page of the job in hand, once it is there. */
export const home = signal<Home | undefined>(undefined);

/** Everything that is not the first thing seen, once it is there. */
export const later = signal<Later | undefined>(undefined);

/** It did not come: a page that needs it says so. */
export const laterMissing = signal(false);

/** Brings in the page of the job in hand. */
export async function bringHome(coming: Promise<Home>): Promise<void> {
  try {
    home.value = await coming;
  } catch {
    laterMissing.value = true;
  }
}

/**
 * Brings in the screens that are not the first thing seen, once all they need besides is there.
 *
 * @param coming the file they are in
 */
export async function bringLater(coming: Promise<Later>, needed: readonly Promise<unknown>[]): Promise<void> {
  try {
    const [screens] = await Promise.all([coming, ...needed]);
    later.value = screens;
  } catch {
    laterMissing.value = true;
  }
}
