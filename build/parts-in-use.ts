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

/** A part of jsPDF that hangs itself on what it makes, and those that are in use. */
const aPart = /^\(function \(\w+[^)]*\) \{\n[\s\S]*?^\}\)\([^)\n]*(?:\([^)\n]*\))?[^)\n]*\);\n/gm;
const partsInUse = [
  'addImage',
  'getTextWidth',
  'processDataByFilters',
  'processRGBA',
  'splitTextToSize',
  '__fontmetrics__',
];

/** What stands about outside of a part: forms; readers of GIF, BMP and WebP, writer of JPEG; fonts of one's own. */
const about = [
  /^var jsPDFAPI = jsPDF\.API;\n[\s\S]*^var AcroForm = jsPDF\.AcroForm;\n/m,
  /^function GifReader\(buf\) \{\n[\s\S]*^WebPDecoder\.prototype\.getData = function \(\) \{\n.*\n\};\n/m,
  /^jsPDF\.API\.TTFFont = [\s\S]*(?=^export \{)/m,
  /^import \{ decode \} from 'fast-png';\n/m,
];

const blanked = (said: string): string => said.replace(/[^\n]/g, '');

/**
 * Leaves out of the built app what jsPDF can do besides lines, boxes, text in the fonts of every reader, and pictures
 * as points: three quarters of it.
 *
 * @throws where the library is not written as expected
 */
export const jspdfInUse: Plugin = {
  name: 'jspdf-in-use',
  apply: 'build',
  config: () => ({ resolve: { alias: { jspdf: 'jspdf/dist/jspdf.es.js' } } }),
  transform: {
    filter: { id: /jspdf\/dist\/jspdf\.es\.js$/ },
    handler: (code) => {
      const found = new Set<string>();
      const hangs = (part: string, name: string) =>
        new RegExp(`^ {2}(?:jsPDFAPI|API)\\.${name} = `, 'm').test(part);
      let short = code.replace(aPart, (part) => {
        const own = partsInUse.filter((name) => hangs(part, name));
        for (const name of own) found.add(name);
        return own.length > 0 ? part : blanked(part);
      });
      for (const one of about) {
        if (!one.test(short)) throw new Error('jsPDF is not written as expected');
        short = short.replace(one, blanked);
      }
      const missing = partsInUse.filter((name) => !found.has(name));
      if (missing.length > 0) throw new Error(`jsPDF is not written as expected: ${missing}`);
      return { code: short.replace(/^export \{.*\};$/m, 'export { jsPDF };'), map: null };
    },
  },
};
