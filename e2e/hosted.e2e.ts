import { createServer } from 'node:http';
import { expect, test } from '@playwright/test';
import { openSample } from './app';
import { withWorker } from './browser';
import { host } from './host';

test.use(withWorker);

test('the app stands under the headers asked of a host, with nothing refused by them', async ({ page }) => {
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  const answer = await page.goto('./');
  expect(answer?.headers()).toMatchObject({
    'content-security-policy': expect.stringContaining("frame-ancestors 'none'"),
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'permissions-policy': expect.stringContaining('camera=(self)'),
    'cache-control': 'no-cache',
  });
  const script = await page.locator('script[src]').first().getAttribute('src');
  const asset = await page.request.get(script ?? '');
  expect(asset.headers()['cache-control']).toBe('public, max-age=31536000, immutable');
  await openSample(page);
  await page.goto('./#/sheets');
  await page.goto('./#/takein');
  await page.goto('./#/handover');
  // a browser without a share sheet does not know the word for it
  const own = said.filter((text) => !text.includes("feature: 'web-share'"));
  expect(own.filter((text) => /policy|refused|unrecognized|blocked/i.test(text))).toEqual([]);
});

test('the page may use what it needs, and asks for nothing else', async ({ page }) => {
  await page.goto('./');
  const allowed = await page.evaluate(() => {
    const { featurePolicy } = document as unknown as {
      readonly featurePolicy: { readonly allowsFeature: (name: string) => boolean };
    };
    const names = ['camera', 'clipboard-write', 'screen-wake-lock', 'web-share', 'geolocation', 'microphone'];
    return names.filter((name) => featurePolicy.allowsFeature(name));
  });
  expect(allowed).toEqual(expect.arrayContaining(['camera', 'clipboard-write', 'screen-wake-lock']));
  expect(allowed).not.toContain('geolocation');
  expect(allowed).not.toContain('microphone');
});

test('no other page shows the app in a frame', async ({ page }) => {
  const site = await host();
  const server = createServer((_, response) => {
    response.writeHead(200, { 'content-type': 'text/html' });
    response.end(`<!doctype html><title>Elsewhere</title><iframe src="${site.url}"></iframe>`);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  try {
    const at = server.address();
    if (typeof at !== 'object' || !at) throw new Error('the server has no port');
    const refused = page.waitForEvent('console', (message) => message.text().includes('frame-ancestors'));
    await page.goto(`http://127.0.0.1:${at.port}/`);
    await refused;
    await expect(page.frameLocator('iframe').locator('#app')).toHaveCount(0);
  } finally {
    server.closeAllConnections();
    server.close();
    await site.close();
  }
});
