import type { Plugin } from 'vite';

/** The page asks for the app itself while its first few bytes of script run: one trip to the host, not two. */
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
      return files.map((file) => ({
        tag: 'link',
        attrs: { rel: 'preload', as: 'script', href: `./${file}` },
        injectTo: 'head',
      }));
    },
  },
};
