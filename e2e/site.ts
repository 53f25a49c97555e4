import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { built, serve } from './serve';

/** Serves the built app for a whole run, a copy of it and on a free port: two runs at one time do not meet. */
export default async function site(): Promise<() => Promise<void>> {
  const copy = mkdtempSync(path.join(os.tmpdir(), 'knifeline-built-'));
  cpSync(built(), copy, { recursive: true });
  process.env.KNIFELINE_BUILT = copy;
  const served = await serve();
  process.env.KNIFELINE_SITE = served.url;
  return async () => {
    await served.stop();
    rmSync(copy, { recursive: true, force: true });
  };
}
