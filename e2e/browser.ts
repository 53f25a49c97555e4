import { test } from '@playwright/test';

/** The Chromium the tests drive; tests/gate.mjs finds or installs it. */
export const chromiumPath = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';

/** A Chromium that can ask for leave to use the camera; the shell without a window cannot. */
export const wholeChromiumPath = process.env.WHOLE_CHROMIUM_PATH ?? chromiumPath;

export const chromiumArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-site-isolation-trials', // one origin: no other process stands ready for each page
];

/** Tests of what works with no network. The rest open a page without its worker, which reads in the whole app. */
export const withWorker = { serviceWorkers: 'allow' } as const;

/** One such test, in a file whose others need no worker. */
export const offlineTest = test.extend(withWorker);
