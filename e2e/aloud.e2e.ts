import { expect, type Page, test } from '@playwright/test';
import { openSample, pastBounce, shot } from './app';

/** A voice of the phone's own, or one that is fetched; what it was asked to say is kept on the page. */
async function withVoice(page: Page, localService: boolean): Promise<void> {
  await page.addInitScript((own) => {
    const said: string[] = [];
    const voice = { localService: own, lang: 'en-GB', default: true, name: 'stub', voiceURI: 'stub' };
    class Utterance {
      voice = undefined;
      lang = '';
      constructor(readonly text: string) {}
    }
    Object.assign(window, { said, SpeechSynthesisUtterance: Utterance });
    Object.defineProperty(window, 'speechSynthesis', {
      value: Object.assign(new EventTarget(), {
        getVoices: () => [voice],
        cancel: () => undefined,
        speak: (one: Utterance) => said.push(one.text),
      }),
    });
  }, localService);
}

const said = (page: Page) => page.evaluate(() => (window as unknown as { said: string[] }).said);

test('a tap reads the figure at the saw aloud, as it is said in a shop, with the piece and how it lies', async ({
  page,
}) => {
  await withVoice(page, true);
  await openSample(page);
  await page.goto('./#/setup/rip~r35d2~wtrue0edge');
  await page.getByRole('button', { name: 'Say it aloud' }).click();
  // 35/2: seventeen and a half
  const [first = ''] = await said(page);
  expect(first).toMatch(/^seventeen and a half; /);
  const piece = await page.locator('.mpiece b').first().textContent();
  expect(first).toContain(piece ?? '-');
  await shot(page, 'aloud');
  // another stack is a step of its own: both its figures stand giant, and both are read
  await page.goto('./#/saw/shellcase');
  await pastBounce(page);
  await page.getByRole('button', { name: 'Say it aloud' }).click();
  const [, change = ''] = await said(page);
  expect(change).toMatch(/^Change the stack; Stack .* sixty-fourths.*; Raise to a quarter.*, off the table$/);
});

test('every step is read where that was chosen, without a tap', async ({ page }) => {
  await withVoice(page, true);
  await openSample(page);
  await page.goto('./#/phone');
  await page.getByRole('button', { name: 'Every step' }).click();
  await page.goto('./#/one/drawers/marks');
  await expect.poll(async () => (await said(page)).length).toBe(1);
  await pastBounce(page);
  await page.getByRole('button', { name: 'Skip' }).click();
  await expect.poll(async () => (await said(page)).length).toBe(2);
  const [one, two] = await said(page);
  expect(one).not.toBe(two);
});

test('where the phone has no voice of its own there is nothing to tap, and all else is as it was', async ({
  page,
}) => {
  await withVoice(page, false);
  await openSample(page);
  await page.goto('./#/saw/shellcase');
  await expect(page.locator('.giant')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Say it aloud' })).toBeHidden();
});
