import { signal } from '@preact/signals';
import { Workbox } from 'workbox-window';

/** A newer version is saved and waits; it starts the next time every page of the app is closed. */
export const updateWaiting = signal(false);

let workbox: Workbox | undefined;
let asked = false;

/** Registers the service worker: from then on everything is served from the phone. */
export function goOffline(): void {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  workbox = new Workbox('./sw.js');
  workbox.addEventListener('waiting', () => {
    updateWaiting.value = true;
  });
  workbox.addEventListener('controlling', () => {
    if (asked) location.reload();
  });
  workbox.register().catch(() => undefined); // no signal: what is saved goes on serving
}

/** Starts the waiting version now, unless a setting stands at the saw in any page. Says whether it may. */
export async function startUpdate(): Promise<boolean> {
  const held = (await navigator.locks?.query())?.held ?? [];
  if (held.some((lock) => lock.name === sawLock)) return false;
  asked = true;
  workbox?.messageSkipWaiting();
  return true;
}

/** Held, shared, while a page is at the saw. */
export const sawLock = 'knifeline-at-the-saw';

/** Holds the lock until the returned function is called. */
export function holdSaw(): () => void {
  let free = () => {};
  const until = new Promise<void>((resolve) => {
    free = resolve;
  });
  void navigator.locks?.request(sawLock, { mode: 'shared' }, () => until);
  return () => free();
}
