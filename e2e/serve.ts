import path from 'node:path';
import { preview } from 'vite';

const root = path.resolve(import.meta.dirname, '..');

export type Served = { readonly url: string; readonly stop: () => Promise<void> };

/** Serves the built app on a port of its own, below `base`, so a test can take the server away. */
export async function serve(port: number, base = '/'): Promise<Served> {
  const server = await preview({
    root: `${root}/src`,
    base,
    configFile: false,
    build: { outDir: '../dist' },
    preview: { port, strictPort: true, host: 'localhost' },
    logLevel: 'error',
  });
  let stopped: Promise<void> | undefined;
  return {
    url: `http://localhost:${port}${base}`,
    stop: () => {
      stopped ??= server.close();
      return stopped;
    },
  };
}
