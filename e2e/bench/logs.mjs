// A long log of ticks beside a short one, through the app's own store in a browser.
import { median, p95 } from './figures.mjs';
import { onPage, slowed } from './phone.mjs';

async function measure(page, how) {
  const { opened, ticked } = await page.evaluate((h) => globalThis.longLog.measure(h), how);
  return { open: median(opened), tick: median(ticked), worst: p95(ticked) };
}

/** Megabytes of the page's own memory, with all that nothing holds let go. */
async function megabytes(cdp) {
  await cdp.send('HeapProfiler.collectGarbage');
  return (await cdp.send('Runtime.getHeapUsage')).usedSize / 2 ** 20;
}

async function held(context, page, how) {
  const cdp = await context.newCDPSession(page);
  const before = await megabytes(cdp);
  await page.evaluate((h) => globalThis.longLog.hold(h), how);
  return (await megabytes(cdp)) - before;
}

/**
 * @param folder where the log page is built
 * @param amount `{ long, short, five }` entries of each log, how often one is opened, and how many ticks are kept on it
 */
export const logs = (phone, { folder }, { long, short, five, opens, ticks }) =>
  onPage(phone, folder, async function* ({ context, page, url }) {
    const many = long.toLocaleString('en-US');
    await page.goto(url);
    const [one, big, several] = [
      { jobs: 1, size: short },
      { jobs: 1, size: long },
      { jobs: 5, size: five },
    ];
    for (const log of [one, big, several]) await page.evaluate((h) => globalThis.longLog.fill(h), log);
    for (const times of [1, 4]) {
      await slowed(context, times);
      const b = await measure(page, { ...one, opens, ticks });
      const a = await measure(page, { ...big, opens: times === 1 ? Math.min(3, opens) : 1, ticks });
      const c = await measure(page, { ...several, opens, ticks: 0 });
      const row = (what, app, beside) => ({
        name: `${what}; of ${short}, ${times}x`,
        app,
        beside,
        unit: 'ms',
      });
      yield row(`open a log of ${many} ticks`, a.open, b.open);
      yield row(`open one of five logs of ${five.toLocaleString('en-US')} ticks`, c.open, b.open);
      yield row(`one tick kept on a log of ${many}, median`, a.tick, b.tick);
      yield row(`one tick kept on a log of ${many}, 95th of 100`, a.worst, b.worst);
    }
    await page.reload();
    const [least, most] = [await held(context, page, one), await held(context, page, big)];
    yield {
      name: `memory of an open log of ${many} ticks; of ${short}`,
      app: most,
      beside: least,
      unit: 'MB',
    };
  });
