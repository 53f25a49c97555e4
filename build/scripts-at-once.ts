import type { Plugin, Rollup } from 'vite';
import { scriptLoader } from './script-loader.ts';

type Bundle = Rollup.OutputBundle;
type Chunk = Rollup.OutputChunk;

const chunksOf = (bundle: Bundle): readonly Chunk[] =>
  Object.values(bundle).filter((file) => file.type === 'chunk');

/** What the page begins with: it brings the loader along. */
const isFirst = ({ moduleIds }: { readonly moduleIds: readonly string[] }): boolean =>
  moduleIds.some((id) => id.endsWith('/app/first.ts'));

const nameOf = (file: string): string => file.replace(/^assets\//, '');

/** A chunk, then what it cannot start without, and so on. */
function withImports(chunk: Chunk, bundle: Bundle, seen = new Set<Chunk>()): ReadonlySet<Chunk> {
  if (seen.has(chunk)) return seen;
  seen.add(chunk);
  for (const other of chunksOf(bundle))
    if (chunk.imports.includes(other.fileName)) withImports(other, bundle, seen);
  return seen;
}

/** By the name of each script that is asked for as the page runs: the names of what comes with it. */
function askedWith(bundle: Bundle): Readonly<Record<string, readonly string[]>> {
  const chunks = chunksOf(bundle);
  const here = chunks.filter(isFirst).flatMap((chunk) => filesOf(chunk, bundle));
  const wanted = chunks.filter(({ fileName }) =>
    chunks.some((other) => other.dynamicImports.includes(fileName)),
  );
  return Object.fromEntries(
    wanted.map((chunk) => [
      nameOf(chunk.fileName),
      filesOf(chunk, bundle)
        .filter((file) => file !== chunk.fileName && !here.includes(file))
        .map(nameOf),
    ]),
  );
}

const filesOf = (chunk: Chunk, bundle: Bundle): readonly string[] => {
  const all = [...withImports(chunk, bundle)];
  const styles = all.flatMap((one) => [...(one.viteMetadata?.importedCss ?? [])]);
  return [...new Set([...all.map((one) => one.fileName), ...styles])];
};

/** An import as the page runs, as the bundler writes it for scripts that are no modules. */
const anImport = /Promise\.resolve\(\)\.then\(\(\)=>\w+\((["'`]\.\/[^"'`]+["'`])\)\)/g;

/** A worker's script is no module either. */
const aModule = /type:[`"']module[`"'],(?=name:)/g;

/** What a script exports, one by one at its end. */
const exported =
  /Object\.defineProperty\((\w+),(["`][^"`]+["`]),\{enumerable:!0,get:function\(\)\{return ([\w$]+)\}\}\)[,;]?/g;
/** The bundler may have made one statement of it and what stands before. */
const allExported = new RegExp(`,?(?:${exported.source})+(?=\\}\\);?$)`, 'm');

/** All of it at once: fifty bytes less for each. */
function shortExports(said: string): string {
  const each = [...said.matchAll(exported)];
  return `;out_(${each[0]?.[1]},{${each.map(([, , name, local]) => `${name?.replaceAll('`', '"')}:()=>${local}`).join()}})`;
}

/** As long as before: the source maps stay true. */
const brought = (said: string, file: string): string => `bring_(${file})`.padEnd(said.length);

/**
 * A function in brackets is compiled with the script it stands in, beside the page's thread; else it would be read once
 * more, on that thread, when it is called. The minifier takes brackets away, so they are put in after it, as long as
 * what they stand for.
 */
function compiledAtOnce({ code, fileName }: Chunk): string {
  const bracketed = code
    .replace('script__(function(', 'script_((function(')
    .replace(/\}\)(?=;?\s*\/\/# sourceMappingURL=)/, '}))');
  if (bracketed.length !== code.length + 1) throw new Error(`${fileName} does not begin and end as expected`);
  return bracketed;
}

/** The bundler's own helper, in a file of its own: it makes one object of a module's names, as the loader can. */
const itsHelper = /\w+\(["`]\.\/rolldown-runtime-[\w-]+\.js["`]\)/g;
const helper = 'rolldown/runtime.js';

/** Takes the helper's file out: each script finds it with the loader. */
function withoutHelper(bundle: Bundle): void {
  const found = chunksOf(bundle).find(({ moduleIds }) => moduleIds.every((id) => id.endsWith(helper)));
  if (!found) return;
  if (found.exports.join() !== 't') throw new Error(`the helper does more than ${found.exports}`);
  delete bundle[found.fileName];
  for (const chunk of chunksOf(bundle)) {
    chunk.imports = chunk.imports.filter((file) => file !== found.fileName);
    chunk.code = chunk.code.replace(itsHelper, (said) => 'names_'.padEnd(said.length));
  }
}

/** The bundler's own care for what comes with a script it asks for: the loader does it. */
const cares = 'native:import-analysis-build';

/**
 * Builds the app as plain scripts in place of modules. A browser keeps the compiled code of a plain script with the
 * script itself once a service worker puts it away; of a module that a service worker serves, Chromium keeps none, and
 * compiles it at each start (README of build).
 */
export const scriptsAtOnce: Plugin = {
  name: 'scripts-at-once',
  apply: 'build',
  enforce: 'post',
  config: () => ({
    define: { 'import.meta.url': 'document.baseURI' },
    experimental: {
      renderBuiltUrl: (file, { hostType }) =>
        hostType === 'js' ? { runtime: JSON.stringify(file) } : { relative: true },
    },
    build: {
      rolldownOptions: {
        output: {
          format: 'cjs',
          intro: (chunk) =>
            `${isFirst(chunk) ? `(${scriptLoader})(self,document);` : ''}script__(function(require,exports){`,
          outro: '})',
        },
      },
    },
  }),
  configResolved({ plugins }) {
    const at = plugins.findIndex(({ name }) => name === cares);
    if (at < 0) throw new Error(`no ${cares} to leave out`);
    (plugins as Plugin[]).splice(at, 1);
  },
  transformIndexHtml: {
    order: 'post',
    handler: (html) => html.replace('<script type="module" crossorigin', '<script defer'),
  },
  // the bundler writes these two as it likes: what is not found breaks the build
  generateBundle: {
    order: 'pre', // the page is told of the files as they are then
    handler(_, bundle) {
      withoutHelper(bundle);
      const chunks = chunksOf(bundle);
      for (const chunk of chunks) {
        chunk.code = chunk.code
          .replace(anImport, brought)
          .replace(aModule, (said) => ' '.repeat(said.length))
          .replace(allExported, shortExports);
        chunk.code = compiledAtOnce(chunk);
        const missed = chunk.dynamicImports.find(
          (file) => !chunk.code.includes(`bring_("./${nameOf(file)}")`),
        );
        this.parse(chunk.code); // throws where what was put in makes no script
        if (missed)
          throw new Error(`${chunk.fileName} does not ask for ${missed} as the loader can bring it`);
      }
      const first = chunks.find(isFirst);
      if (!first) throw new Error('the page begins with no chunk of its own');
      first.code = first.code.replace(
        /(?=\n\/\/# sourceMappingURL=)/,
        `;begin_(${JSON.stringify(askedWith(bundle))})`,
      );
    },
  },
};
