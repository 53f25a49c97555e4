import { signal } from '@preact/signals';

export type Later = typeof import('./later');

/** Everything that is not the first thing seen, once it is there. */
export const later = signal<Later | undefined>(undefined);

/** It did not come: a page that needs it says so. */
export const laterMissing = signal(false);

/** Brings in the screens that are not the first thing seen. */
export async function bringLater(): Promise<void> {
  try {
    later.value = await import('./later');
  } catch {
    laterMissing.value = true;
  }
}
