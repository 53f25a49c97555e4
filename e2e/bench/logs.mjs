// A long log of ticks beside a short one, through the app's own store in a browser.
import { median, p95 } from './figures.mjs';
import { onPage, slowed } from './phone.mjs';

async function measure(page, how) {
  const { opened, ticked } = await page.evaluate((h) => globalThis.longLog.measure(h), how);
  return { open: median(opened), tick: median(ticked), worst: p95(ticked) };
}

/**
 * @param folder where the log page is built
 * @param amount `{ long, short }` entries of each log, how often one is opened, and how many ticks are kept on it
 */
export const logs = (phone, { folder }, { long, short, opens, ticks }) =>
  onPage(phone, folder, async function* ({ context, page, url }) {
    const many = long.toLocaleString('en-US');
    await page.goto(url);
    for (const size of [short, long]) await page.evaluate((n) => globalThis.longLog.fill(n), size);
    for (const times of [1, 4]) {
      await slowed(context, times);
      const b = await measure(page, { size: short, opens, ticks });
      const a = await measure(page, { size: long, opens: times === 1 ? Math.min(3, opens) : 1, ticks });
      const row = (what, app, beside) => ({
        name: `${what}; of ${short}, ${times}x`,
        app,
        beside,
        unit: 'ms',
      });
      yield row(`open a log of ${many} ticks`, a.open, b.open);
      yield row(`one tick kept on a log of ${many}, median`, a.tick, b.tick);
      yield row(`one tick kept on a log of ${many}, 95th of 100`, a.worst, b.worst);
    }
  });
