// The headers a host should send: read from public/_headers as it lies in the build, so every server here sends the
// same.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** The rules of a headers file: a pattern at the start of a line, the headers under it set in. */
export function readHeaders(text) {
  const rules = [];
  for (const line of text.split('\n')) {
    if (line.trim() === '' || line.trimStart().startsWith('#')) continue;
    if (!/^\s/.test(line)) rules.push({ pattern: line.trim(), headers: [] });
    else rules.at(-1)?.headers.push(split(line));
  }
  return rules;
}

function split(line) {
  const colon = line.indexOf(':');
  if (colon < 0) throw new Error(`a header without a colon: ${line.trim()}`);
  return [line.slice(0, colon).trim().toLowerCase(), line.slice(colon + 1).trim()];
}

/** The headers of a path, by name; a pattern is a path, or one that ends in `*` for all that begin so. */
export function headersFor(rules, at) {
  const matches = ({ pattern }) =>
    pattern.endsWith('*') ? at.startsWith(pattern.slice(0, -1)) : at === pattern;
  return Object.fromEntries(rules.filter(matches).flatMap(({ headers }) => headers));
}

/** The rules that lie in a folder to be served; none where it has no headers file. */
export function rulesIn(folder) {
  const file = path.join(folder, '_headers');
  return existsSync(file) ? readHeaders(readFileSync(file, 'utf8')) : [];
}

/** A Vite plugin: the preview server sends what the folder it serves says. */
export const asHosted = {
  name: 'as-hosted',
  configurePreviewServer({ config, middlewares }) {
    const rules = rulesIn(path.resolve(config.root, config.build.outDir));
    const below = config.base.replace(/\/$/, '');
    middlewares.use((request, response, next) => {
      const at = (request.url ?? '/').split('?')[0].slice(below.length);
      for (const [name, value] of Object.entries(headersFor(rules, at))) response.setHeader(name, value);
      next();
    });
  },
};
