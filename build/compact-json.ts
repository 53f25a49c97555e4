import type { Plugin } from 'vite';

type Row = Readonly<Record<string, unknown>>;

/**
 * A job file with what all its entries say alike said once, under `all`, and without blanks. `src/app/sample-file.ts`
 * makes it whole again. What has no entries only loses its blanks.
 */
export function compact(text: string): string {
  const { entries, ...file } = JSON.parse(text) as Row & { readonly entries?: readonly Row[] };
  const [first] = entries ?? [];
  if (!entries || !first) return JSON.stringify(JSON.parse(text));
  const alike = Object.keys(first).filter((key) => entries.every((entry) => entry[key] === first[key]));
  const without = (entry: Row) =>
    Object.fromEntries(Object.entries(entry).filter(([key]) => !alike.includes(key)));
  const all = Object.fromEntries(alike.map((key) => [key, first[key]]));
  return JSON.stringify({ ...file, all, entries: entries.map(without) });
}

/** The sample job goes without the blanks that are for reading it in the source, and says once what it says of all. */
export const compactJson: Plugin = {
  name: 'compact-json',
  apply: 'build',
  generateBundle(_, bundle) {
    for (const file of Object.values(bundle)) {
      if (file.type === 'asset' && file.fileName.endsWith('.json')) file.source = compact(`${file.source}`);
    }
  },
};
