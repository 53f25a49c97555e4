// A browser that stands in for a phone: its size, touch, and a processor slowed as asked.
import { mkdtempSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';

const looks = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };
const args = ['--no-sandbox', '--disable-gpu'];

/** @param folder where profiles are made; @param executablePath the browser */
export function phones(folder, executablePath) {
  return {
    /** A profile on disk that outlives the browser. */
    profile: () => mkdtempSync(path.join(folder, 'profile-')),
    open: (profile) => chromium.launchPersistentContext(profile, { executablePath, args, ...looks }),
  };
}

/** A page on a processor `times` slower. */
export async function slowed(context, times) {
  const page = context.pages()[0] ?? (await context.newPage());
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: times });
  return page;
}
