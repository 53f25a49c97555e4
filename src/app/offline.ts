import { Workbox } from 'workbox-window';
import type { UpdateHeld } from '../screens/bench';
import { entryLock, sawLock } from '../ui/hold';
import { servedHere, updateWaiting } from './served';

let workbox: Workbox | undefined;
let asked = false;

/** Registers the service worker: from then on everything is served from the phone. */
export function goOffline(): void {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    servedHere.value = true;
  });
  workbox = new Workbox('./sw.js');
  workbox.addEventListener('waiting', () => {
    updateWaiting.value = true;
  });
  workbox.addEventListener('controlling', ({ isUpdate }) => {
    if (asked || isUpdate) void reload(); // a page of the old version may lack a file by now
  });
  workbox.register().catch(() => undefined); // no signal: what is saved goes on serving
}

/**
 * Starts the waiting version now: not while a setting stands at the saw or an entry is open in any page, and not before
 * what is kept is safe. Says what holds it; undefined when it starts.
 */
export async function startUpdate(secured: () => Promise<boolean>): Promise<UpdateHeld | undefined> {
  const held = (await heldNow()) ?? ((await secured()) ? await heldNow() : 'not-secured');
  if (held) return held;
  asked = true;
  workbox?.messageSkipWaiting();
  return undefined;
}

async function heldNow(): Promise<UpdateHeld | undefined> {
  const held = (await navigator.locks?.query())?.held ?? [];
  if (held.some(({ name }) => name === sawLock)) return 'at-the-saw';
  return held.some(({ name }) => name === entryLock) ? 'entry-open' : undefined;
}

/** Opens the page anew, as soon as no page is at the saw or has an entry open: one may have been opened meanwhile. */
async function reload(): Promise<void> {
  const alone = (name: string, then: () => unknown) => navigator.locks?.request(name, then) ?? then();
  await alone(sawLock, () => alone(entryLock, () => location.reload()));
}
