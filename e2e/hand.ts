import { expect, type Locator, type Page } from '@playwright/test';
import { pastBounce, pastQuickBounce } from './app';

/**
 * A hand that does only what a user's does, and counts: a tap is one, a key of a pad is one, a character typed is one.
 * What is looked at, scrolled to or waited for is none.
 */
export type Hand = {
  readonly tap: (on: Locator) => Promise<void>;
  /** Keys of a pad, by their names. */
  readonly keys: (names: readonly string[]) => Promise<void>;
  /** A figure on the keys of a pad: `28 3/4` is 2, 8, 3/4; `18 mm` is 1, 8, mm. */
  readonly figure: (figure: string) => Promise<void>;
  readonly taps: () => number;
};

export function handOn(page: Page): Hand {
  let taps = 0;
  const touch = async (on: Locator): Promise<void> => {
    await on.click();
    taps += 1;
  };
  const keys = async (names: readonly string[]): Promise<void> => {
    for (const name of names) {
      await touch(page.getByRole('button', { name, exact: true }).last());
      await pastQuickBounce(page);
    }
  };
  return {
    tap: async (on) => {
      await touch(on);
      await pastBounce(page);
    },
    keys,
    figure: (figure) => keys(keysOf(figure)),
    taps: () => taps,
  };
}

/** Whole inches digit by digit, a fraction as the one key it is, a unit as its key. */
const keysOf = (figure: string): readonly string[] =>
  figure.split(' ').flatMap((word) => (word.includes('/') || /^[a-z]+$/.test(word) ? [word] : [...word]));

/** What docks below, once it stands. */
export async function dockOf(page: Page): Promise<Locator> {
  const dock = page.getByRole('dialog');
  await expect(dock).toBeVisible();
  return dock;
}
