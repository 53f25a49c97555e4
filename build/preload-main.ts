import type { Plugin } from 'vite';

/** The page asks for the app and its styles while its first few bytes of script run: one trip to the host, not two. */
export const preloadMain: Plugin = {
  name: 'preload-main',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle = {} }) => {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const main = chunks.find((chunk) => chunk.moduleIds.some((id) => id.endsWith('/app/main.tsx')));
      if (!main) throw new Error('the app is in no chunk of its own');
      const isFirst = ({ moduleIds }: (typeof chunks)[number]) =>
        moduleIds.some((id) => id.endsWith('/app/first.ts'));
      const first = chunks.find(isFirst)?.fileName;
      const files = [main.fileName, ...main.imports].filter((file) => file !== first);
      const styles = [...(main.viteMetadata?.importedCss ?? [])];
      return [
        ...files.map((file) => ({ rel: 'preload', as: 'script', href: `./${file}` })),
        ...styles.map((file) => ({ rel: 'stylesheet', href: `./${file}` })),
      ].map((attrs) => ({ tag: 'link', attrs, injectTo: 'head' as const }));
    },
  },
};
