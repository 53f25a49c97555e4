// A browser as a heap of processes: started, ended all at once, and waited for until none is left.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

const started = new Set();

/** A run that is broken off leaves no browser behind. */
process.on('exit', () => {
  for (const pid of started) end(-pid);
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(1));

/** Starts a command as the head of a process group of its own; what it says is kept for when it does not come up. */
export function startBrowser({ command, args, env }) {
  const child = spawn(command, args, {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, ...env },
  });
  let said = '';
  child.stderr.on('data', (part) => {
    said = (said + part).slice(-2000);
  });
  child.on('error', (error) => {
    said += error.message;
  });
  started.add(child.pid);
  return { pid: child.pid, said: () => said };
}

const read = (file) => {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return ''; // ended in between
  }
};

/** Processes that carry the profile in their command or surroundings, or are of the group; zombies are gone already. */
function alive(folder, group) {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((pid) => pid !== process.pid && isOf(pid, folder, group));
}

function isOf(pid, folder, group) {
  const [state, , pgrp] = read(`/proc/${pid}/stat`)
    .replace(/^.*\) /s, '')
    .split(' ');
  if (state === undefined || state === '' || state === 'Z') return false;
  if (Number(pgrp) === group) return true;
  return [`/proc/${pid}/cmdline`, `/proc/${pid}/environ`].some((file) => read(file).includes(folder));
}

const end = (pid) => {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // gone before us
  }
};

/** Ends every process of a browser at once, as a phone does that wants its memory back. */
export async function killBrowser(folder, { pid }) {
  end(-pid); // the group in one stroke, then what left it
  await endProcesses(folder, pid);
  started.delete(pid);
}

/** Ends what carries a profile folder in its command or surroundings, and waits until nothing is left. */
export async function endProcesses(folder, group) {
  for (let k = 0; k < 400; k += 1) {
    const left = alive(folder, group);
    if (left.length === 0) return;
    left.forEach(end);
    await new Promise((done) => setTimeout(done, 25));
  }
  throw new Error('a browser that was ended is still there');
}
