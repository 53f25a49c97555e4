// Builds a page into a folder and serves a folder, as a host would.
import path from 'node:path';
import { build, preview } from 'vite';
import { asHosted } from '../headers.mjs';
import { root } from '../tools/install.mjs';

const here = import.meta.dirname;

/** Builds the app; returns its scripts as the bundler lists them. */
export async function buildApp(outDir) {
  const built = await build({
    root: `${root}/src`,
    configFile: `${root}/vite.config.ts`,
    build: { outDir, emptyOutDir: true },
    logLevel: 'error',
  });
  return built.output;
}

/** Builds a page of the bench, `bare` or `log`, the same way. */
export async function buildPage(name, outDir) {
  const { default: preact } = await import('@preact/preset-vite');
  const built = await build({
    root: path.join(here, name),
    base: './',
    publicDir: false,
    configFile: false,
    plugins: [preact()],
    build: { outDir, emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
    logLevel: 'error',
  });
  return built.output;
}

export async function serve(outDir) {
  const server = await preview({
    root,
    base: '/',
    configFile: false,
    plugins: [asHosted],
    build: { outDir },
    preview: { port: 0, host: 'localhost' },
    logLevel: 'error',
  });
  const { port } = server.httpServer.address();
  return { url: `http://localhost:${port}/`, stop: () => server.close() };
}
