import { appendFileSync, mkdirSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { entryLock } from '../src/ui/hold';
import { letGo, newerIs, openSample, pastBounce, readyOffline } from './app';
import { withWorker } from './browser';
import { type Fault, filesOf, type Host, host, releaseAll } from './host';
import { newProfile, type Profile } from './profile';

test.use(withWorker);

/** Trials in all: 3 in an everyday run, 200 at night or as many as said. */
const trials = Number(process.env.KNIFELINE_UPDATES ?? (process.env.KNIFELINE_NIGHTLY ? 200 : 3));

const steps = [
  'register seen',
  'half fetched',
  'all fetched',
  'message sent',
  'activated',
  'reloading',
] as const;
type Step = (typeof steps)[number];
type Trial = { readonly at: Step } | { readonly file: number; readonly fault: Exclude<Fault, 'silent'> };

/** A third each: killed at a step, a file missing, a file that answers 500. */
const planned: readonly Trial[] = Array.from({ length: trials }, (_, k): Trial => {
  const n = Math.floor(k / 3);
  if (k % 3 === 0) return { at: steps[n % steps.length] ?? 'all fetched' };
  return { file: n, fault: k % 3 === 1 ? 'missing' : 'error' };
});

/** The version before, with the sample job, closed: every trial starts from a copy, at the same address. */
type Installed = { readonly profile: Profile; readonly port: number };

async function installed(): Promise<Installed> {
  const profile = newProfile();
  const site = await host();
  const context = await profile.open();
  const page = await context.newPage();
  await openSample(page, site.url);
  await readyOffline(page);
  await context.close();
  await site.close();
  return { profile, port: site.port };
}

const waiting = (page: Page): Promise<void> => newerIs(page, 'waiting', true);

/** Opens the old version where the new one is offered, and ends the browser at a step. */
async function killAt(step: Step, site: Host, profile: Profile): Promise<void> {
  const files = filesOf(site.folder);
  let fetched = 0;
  let reached: () => void = () => undefined;
  const there = new Promise<void>((done) => {
    reached = done;
  });
  site.fault((file) => {
    if (step === 'register seen' && file === 'sw.js') reached();
    if (step === 'half fetched' && files.includes(file)) {
      fetched += 1;
      if (fetched > files.length / 2) {
        reached();
        return 'silent';
      }
    }
    return undefined;
  });
  const context = await profile.open();
  const page = await context.newPage();
  await page.goto(site.url);
  if (step === 'register seen' || step === 'half fetched') await there;
  else await goOn(step, page);
  await profile.kill();
  await context.close().catch(() => undefined);
}

async function goOn(step: Step, page: Page): Promise<void> {
  await waiting(page);
  if (step === 'all fetched') return;
  const start = page.getByRole('button', { name: 'Start it now' });
  await start.waitFor();
  if (step === 'message sent') {
    await page.evaluate(async () => {
      (await navigator.serviceWorker.getRegistration())?.waiting?.postMessage({ type: 'SKIP_WAITING' });
    });
    return;
  }
  if (step === 'activated') {
    let seen: () => void = () => undefined;
    const now = new Promise<void>((done) => {
      seen = done;
    });
    await page.exposeFunction('activatedNow', () => seen());
    await page.evaluate(() => {
      navigator.serviceWorker.addEventListener('controllerchange', () =>
        (window as unknown as { activatedNow: () => void }).activatedNow(),
      );
    });
    await start.click();
    await now;
    return;
  }
  const reloading = page.waitForEvent('framenavigated');
  await start.click();
  await reloading;
}

/** Opens the old version where one file of the new one fails, and waits until the browser has given it up. */
async function fail(
  { file, fault }: Extract<Trial, { readonly file: number }>,
  site: Host,
  profile: Profile,
) {
  const files = ['sw.js', ...filesOf(site.folder)];
  const few = trials / 3; // a share of the files is taken from all along the list, pages and scripts too
  const bad =
    files[few < files.length ? Math.floor(((file + 0.5) * files.length) / few) : file % files.length] ?? '';
  let hit = false;
  site.fault((asked) => {
    if (asked !== bad) return undefined;
    hit = true;
    return fault;
  });
  const context = await profile.open();
  const page = await context.newPage();
  await page.goto(site.url);
  await expect.poll(() => hit, { timeout: 30_000 }).toBe(true);
  await newerIs(page, 'installing', false);
  expect(
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting),
  ).toBeFalsy();
  await context.close();
  return bad;
}

