import { useEffect } from 'preact/hooks';

/** One after the other: which are done, which is in hand. */
export type InRow = { readonly done: readonly boolean[]; readonly at: number };

/**
 * The step to show: the one asked for, else the first not done, else the last.
 *
 * @param ids one for each step, as it stands in an address
 * @returns its place; -1 where there is no step
 * @example stepToShow(['a', 'b', 'c'], [true, false, false], undefined) // 1
 */
export function stepToShow(
  ids: readonly string[],
  done: readonly boolean[],
  asked: string | undefined,
): number {
  const at = asked === undefined ? -1 : ids.indexOf(asked);
  if (at >= 0) return at;
  const open = done.indexOf(false);
  return open >= 0 ? open : ids.length - 1;
}

/**
 * The next step not done: one after this first, then from the start.
 *
 * @example nextNotDone({ done: [false, true, true], at: 2 }) // 0
 */
export function nextNotDone({ done, at }: InRow): number | undefined {
  const after = done.indexOf(false, at + 1);
  const next = after >= 0 ? after : done.indexOf(false);
  return next >= 0 ? next : undefined;
}

/** Keeps the step that is shown in the address: nothing but a tap changes the figure. */
export function useStepInAddress(
  shown: string | undefined,
  asked: string | undefined,
  write: (step: string) => void,
): void {
  useEffect(() => {
    if (shown !== undefined && shown !== asked) write(shown);
  }, [shown, asked]);
}
