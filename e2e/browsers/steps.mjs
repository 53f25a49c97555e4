// The main way through the app with no network, in whatever browser a hand drives. Each step says in words what it
// proves.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../tools/install.mjs';

const sample = path.join(root, 'demo-data', 'mineral-and-shell-cabinet.json');

/** What the database holds of the log, as a number; read past the app. */
const rowsKept = `new Promise((resolve, reject) => {
  const open = indexedDB.open('knifeline');
  open.onerror = () => reject(open.error);
  open.onsuccess = () => {
    const tx = open.result.transaction(['entries', 'packs']);
    const single = tx.objectStore('entries').count();
    const packs = tx.objectStore('packs').getAllKeys();
    tx.oncomplete = () => {
      open.result.close();
      resolve(packs.result.reduce((sum, [, , size]) => sum + size, single.result));
    };
  };
})`;

const servedFromPhone = `navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller !== null
  || new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', () => done(true), { once: true })))`;

const ticked = '.tick[aria-checked="true"]';
const button = (name) => `//button[normalize-space(.)="${name}" or @aria-label="${name}"]`;
const begins = (name) => `//button[starts-with(normalize-space(.), "${name}")]`;
const heading = (name) => `//h1[contains(., "${name}")] | //h2[contains(., "${name}")]`;

function same(what, got, wanted) {
  if (got !== wanted) throw new Error(`${what}: ${got}, not ${wanted}`);
}

/**
 * @param hand `go(url)`, `again()` loads anew, `tap(xpath)`, `see(xpath)`, `until(css, count)`, `run(expression)`,
 *   `file(css, path)`, and `killed()`, undefined where this driver cannot end and reopen a browser
 * @param at `{ url, stop }` the served app
 * @param more a second job's file, to bring in
 * @returns steps in order, `[what it proves, do it]`
 */
export function stepsOf({ hand, at, more }) {
  const stops = `${at.url}#/stops/shellcase`;
  return [
    [
      'opens the sample job',
      async () => {
        await hand.go(at.url);
        await hand.tap(button('Open the sample job'));
        await hand.see(heading('Mineral and shell cabinet'));
      },
    ],
    [
      'is served by its service worker',
      async () => same('controlled', await hand.run(servedFromPhone), true),
    ],
    [
      'starts with the server gone',
      async () => {
        await at.stop();
        await hand.again();
        await hand.see(heading('Mineral and shell cabinet'));
      },
    ],
    [
      'sets the stack, and says of both sides that they are cut to length',
      async () => {
        await hand.go(`${at.url}#/saw/shellcase`);
        await hand.again();
        await hand.tap(begins('Set and tested'));
        for (const left of [2, 1]) {
          await hand.until('.mblocked', left);
          await hand.tap(begins('The length is done already'));
        }
        await hand.until('.mblocked', 0);
      },
    ],
    [
      'ticks two boxes',
      async () => {
        await hand.go(stops);
        await hand.again();
        await hand.see(
          '(//*[contains(@class,"tick") and @role="checkbox" and not(@aria-disabled="true")])[2]',
        );
        await hand.tap('(//*[contains(@class,"tick") and @role="checkbox"])[1]');
        await hand.until(ticked, 1);
        await hand.tap('(//*[contains(@class,"tick") and @role="checkbox"])[2]');
        await hand.until(ticked, 2);
      },
    ],
    [
      'still has them after loading anew',
      async () => {
        await hand.again();
        await hand.until(ticked, 2);
      },
    ],
    [
      'still has them after every process was ended',
      hand.killed &&
        (async () => {
          await hand.killed();
          await hand.go(stops);
          await hand.until(ticked, 2);
        }),
    ],
    [
      'takes one back over the restart',
      async () => {
        await hand.tap(
          '//button[starts-with(@aria-label, "Undo") or starts-with(normalize-space(.), "Undo")]',
        );
        await hand.until(ticked, 1);
      },
    ],
    [
      'cuts at the saw',
      async () => {
        await hand.go(`${at.url}#/saw/shellcase`);
        await hand.see('//*[contains(@class,"giant")]//*[contains(@class,"mx")]');
        await hand.see('//*[contains(@class,"knuckle")]//button[contains(., "is cut")]'); // of the next groove
        const before = await hand.run(`document.querySelectorAll('.mpiece[aria-checked="true"]').length`);
        await hand.tap('//*[contains(@class,"knuckle")]//*[contains(@class,"main")]');
        await hand.until('.mpiece[aria-checked="true"]', before + 1);
      },
    ],
    [
      'lays out a board',
      async () => {
        await hand.go(`${at.url}#/boards`);
        await hand.tap(button('Lay out a board'));
        await hand.see('//*[contains(@class,"nextblank")][contains(., "Say the length of the board.")]');
      },
    ],
    [
      'reckons',
      async () => {
        await hand.go(`${at.url}#/figure`);
        for (const key of ['1', '2'])
          await hand.tap(`//*[contains(@class,"keys")]//button[normalize-space(.)="${key}"]`);
        await hand.see('//*[contains(@class,"mx")][contains(., "12")]');
      },
    ],
    [
      'takes in a job file, and twice changes nothing',
      async () => {
        for (const time of ['first', 'second']) {
          await hand.go(`${at.url}#/import`);
          await hand.file('input[type=file]', more);
          if (time === 'second') await hand.see('(//*[contains(., "0 of these entries are new")])[last()]');
          else await hand.tap(button('Take it in'));
          if (time === 'first') await hand.see(button('Share out')); // the job's page: it is taken in
        }
      },
    ],
    [
      'has every row of both jobs after loading anew',
      async () => {
        await hand.go(`${at.url}#/jobs`);
        await hand.again();
        await hand.see('//*[text()[contains(., "Mineral and shell cabinet")]]');
        const brought = JSON.parse(readFileSync(more, 'utf8')).entries.length;
        const own = JSON.parse(readFileSync(sample, 'utf8')).entries.length;
        const rows = await hand.run(rowsKept);
        if (rows < brought + own + 4) throw new Error(`${rows} rows, fewer than were acknowledged`);
      },
    ],
  ];
}

/** The sample under another id. */
export const secondJob = () => readFileSync(sample, 'utf8').replaceAll('mineralshell', 'secondjob');