/** With nothing served any more: the app starts, the job is there, and so is every file a screen asks for. */
async function startsOffline(profile: Profile, url: string): Promise<string> {
  const context = await profile.open();
  try {
    const page = await context.newPage();
    const said: string[] = [];
    page.on('console', (message) => message.type() === 'error' && said.push(message.text()));
    page.on('pageerror', (error) => said.push(String(error)));
    // what the browser keeps by itself may not stand in for what the app keeps
    await (await context.newCDPSession(page)).send('Network.clearBrowserCache');
    await page.goto(url);
    await expect(page.getByRole('heading', { name: 'Mineral and shell cabinet' })).toBeVisible();
    await page.goto(`${url}#/cuts`);
    await expect(page.getByRole('heading', { name: 'Cuts' }).first()).toBeVisible();
    await solverAnswers(page);
    // the browser looks for a newer worker by itself, and says when nobody answers
    expect(said.filter((text) => !text.includes('sw.js') && !/ERR_CONNECTION_REFUSED/.test(text))).toEqual(
      [],
    );
    const missing = said.filter((text) => /assets\/|chunk|dynamically imported/i.test(text));
    expect(missing).toEqual([]);
    return await page.title();
  } finally {
    await context.close();
  }
}

/** The search for plans is a file asked for only when it is wanted: it must be the one this page knows. */
async function solverAnswers(page: Page): Promise<void> {
  const lost = await page.evaluate(async () => {
    const names = performance.getEntriesByType('resource').map((entry) => entry.name);
    const scripts = names.filter((name) => name.endsWith('.js'));
    const texts = await Promise.all(scripts.map(async (name) => (await fetch(name)).text()));
    const workers = texts.flatMap((text) =>
      [...text.matchAll(/solver-[\w-]+\.js/g)].map((m) => `./assets/${m[0]}`),
    );
    const answers = await Promise.all(
      [...new Set(workers)].map((name) =>
        fetch(name).then(
          (r) => r.ok,
          () => false,
        ),
      ),
    );
    return { workers: workers.length, lost: answers.filter((good) => !good).length };
  });
  expect(lost.workers).toBeGreaterThan(0);
  expect(lost.lost).toBe(0);
}

async function tried(trial: Trial, from: Installed): Promise<string> {
  const profile = from.profile.copy();
  const site = await host(from.port);
  try {
    releaseAll(site.folder);
    const what = 'at' in trial ? trial.at : `${trial.fault}: ${await fail(trial, site, profile)}`;
    if ('at' in trial) await killAt(trial.at, site, profile);
    await site.close();
    const title = await startsOffline(profile, site.url);
    if ('fault' in trial) expect(title).toBe('Knifeline'); // the old version, whole
    return `${what} → ${title}`;
  } finally {
    await site.close();
    await profile.kill();
    profile.remove();
  }
}

const kinds = ['killed at each step', 'lacking each file', 'with each file answering 500'] as const;

test.describe('an update', () => {
  let from: Installed;
  test.beforeAll(async () => {
    from = await installed();
    mkdirSync('test-results', { recursive: true });
  });
  test.afterAll(() => from.profile.remove());

  for (const [kind, name] of kinds.entries()) {
    test(`${name} in turn leaves an offline start`, async () => {
      const own = planned.filter((_, k) => k % 3 === kind);
      test.setTimeout(180_000 + own.length * 40_000);
      for (const trial of own) appendFileSync('test-results/updates.txt', `${await tried(trial, from)}\n`);
    });
  }
});

const held = async (context: BrowserContext, url: string, open: (page: Page) => Promise<void>) => {
  const other = await context.newPage();
  await other.goto(url);
  await open(other);
  return other;
};

test('a newer version never starts while keys, a list or a field stand open on a page', async ({
  context,
}) => {
  const site = await host();
  try {
    const page = await context.newPage();
    await openSample(page, site.url);
    await readyOffline(page);
    releaseAll(site.folder);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await waiting(page);
    const start = page.getByRole('button', { name: 'Start it now' });
    const other = await held(context, `${site.url}#/shop`, async (it) => {
      await it.getByRole('button', { name: /Kerf/i }).first().click();
      await it.getByRole('dialog').getByRole('button', { name: '1/8', exact: true }).click();
    });
    await start.click();
    await expect(page.getByText('It starts once the keys or the list open on another page')).toBeVisible();
    expect(await page.title()).toBe('Knifeline');
    await other.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
    await expect(other.getByRole('dialog')).toBeHidden();
    await letGo(page, entryLock);
    await pastBounce(page);
    await start.click();
    await expect(page).toHaveTitle('Knifeline, newer');
    await expect(other).toHaveTitle('Knifeline, newer'); // an old page would lack its files by now
  } finally {
    await site.close();
  }
});
