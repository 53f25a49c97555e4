// WebKitGTK by its own driver. Its sessions are private and end with the browser, so it cannot be ended and opened
// again here; what it keeps over kills is the work of e2e/kills.
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { Builder, By, Capabilities, error, until } from 'selenium-webdriver';
import { endProcesses } from '../kills/process.mjs';
import { homeOf } from '../tools/others.mjs';

const patience = 60_000;

const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

/** @returns a hand; see `stepsOf` */
export async function webkitHand({ folder, path: binary, driver: command, display }) {
  const env = { ...process.env, ...homeOf(folder), DISPLAY: display, LIBGL_ALWAYS_SOFTWARE: '1' };
  const server = await startDriver(command, env);
  const capabilities = new Capabilities({
    browserName: 'MiniBrowser',
    'webkitgtk:browserOptions': { binary, args: ['--automation'] },
  });
  const driver = await new Builder().usingServer(server).withCapabilities(capabilities).build();
  const found = (by) => driver.wait(until.elementLocated(by), patience);
  return {
    go: (url) => driver.get(url),
    again: () => driver.navigate().refresh(),
    // the page may draw an element anew between the look and the tap: it is looked for again
    tap: (xpath) =>
      driver.wait(async () => {
        const element = await found(By.xpath(xpath));
        try {
          await driver.executeScript('arguments[0].scrollIntoView({ block: "center" })', element);
          await element.click();
          return true;
        } catch (why) {
          if (isGone(why)) return false;
          throw why;
        }
      }, patience),
    see: (xpath) => found(By.xpath(xpath)),
    until: (css, count) =>
      driver.wait(
        async () => (await driver.findElements(By.css(css))).length === count,
        patience,
        `${count} of ${css}`,
      ),
    run: (expression) =>
      driver.executeAsyncScript(
        `const done = arguments[0]; Promise.resolve(${expression}).then(done, (e) => done(String(e)))`,
      ),
    file: async (css, file) => (await found(By.css(css))).sendKeys(file),
    close: async () => {
      await driver.quit().catch(() => undefined);
      await endProcesses(folder);
    },
  };
}

/** The element is no longer of the page. The driver says so in one of two ways. */
const isGone = (why) =>
  why instanceof error.StaleElementReferenceError ||
  /Node with identifier .* was not found/.test(String(why));

const pause = () => new Promise((done) => setTimeout(done, 250));

/** Starts the driver on a free port, on another where somebody took that in between; returns its address. */
async function startDriver(command, env) {
  for (let turn = 0; turn < 5; turn += 1) {
    const port = await freePort();
    const child = spawn(command, [`--port=${port}`], { env, detached: true, stdio: 'ignore' });
    if (await listens(child, `http://127.0.0.1:${port}`)) return `http://127.0.0.1:${port}`;
  }
  throw new Error('its driver does not stay up');
}

/** Waits until the driver answers; false where it ended instead. */
async function listens(child, server) {
  let ended = false;
  for (const end of ['exit', 'error'])
    child.once(end, () => {
      ended = true;
    });
  let answers = false;
  for (let waited = 0; waited < patience && !ended && !answers; waited += 250) {
    await pause();
    answers = await fetch(`${server}/status`).then(
      (response) => response.ok,
      () => false,
    );
  }
  await pause(); // one that found its port taken has ended by now
  return answers && !ended;
}
