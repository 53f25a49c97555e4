import { signal } from '@preact/signals';

/** A newer version is saved and waits; it starts the next time every page of the app is closed. */
export const updateWaiting = signal(false);

/** The page is served from the phone: a service worker has it. On a plain-http address there is none. */
export const servedHere = signal(Boolean(globalThis.navigator?.serviceWorker?.controller));
