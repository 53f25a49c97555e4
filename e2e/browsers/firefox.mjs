// Firefox by Playwright: a profile on disk, ended with all its processes and opened again.
import { firefox } from 'playwright-core';
import { endProcesses } from '../kills/process.mjs';

const patience = 60_000;

/** @returns a hand; see `stepsOf` */
export async function firefoxHand({ folder, path: executablePath }) {
  const open = () =>
    firefox.launchPersistentContext(folder, { executablePath, channel: 'moz-firefox', headless: true });
  let context = await open();
  let page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(patience);
  return {
    go: (url) => page.goto(url),
    again: () => page.reload(),
    tap: (xpath) => page.locator(`xpath=${xpath}`).first().click(),
    see: (xpath) => page.locator(`xpath=${xpath}`).first().waitFor(),
    until: (css, count) =>
      page.waitForFunction(([what, n]) => document.querySelectorAll(what).length === n, [css, count]),
    run: (expression) => page.evaluate(expression),
    file: (css, file) => page.setInputFiles(css, file),
    killed: async () => {
      await endProcesses(folder);
      await context.close().catch(() => undefined);
      context = await open();
      page = context.pages()[0] ?? (await context.newPage());
      page.setDefaultTimeout(patience);
    },
    close: async () => {
      await context.close().catch(() => undefined);
      await endProcesses(folder);
    },
  };
}
