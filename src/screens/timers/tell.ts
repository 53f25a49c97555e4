// What the platform gives to call somebody back who has gone on to something else.

type Telling = 'granted' | 'default' | 'denied' | 'none';

export const telling = (): Telling => ('Notification' in globalThis ? Notification.permission : 'none');

/** Asks whether this phone may notify; only ever on a tap. */
export const askToTell = async (): Promise<Telling> =>
  'Notification' in globalThis ? Notification.requestPermission() : 'none';

/** Notifies, where that is allowed: through the service worker, which is the only way on many phones. */
export async function tell(title: string, tag: string): Promise<void> {
  navigator.vibrate?.([200, 100, 200]);
  if (telling() !== 'granted') return;
  const worker = await navigator.serviceWorker?.getRegistration();
  await worker?.showNotification(title, { tag, icon: './icon-192.png' }).catch(() => undefined);
}
