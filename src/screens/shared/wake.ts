import { type ReadonlySignal, signal } from '@preact/signals';

export type Wake = 'on' | 'refused';

/**
 * Keeps the screen awake while a setting stands on it. The lock is lost whenever the page is hidden, so it is
 * asked for again each time the page is seen. Where the phone refuses, the signal says so.
 */
export function keepAwake(): { readonly state: ReadonlySignal<Wake>; readonly release: () => void } {
  const state = signal<Wake>('refused');
  let lock: WakeLockSentinel | undefined;
  let released = false;
  const ask = async () => {
    if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      lock = await navigator.wakeLock.request('screen');
      if (released) return void lock.release();
      state.value = 'on';
      lock.addEventListener('release', () => {
        state.value = 'refused';
      });
    } catch {
      state.value = 'refused'; // low battery, or not allowed here
    }
  };
  document.addEventListener('visibilitychange', ask);
  void ask();
  return {
    state,
    release: () => {
      released = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    },
  };
}
