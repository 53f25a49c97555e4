import { useEffect, useRef } from 'preact/hooks';

/** The browser's own idea of closing, where there is one: Escape on a desk, the back gesture on a phone. */
type Watcher = { onclose: (() => void) | null; readonly destroy: () => void };
const watcherOf = (page: Window): (new () => Watcher) | undefined =>
  (page as Window & { readonly CloseWatcher?: new () => Watcher }).CloseWatcher;

/** Closes what stands over the page on Escape and on the phone's back. Browsers without a close watcher hear Escape. */
export function useClose(onClose: () => void): void {
  const latest = useRef(onClose);
  latest.current = onClose;
  useEffect(() => {
    const Watch = watcherOf(window);
    if (Watch) {
      const watcher = new Watch();
      watcher.onclose = () => latest.current();
      return () => watcher.destroy();
    }
    const onEscape = (event: KeyboardEvent) => event.key === 'Escape' && latest.current();
    document.addEventListener('keydown', onEscape);
    return () => document.removeEventListener('keydown', onEscape);
  }, []);
}
