// Finds the browsers that stand in for other phones, and another reader of PDFs, or gets them from Debian's packages;
// says plainly what is missing.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { installDebian, mayInstall } from './debian.mjs';

const inside = (folder) => (existsSync(folder) ? readdirSync(folder).map((name) => `${folder}/${name}`) : []);

/** Debian puts it below the machine's kind and the library's version. */
const miniBrowsers = () =>
  inside('/usr/lib')
    .filter((name) => name.endsWith('-linux-gnu'))
    .flatMap(inside)
    .filter((name) => name.includes('/webkit2gtk-4.'))
    .map((name) => `${name}/MiniBrowser`);

const places = {
  webkit: () => miniBrowsers().find(existsSync),
  driver: () => ['/usr/bin/WebKitWebDriver'].find(existsSync),
  xvfb: () => ['/usr/bin/Xvfb'].find(existsSync),
  firefox: () => ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find(existsSync),
  poppler: () => ['/usr/bin/pdftoppm'].find(existsSync),
};

const packages = {
  webkit: 'webkit2gtk-driver',
  driver: 'webkit2gtk-driver',
  xvfb: 'xvfb',
  firefox: 'firefox-esr',
  poppler: 'poppler-utils',
};

/**
 * Paths of what is wanted, installed now if need be and allowed; one that cannot be had is `undefined`, and said.
 *
 * @param wanted names out of `webkit`, `driver`, `xvfb`, `firefox`, `poppler`
 */
export function findOthers(wanted) {
  const missing = wanted.filter((name) => !places[name]());
  if (missing.length > 0 && mayInstall()) {
    console.log(`Getting ${missing.join(', ')} ...`);
    installDebian([...new Set(missing.map((name) => packages[name]))]);
  }
  const found = Object.fromEntries(wanted.map((name) => [name, places[name]()]));
  for (const name of wanted)
    if (!found[name]) console.log(`SKIPPED: no ${name} here (Debian: apt-get install ${packages[name]}).`);
  return found;
}

/** A screen that nobody looks at: `{ display, stop }`. */
export function startScreen(xvfb) {
  // without -noreset it is away for a moment when its last window is, and the next browser finds no screen
  const how = ['-displayfd', '3', '-screen', '0', '800x900x24', '-nolisten', 'tcp', '-noreset'];
  const child = spawn(xvfb, how, {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => reject(new Error(`Xvfb ended with ${code}`)));
    child.stdio[3].on('data', (number) =>
      resolve({ display: `:${String(number).trim()}`, stop: () => child.kill() }),
    );
  });
}

/** A home of its own, so that nothing of the user's is read or written. */
export function homeOf(folder) {
  const env = { HOME: folder };
  for (const name of ['CONFIG', 'DATA', 'CACHE', 'STATE']) {
    env[`XDG_${name}_HOME`] = path.join(folder, name.toLowerCase());
    mkdirSync(env[`XDG_${name}_HOME`], { recursive: true });
  }
  return env;
}
