import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Plugin } from 'vite';
import { type Bundled, noticesOf, packageOf } from './notices.ts';

const modules = '/node_modules/';
const ours = path.resolve(import.meta.dirname, '../node_modules');

/** Licence files, the wanted one first: of a choice of licences the MIT text is taken. */
const licences = [/^licen[cs]e-mit/i, /^licen[cs]e(\.md|\.txt)?$/i];

/** Where the package of a module lies: what the bundler itself writes lies nowhere, and is found by its name. */
function folderOf(id: string, name: string): string {
  const at = id.lastIndexOf(modules);
  return at < 0 ? path.join(ours, name) : id.slice(0, at + modules.length) + name;
}

function read(folder: string): Bundled {
  const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  const files = readdirSync(folder);
  const file = licences.map((pattern) => files.find((found) => pattern.test(found))).find(Boolean);
  if (file === undefined) throw new Error(`${name} has no licence file`);
  return { name, version, license, text: readFileSync(path.join(folder, file), 'utf8') };
}

/**
 * `gather` notes the packages of a bundle; `write` puts the notices of all bundles so far into notices.txt. It stands
 * in the service worker's bundle: that is the last one, and made before the list of files to keep on the phone.
 */
export function notices(): { readonly gather: () => Plugin; readonly write: () => Plugin } {
  const folders = new Set<string>();
  const gather = (): Plugin => ({
    name: 'notices-gather',
    apply: 'build',
    generateBundle(_, bundle) {
      for (const id of Object.values(bundle).flatMap((file) =>
        file.type === 'chunk' ? file.moduleIds : [],
      )) {
        const name = packageOf(id);
        if (name !== undefined) folders.add(folderOf(id, name));
      }
    },
  });
  const write = (): Plugin => ({
    name: 'notices-write',
    apply: 'build',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: 'notices.txt', source: noticesOf([...folders].map(read)) });
    },
  });
  return { gather, write };
}
