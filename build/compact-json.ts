import type { Plugin } from 'vite';

/** JSON that is handed out as a file goes without the blanks that are for reading it in the source. */
export const compactJson: Plugin = {
  name: 'compact-json',
  apply: 'build',
  generateBundle(_, bundle) {
    for (const file of Object.values(bundle)) {
      if (file.type === 'asset' && file.fileName.endsWith('.json')) {
        file.source = JSON.stringify(JSON.parse(`${file.source}`));
      }
    }
  },
};
