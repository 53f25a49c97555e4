import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { chromiumArgs, chromiumPath } from './browser';

/** A browser profile on disk that outlives the browser: close it, kill it, open it again. */
export type Profile = {
  readonly open: () => Promise<BrowserContext>;
  /** Ends every process of the browser at once, as a phone does. */
  readonly kill: () => Promise<void>;
  /** A second one, as this one is now; its browser must be closed. */
  readonly copy: () => Profile;
  readonly remove: () => void;
};

export const newProfile = (): Profile => profileIn(newFolder());

const newFolder = (): string => mkdtempSync(path.join(os.tmpdir(), 'knifeline-profile-'));

/** The page a browser stands with, or one of its own. */
export const firstPage = async (context: BrowserContext): Promise<Page> =>
  context.pages()[0] ?? (await context.newPage());

function profileIn(folder: string): Profile {
  return {
    copy: () => {
      const other = newFolder();
      cpSync(folder, other, { recursive: true, verbatimSymlinks: true });
      return profileIn(other);
    },
    open: () => open(folder),
    kill: () => kill(folder),
    remove: () => removed(folder),
  };
}

/** A browser that has just ended may still write: what it leaves behind then is no fault of what was tested. */
function removed(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true, maxRetries: 20 });
  } catch {
    console.warn(`left behind: ${folder}`);
  }
}

function open(folder: string): Promise<BrowserContext> {
  for (const name of readdirSync(folder)) {
    if (name.startsWith('Singleton')) rmSync(path.join(folder, name), { force: true });
  }
  return chromium.launchPersistentContext(folder, {
    executablePath: chromiumPath,
    args: chromiumArgs,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 1, // fewer points to paint
  });
}

function pids(folder: string): number[] {
  const out = execFileSync('ps', ['-eo', 'pid,args'], { encoding: 'utf8', maxBuffer: 1 << 24 });
  return out
    .split('\n')
    .filter((line) => line.includes(folder))
    .map((line) => Number.parseInt(line, 10));
}

async function kill(folder: string): Promise<void> {
  for (const pid of pids(folder)) {
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // already gone
    }
  }
  for (let k = 0; k < 100 && pids(folder).length > 0; k += 1)
    await new Promise((done) => setTimeout(done, 50));
}
