// Packages of Debian, where a run may install them.
import { existsSync } from 'node:fs';
import { run } from './install.mjs';

const apt = '/usr/bin/apt-get';

export const mayInstall = () =>
  process.platform === 'linux' && process.getuid?.() === 0 && existsSync(apt) && existsSync('/usr/bin/flock');

/** Two runs on one machine take turns: apt itself gives up where another is at it. */
const inTurn = (...args) => run('flock', ['-w', '900', '/var/lib/apt/lists', apt, '-qq', ...args]);

/** @param names packages */
export function installDebian(names) {
  inTurn('update');
  inTurn('install', '-y', '--no-install-recommends', ...names);
}
