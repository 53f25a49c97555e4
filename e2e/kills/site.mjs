// Builds the writing page, twice where two versions are wanted, serves both from one origin and hears what they tell.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { build } from 'vite';

const types = { '.html': 'text/html', '.js': 'text/javascript' };

/** The version after this one: one more upgrade step, as a later build would bring. */
const newer = {
  name: 'newer-version',
  enforce: 'pre',
  transform(code, id) {
    if (!id.endsWith('/src/store/migrations.ts')) return undefined;
    const line = 'export const schemaVersion';
    if (!code.includes(line)) throw new Error(`no “${line}” in migrations.ts to make a newer version of`);
    const step = "steps.push((db) => void db.createObjectStore('later'));"; // types are only stripped here
    return code.replace(line, `${step}\n${line}`);
  },
};

function buildPage(outDir, plugins) {
  return build({
    root: path.join(import.meta.dirname, 'page'),
    base: './',
    publicDir: false,
    configFile: false,
    plugins,
    worker: { format: 'es', plugins: () => plugins },
    build: { outDir, emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
    logLevel: 'error',
  });
}

const bodyOf = async (request) => {
  const parts = [];
  for await (const part of request) parts.push(part);
  return Buffer.concat(parts).toString();
};

/** @param folder where the pages are built; `now/` is this version, `next/` the one after. */
export async function site(folder) {
  await buildPage(path.join(folder, 'now'), []);
  await buildPage(path.join(folder, 'next'), [newer]);
  const hearing = new Map();
  const server = createServer(async (request, response) => {
    const url = new URL(request.url ?? '/', 'http://localhost');
    if (url.pathname === '/told') {
      const body = await bodyOf(request).catch(() => undefined); // the writer was killed half way through
      if (body !== undefined) hearing.get(url.searchParams.get('run'))?.(JSON.parse(body));
      response.writeHead(204).end();
      return;
    }
    file(folder, url.pathname, response);
  });
  await new Promise((done) => server.listen(0, 'localhost', done));
  const { port } = server.address();
  return {
    port,
    /** Calls back with everything a run tells, until another run takes its name. */
    hear: (run, heard) => hearing.set(run, heard),
    deaf: (run) => hearing.delete(run),
    stop: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

function file(folder, pathname, response) {
  const name = path.normalize(pathname).replace(/\/$/, '/index.html');
  try {
    const body = readFileSync(path.join(folder, name));
    const type = types[path.extname(name)] ?? 'text/plain';
    response.writeHead(200, { 'content-type': type, 'cache-control': 'no-store' }).end(body);
  } catch {
    response.writeHead(404).end();
  }
}
