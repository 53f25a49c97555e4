const key = 'knifeline-opening';

/** Another page that starts at the same time is no start that froze. Milliseconds. */
const grace = 3000;

export type Opening = {
  /** The last start never came to stand. */
  readonly froze: boolean;
  /** The screen stands, or the page is left by hand: a frozen one gets to neither. */
  readonly stands: () => void;
};

/** Where a start goes instead of the screen that froze: to the list of jobs, or past it to what works nothing out at all. */
export const besides = (left: string): string => (left === '#/jobs' ? '#/phone' : '#/jobs');

/** Notes that a screen is being opened, and looks whether the start before this one has left its note. */
export function openingIn(notes: () => Storage, now: number): Opening {
  try {
    const before = notes().getItem(key);
    notes().setItem(key, `${now}`);
    return { froze: before !== null && now - Number(before) > grace, stands: () => notes().removeItem(key) };
  } catch {
    return { froze: false, stands: () => undefined }; // no such storage here: nothing is noted
  }
}
