// A log of 100,000 ticks beside one of 100, through the app's own store in a browser.
import { median, p95 } from './figures.mjs';
import { slowed } from './phone.mjs';
import { serve } from './site.mjs';

const long = 100_000;
const short = 100;

async function measure(page, size, opens) {
  const how = { size, opens, ticks: 50 };
  const { opened, ticked } = await page.evaluate((h) => globalThis.longLog.measure(h), how);
  return { open: median(opened), tick: median(ticked), worst: p95(ticked) };
}

/** @param folder the built log page */
export async function logs(phone, folder) {
  const served = await serve(folder);
  const context = await phone.open(phone.profile());
  const rows = [];
  const page = await slowed(context, 1);
  await page.goto(served.url);
  for (const size of [short, long]) await page.evaluate((n) => globalThis.longLog.fill(n), size);
  for (const times of [1, 4]) {
    await slowed(context, times);
    const [b, a] = [await measure(page, short, 5), await measure(page, long, times === 1 ? 3 : 1)];
    const row = (what, app, beside) => rows.push({ name: `${what}, ${times}x`, app, beside, unit: 'ms' });
    row('open a log of 100,000 ticks; of 100', a.open, b.open);
    row('one tick kept on a log of 100,000, median; of 100', a.tick, b.tick);
    row('one tick kept on a log of 100,000, 95th of 100', a.worst, b.worst);
  }
  await context.close();
  await served.stop();
  return rows;
}
