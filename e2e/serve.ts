import path from 'node:path';
import { type Plugin, preview } from 'vite';
import { asHosted } from './headers.mjs';

const root = path.resolve(import.meta.dirname, '..');

/** The built app: in a run its own copy, so that a build in the next window takes nothing from under it. */
export const built = (): string => process.env.KNIFELINE_BUILT ?? path.join(root, 'dist');

/** Files go as they lie: on one machine packing each for each page costs more than it saves. */
const unpacked: Plugin = {
  name: 'unpacked',
  configurePreviewServer: ({ middlewares }) => {
    middlewares.use((request, _response, next) => {
      delete request.headers['accept-encoding'];
      next();
    });
  },
};

export type Served = { readonly url: string; readonly stop: () => Promise<void> };

/** Serves the built app on a free port, below `base`, so a test can take the server away. */
export async function serve(base = '/'): Promise<Served> {
  const server = await preview({
    root: `${root}/src`,
    base,
    configFile: false,
    plugins: [asHosted, unpacked],
    build: { outDir: built() },
    preview: { port: 0, host: 'localhost' },
    logLevel: 'error',
  });
  const at = server.httpServer.address();
  if (typeof at !== 'object' || !at) throw new Error('the server has no port');
  let stopped: Promise<void> | undefined;
  return {
    url: `http://localhost:${at.port}${base}`,
    stop: () => {
      stopped ??= server.close();
      return stopped;
    },
  };
}
