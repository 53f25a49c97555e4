import { useEffect } from 'preact/hooks';

/** Held, shared, while a page is at the saw. */
export const sawLock = 'knifeline-at-the-saw';
/** Held, shared, while keys, a list or a field stand open on a page. */
export const entryLock = 'knifeline-entry-open';

/** Holds a lock until the returned function is called, so that every page knows. */
export function hold(name: string): () => void {
  let free = () => {};
  const until = new Promise<void>((resolve) => {
    free = resolve;
  });
  void navigator.locks?.request(name, { mode: 'shared' }, () => until);
  return () => free();
}

/** Says to every page that an entry stands open, while it does. */
export const useEntryHeld = (): void => useEffect(() => hold(entryLock), []);
