import { signal } from '@preact/signals';
import type { Home } from '../screens/home';

/** What Chromium offers once the app may be put on the home screen. */
type InstallOffer = Event & { readonly prompt: () => Promise<unknown> };

/** Whether this is a window of the installed app, not a tab of the browser. */
export const onItsOwn = (): boolean =>
  matchMedia('(display-mode: standalone)').matches || iPhone()?.standalone === true;

/** Safari on a phone alone says whether it is one; there a home-screen app has a storage of its own. */
const iPhone = (): { readonly standalone: boolean } | undefined =>
  'standalone' in navigator && typeof navigator.standalone === 'boolean'
    ? { standalone: navigator.standalone }
    : undefined;

/**
 * How the app stands to the home screen. The browser's offer comes at its own time, so it is listened for from the
 * start.
 */
export function homeScreen(): Home {
  const offer = signal<InstallOffer | undefined>(undefined);
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer.value = event as InstallOffer;
  });
  return {
    at: () => (onItsOwn() ? 'home-screen' : iPhone() ? 'iphone-browser' : 'browser'),
    canPut: () => offer.value !== undefined,
    put: () => {
      void offer.value?.prompt();
      offer.value = undefined; // an offer can be taken up once
    },
  };
}
