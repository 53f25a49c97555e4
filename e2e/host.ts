import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server, type ServerResponse } from 'node:http';
import os from 'node:os';
import path from 'node:path';
import { expect } from '@playwright/test';
import { headersFor, rulesIn } from './headers.mjs';
import { built } from './serve';

const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** What the host does instead of answering: a file it lacks, an error, or silence. */
export type Fault = 'missing' | 'error' | 'silent';

export type Host = {
  readonly folder: string;
  readonly url: string;
  readonly port: number;
  /** Asked for each request, with the file's name below the folder; undefined answers as it should. */
  readonly fault: (decide: (file: string) => Fault | undefined) => void;
  readonly close: () => Promise<void>;
};

/**
 * A static host over a copy of the build, with the headers it asks for, that a test may change: a new release.
 *
 * @param again the port of a host that was closed, to stand at the same address; a free one where none is given
 */
export async function host(again = 0): Promise<Host> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'knifeline-host-'));
  cpSync(built(), folder, { recursive: true });
  const rules = rulesIn(folder);
  let decide: (file: string) => Fault | undefined = () => undefined;
  const server: Server = createServer((request, response) => {
    const asked = (request.url ?? '/').split('?')[0] ?? '/';
    const name = asked.replace(/\/$/, '/index.html');
    const file = path.normalize(name).replace(/^\//, '');
    const fault = decide(file);
    if (fault === 'silent') return;
    if (fault) response.writeHead(fault === 'missing' ? 404 : 500).end();
    else answer(response, path.join(folder, file), headersFor(rules, asked));
  });
  const port = await listen(server, again);
  return {
    folder,
    port,
    url: `http://localhost:${port}/`,
    fault: (by) => {
      decide = by;
    },
    close: async () => {
      rmSync(folder, { recursive: true, force: true });
      if (!server.listening) return;
      const closed = new Promise((done) => server.close(done));
      server.closeAllConnections();
      await closed;
    },
  };
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => {
      const at = server.address();
      if (typeof at === 'object' && at) resolve(at.port);
    });
  });
}

function answer(response: ServerResponse, file: string, headers: Readonly<Record<string, string>>): void {
  try {
    const body = readFileSync(file);
    response.writeHead(200, {
      'content-type': types[path.extname(file)] ?? 'text/plain',
      'cache-control': 'no-cache',
      ...headers,
    });
    response.end(body);
  } catch {
    response.writeHead(404).end();
  }
}

/** A new release: the page says so, and the worker's list names the new page. */
export function release(folder: string): void {
  const page = path.join(folder, 'index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace('<title>Knifeline</title>', '<title>Knifeline, newer</title>'),
  );
  const worker = path.join(folder, 'sw.js');
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(
    /(revision:[`"'])[0-9a-f]{32}([`"'],url:[`"']index\.html)|("revision":")[0-9a-f]{32}(","url":"index\.html)/,
    (all) => all.replace(/[0-9a-f]{32}/, 'f'.repeat(32)),
  );
  const other =
    changed === text
      ? text.replace(/(index\.html[`"'],\s*revision:\s*[`"'])[0-9a-f]{32}/, `$1${'f'.repeat(32)}`)
      : changed;
  expect(other).not.toBe(text);
  writeFileSync(worker, other);
}

/**
 * A new release in which every file changed: each script and style has a new name, each other file a new mark, so that
 * nothing left of the old version can stand in for the new one.
 */
export function releaseAll(folder: string): void {
  release(folder);
  remark(path.join(folder, 'sw.js'));
  const assets = path.join(folder, 'assets');
  const named = readdirSync(assets)
    .filter((file) => /-[\w-]{8}\.(js|css|woff2|json)$/.test(file))
    .map((file) => [file, file.replace(/-[\w-]{8}\.(\w+)$/, '-newer000.$1')] as const);
  for (const [was, is] of named) renameSync(path.join(assets, was), path.join(assets, is));
  for (const file of [
    path.join(folder, 'index.html'),
    path.join(folder, 'sw.js'),
    ...readdirSync(assets)
      .filter((name) => /\.(js|css)$/.test(name))
      .map((name) => path.join(assets, name)),
  ]) {
    const text = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      named.reduce((all, [was, is]) => all.replaceAll(was, is), text),
    );
  }
}

/** Other marks for all files that keep their names. */
function remark(worker: string): void {
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(/[`"']([0-9a-f]{32})[`"']/g, (all, mark: string) =>
    all.replace(mark, [...mark].reverse().join('')),
  );
  writeFileSync(worker, changed);
}

/** The files a release wants kept on the phone. */
export function filesOf(folder: string): readonly string[] {
  const worker = readFileSync(path.join(folder, 'sw.js'), 'utf8');
  return [...worker.matchAll(/url:\s*[`"']([^`"']+)[`"']|"url":"([^"]+)"/g)].map((m) => m[1] ?? m[2] ?? '');
}
