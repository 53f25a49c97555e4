import type { Plugin } from 'vite';

/** Custom properties that scripts or the page read or set: they keep their names. */
const shared = ['--docked', '--edge', '--giant', '--r', '--shape'];

/** A name of three signs that hangs on the long one alone, so that sheets built apart agree on it. */
function short(name: string): string {
  let hash = 2166136261; // FNV-1a
  for (const c of name) hash = Math.imul(hash ^ c.charCodeAt(0), 16777619) >>> 0;
  const sign = String.fromCharCode(97 + (hash % 26));
  return `--${sign}${(Math.floor(hash / 26) % 1296).toString(36).padStart(2, '0')}`;
}

/**
 * Gives custom properties short names in what is built: three kilobytes of all that a phone keeps.
 *
 * @throws where two names would come to one, or a script speaks of a name that is gone
 */
export function shortProperties(): Plugin {
  const names = new Map<string, string>();
  return {
    name: 'short-properties',
    apply: 'build',
    enforce: 'pre',
    transform: (css, id) => {
      if (!id.endsWith('.css')) return undefined;
      const code = css.replace(/(?<![\w-])--[a-z][\w-]*/g, (name) => {
        if (shared.includes(name)) return name;
        const other = names.get(short(name)) ?? name;
        if (other !== name) throw new Error(`${name} and ${other} would have one name`);
        names.set(short(name), name);
        return short(name);
      });
      return { code, map: null };
    },
    generateBundle(_, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type !== 'chunk') continue;
        const said = [...names.values()].find((name) => new RegExp(`${name}(?![\\w-])`).test(file.code));
        if (said) throw new Error(`${file.fileName} speaks of ${said}: list it as shared`);
      }
    },
  };
}
