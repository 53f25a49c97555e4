// The browsers that are killed: how each is started on a profile folder of its own.
import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { homeOf } from '../tools/others.mjs';

const chromiumArgs = (folder) => [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--user-data-dir=${folder}`,
];

/** The back end that keeps each database in a file of SQLite, where Chromium is going. */
export const sqlite =
  '--enable-features=IdbSqliteBackingStore,UseSqliteForNewStores,UseSqliteForNewDatabases';

function chromium(command, extra) {
  return (folder, url) => {
    for (const name of existsSync(folder) ? readdirSync(folder) : [])
      if (name.startsWith('Singleton')) rmSync(path.join(folder, name), { force: true });
    return { command, args: [...chromiumArgs(folder), ...extra, url], env: {} };
  };
}

const webkit = (command, display) => (folder, url) => ({
  command,
  args: [url],
  env: { ...homeOf(folder), DISPLAY: display, GDK_BACKEND: 'x11', LIBGL_ALWAYS_SOFTWARE: '1' },
});

const quiet = {
  'browser.shell.checkDefaultBrowser': false,
  'browser.aboutwelcome.enabled': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'toolkit.startup.max_resumed_crashes': -1, // killed each time: it would ask to start in safe mode
  'browser.sessionstore.resume_from_crash': false,
  'network.captive-portal-service.enabled': false,
  'app.update.enabled': false,
};

function firefox(command) {
  return (folder, url) => {
    const env = homeOf(folder);
    const prefs = Object.entries(quiet).map(([name, value]) => `user_pref('${name}', ${value});`);
    writeFileSync(path.join(folder, 'user.js'), prefs.join('\n'));
    for (const name of ['lock', '.parentlock']) rmSync(path.join(folder, name), { force: true });
    return { command, args: ['--headless', '--no-remote', '--profile', folder, url], env };
  };
}

/**
 * @param found paths of the browsers, `undefined` where there is none, and the display WebKit shows itself on
 * @returns lanes by name: `{ name, tag, start(folder, url) }`, without those that cannot be had
 */
export function lanesOf({ chromium: chrome, webkit: mini, firefox: fox, display }) {
  const lanes = [];
  if (chrome) {
    lanes.push({ name: 'chromium', tag: 'cd', start: chromium(chrome, []) });
    lanes.push({ name: 'chromium-sqlite', tag: 'cs', start: chromium(chrome, [sqlite]) });
  }
  if (mini && display) lanes.push({ name: 'webkit', tag: 'wk', start: webkit(mini, display) });
  if (fox) lanes.push({ name: 'firefox', tag: 'ff', start: firefox(fox) });
  return lanes;
}
