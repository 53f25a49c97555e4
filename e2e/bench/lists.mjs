// The list of cuts of a large job on a slowed processor: how long it takes to stand, and the frames that come late
// while it is scrolled from its top to its end. Rows laid out only as they come near the screen (content-visibility)
// were tried: the list stood in half the time, and then five frames of six came late, not one of twenty.
import { drawnFor, jobOfMany, modulesOf } from './chain.mjs';
import { median } from './figures.mjs';
import { onPage, slowed } from './phone.mjs';

const slow = 4;

/** A job file of these values, as one phone that wrote them one after the other would hand it out. */
export const fileOf = (values) =>
  JSON.stringify({
    knifeline: 1,
    job: 'many',
    entries: [...values].map(([path, value], k) => ({
      job: 'many',
      device: 'bench',
      count: k + 1,
      at: '2026-11-02T08:30:00.000Z',
      act: `bench.${k + 1}`,
      label: 'made',
      kind: 'edit',
      path,
      value,
    })),
  });

async function takenIn(page, url, text) {
  await page.goto(`${url}#/import`);
  const file = { name: 'many.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.setInputFiles('input[type=file]', file);
  await page.getByRole('button', { name: 'Take it in' }).click();
  await page.getByRole('heading', { name: 'A great many' }).waitFor({ timeout: 120_000 });
}

/** Runs in the page: to a route, until rows of it are painted; milliseconds. */
async function stands({ to, row }) {
  const frame = () => new Promise(requestAnimationFrame);
  const from = performance.now();
  location.hash = to;
  while (!document.querySelector(row)) await frame();
  await frame();
  await frame();
  return performance.now() - from;
}

/** Runs in the page: taps a button, until the rows it brings are painted; milliseconds. */
async function tapped({ button, row }) {
  const frame = () => new Promise(requestAnimationFrame);
  const from = performance.now();
  [...document.querySelectorAll('button')].find((one) => one.textContent === button)?.click();
  while (!document.querySelector(row)) await frame();
  await frame();
  await frame();
  return performance.now() - from;
}

/** Runs in the page: scrolls all of it, a tenth of a screen a frame; how many frames, and how many took two or more. */
async function scrolled() {
  const frame = () => new Promise(requestAnimationFrame);
  const page = document.scrollingElement;
  page.scrollTop = 0;
  await frame();
  let [frames, late, last] = [0, 0, await frame()];
  for (let at = 0; at < page.scrollHeight - innerHeight && frames < 1200; at += innerHeight / 10) {
    page.scrollTop = at;
    const now = await frame();
    frames += 1;
    if (now - last > 25) late += 1;
    last = now;
  }
  return { frames, late };
}

const row = (name, app, unit) => ({ name: `${name}, ${slow}x`, app, unit });

/** @param amount `{ size, opens }`: which job, and how often its list is opened */
export const lists = (phone, { folder }, { size, opens }) =>
  onPage(phone, folder, async function* ({ context, page, url }) {
    const app = await modulesOf();
    await takenIn(page, url, fileOf(jobOfMany(drawnFor[size], app)));
    await slowed(context, slow);
    const took = [];
    for (let k = 0; k < opens; k += 1) {
      await page.evaluate(stands, { to: '#/', row: '.jobname, .hero, main' });
      took.push(await page.evaluate(stands, { to: '#/cuts', row: '.cutrow' }));
    }
    yield row('the list of cuts of a large job, until it stands', median(took), 'ms');
    const bySetup = await page.evaluate(scrolled);
    yield row(`late frames of ${bySetup.frames}, scrolled by setting`, bySetup.late, 'frames');
    yield row(
      'by part, until it stands',
      await page.evaluate(tapped, { button: 'By part', row: '.sect' }),
      'ms',
    );
    const byPart = await page.evaluate(scrolled);
    yield row(`late frames of ${byPart.frames}, scrolled by part`, byPart.late, 'frames');
  });
