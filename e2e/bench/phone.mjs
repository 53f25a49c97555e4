// A browser that stands in for a phone: its size, touch, and a processor slowed as asked.
import { mkdtempSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { serve } from './site.mjs';

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

/**
 * A served folder and a phone's page for it, both closed again however what is measured there ends.
 *
 * @param measured `({ context, page, url })`, hands out rows
 */
export async function* onPage(phone, folder, measured) {
  const served = await serve(folder);
  try {
    const context = await phone.open(phone.profile());
    try {
      yield* measured({ context, page: await slowed(context, 1), url: served.url });
    } finally {
      await context.close();
    }
  } finally {
    await served.stop();
  }
}

/** A page on a processor `times` slower. */
export async function slowed(context, times) {
  const page = context.pages()[0] ?? (await context.newPage());
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: times });
  return page;
}
