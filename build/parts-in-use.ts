import type { Plugin } from 'vite';

/** A method in fraction.js' table, from its name to the end of its body. */
const aMethod = /^ {2}["'](\w+)["']: function \([^)]*\) \{\n[\s\S]*?^ {2}\},?\n/gm;

/** Where it reads a float or a text: no length is ever made of one. */
const aParse = /typeof p1 === "(?:number|string)"/g;

/**
 * Leaves out of the built app the methods of fraction.js that are not in use, and how it reads floats and texts.
 *
 * @throws where the library is not written as expected
 */
export const fractionWithout = (notInUse: readonly string[]): Plugin => ({
  name: 'fraction-in-use',
  apply: 'build',
  transform: {
    filter: { id: /fraction\.js\/dist\/fraction\.mjs$/ },
    handler: (code) => {
      const found = new Set<string>();
      const short = code
        .replace(aMethod, (said: string, name: string) => {
          found.add(name);
          return notInUse.includes(name) ? said.replace(/[^\n]/g, '') : said;
        })
        .replace(aParse, 'false');
      const missing = notInUse.filter((name) => !found.has(name));
      if (missing.length > 0 || code.match(aParse)?.length !== 2)
        throw new Error(`fraction.js is not written as expected: ${missing}`);
      return { code: short, map: null };
    },
  },
});

/** The last part of idb: cursors for `for await`, hung on all it makes. */
const iteration = /^const advanceMethodProps = [\s\S]*(?=^export \{)/m;

/**
 * Leaves out of the built app how idb walks a cursor with `for await`: the store reads by key and by range.
 *
 * @throws where the library is not written as expected
 */
export const idbWithoutIteration: Plugin = {
  name: 'idb-in-use',
  apply: 'build',
  transform: {
    filter: { id: /idb\/build\/index\.js$/ },
    handler: (code) => {
      if (!iteration.test(code)) throw new Error('idb is not written as expected');
      return { code: code.replace(iteration, (said) => said.replace(/[^\n]/g, '')), map: null };
    },
  },
};
