// Finds a Chromium for the browser tests, or gets one, or says what to install.
import { existsSync } from 'node:fs';
import { installDebian, mayInstall } from './debian.mjs';
import { run } from './install.mjs';

const usual = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

async function find() {
  const there = usual.find((path) => path && existsSync(path));
  if (there) return there;
  const { chromium } = await import('playwright-core');
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : undefined;
}

const shell = '/usr/bin/chromium-headless-shell';

/**
 * Path of a Chromium without a window, which does the same with two thirds of the processor; a whole one where there is
 * none. What is kept over kills, and what the bench measures, is asked of a whole one.
 */
export async function needShell() {
  if (process.env.CHROMIUM_PATH) return needBrowser();
  if (!existsSync(shell) && mayInstall()) installDebian(['chromium-headless-shell']);
  return existsSync(shell) ? shell : needBrowser();
}

/** Path of a Chromium, installed now if need be. Ends the run with a plain sentence when none can be had. */
export async function needBrowser() {
  const there = await find();
  if (there) return there;
  console.log('No Chromium found: getting one ...');
  if (mayInstall()) installDebian(['chromium']);
  if (!(await find())) run('npx', ['playwright', 'install', 'chromium']);
  const got = await find();
  if (got) return got;
  console.error(
    'The browser tests need Chromium. Install it (Debian: apt-get install chromium), or set CHROMIUM_PATH.',
  );
  process.exit(1);
}
