import { useState } from 'preact/hooks';

const kept = new Map<string, unknown>();

/** State that outlives its screen while the page lives: who leaves to read a caution finds again what was given. */
export function useStays<T>(name: string, first: T): readonly [T, (value: T) => void] {
  const [value, set] = useState<T>(kept.has(name) ? (kept.get(name) as T) : first);
  const keep = (next: T) => {
    kept.set(name, next);
    set(next);
  };
  return [value, keep];
}
