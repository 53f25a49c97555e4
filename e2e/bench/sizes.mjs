// How much a page is to fetch, before its first figure and altogether.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';

const zipped = (source) => gzipSync(source, { level: 9 }).length;
const total = (numbers) => numbers.reduce((a, b) => a + b, 0);

const holds = (chunk, file) => chunk.moduleIds.some((id) => id.endsWith(file));

/** Scripts the page asks for at once: what it begins with, the app, and all these import. */
function first(output) {
  const chunks = output.filter((file) => file.type === 'chunk');
  const need = new Set();
  const take = (name) => {
    if (need.has(name)) return;
    need.add(name);
    chunks.find((chunk) => chunk.fileName === name)?.imports.forEach(take);
  };
  const asked = chunks.filter(
    (chunk) => chunk.isEntry || ['/app/first.ts', '/app/main.tsx'].some((f) => holds(chunk, f)),
  );
  for (const { fileName } of asked) take(fileName);
  return {
    now: chunks.filter((c) => need.has(c.fileName)),
    later: chunks.filter((c) => !need.has(c.fileName)),
  };
}

function weigh(output) {
  const { now, later } = first(output);
  const css = output.filter((file) => file.fileName.endsWith('.css'));
  return {
    now: total(now.map((chunk) => zipped(chunk.code))),
    later: later.length === 0 ? undefined : total(later.map((chunk) => zipped(chunk.code))),
    css: total(css.map((file) => zipped(file.source))),
  };
}

/** Files the service worker keeps, read out of the built worker itself. */
function precache(folder) {
  const worker = readFileSync(path.join(folder, 'sw.js'), 'utf8');
  const list = /\[\{"revision".*?\}\]/s.exec(worker);
  if (!list) throw new Error('no precache list in sw.js');
  return [...new Set(JSON.parse(list[0]).map((file) => file.url))];
}

const everything = (folder) =>
  readdirSync(folder, { recursive: true }).filter((name) => statSync(path.join(folder, name)).isFile());

const bytes = (folder, files) => total(files.map((name) => statSync(path.join(folder, name)).size));

/** @param app and bare: `{ folder, output }`, built in this run */
export function sizes(app, bare) {
  const [a, b] = [weigh(app.output), weigh(bare.output)];
  const [kept, all] = [precache(app.folder), everything(bare.folder)];
  const row = (name, x, y, unit) => ({ name, app: x, beside: y, unit });
  return [
    row('first script, gzip; a bare Preact page', a.now, b.now, 'bytes'),
    row('second script, gzip', a.later, b.later, 'bytes'),
    row('style sheets, gzip; the bare page', a.css, b.css, 'bytes'),
    row(
      'everything kept for offline; the bare page',
      bytes(app.folder, kept),
      bytes(bare.folder, all),
      'bytes',
    ),
    row('files kept for offline; the bare page', kept.length, all.length, 'files'),
  ];
}
