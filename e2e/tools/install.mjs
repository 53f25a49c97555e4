// Puts in place what a run needs and only that: packages when the lock file is newer than what is installed.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** Runs a command with its output shown; returns its exit code. */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  return done.status ?? 1;
}

/** Starts a command beside others; resolves with its exit code and all it said, shown once it has ended. */
export function runBeside(command, args) {
  const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  let text = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (part) => {
      text += part;
    });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ code: 1, text: error.message }));
    child.on('close', (code) => resolve({ code: code ?? 1, text }));
  });
}

/** Runs a package's own command from node_modules. */
export const tool = (name, args, env) => run(path.join(root, 'node_modules', '.bin', name), args, env);

/** Starts a package's own command beside others, its output shown as it comes; resolves with its exit code. */
export function shownFrom(name, args, env) {
  const command = path.join(root, 'node_modules', '.bin', name);
  const options = {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  };
  return new Promise((resolve) => {
    const child = spawn(command, args, options);
    child.on('error', () => resolve(1));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

export function installPackages() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Node ${process.versions.node} is too old: 20.19 or newer is needed.`);
    process.exit(1);
  }
  const installed = path.join(root, 'node_modules', '.package-lock.json');
  const lock = path.join(root, 'package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  console.log('Installing packages ...');
  const code = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (code !== 0) process.exit(code);
}
