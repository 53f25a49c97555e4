import type { PictureFiles } from '../../../src/store/pictures/files';

/** Files in memory: what was put is a copy, and `full` or `away` make it refuse, or not answer. */
export function memoryFiles() {
  const all = new Map<string, ArrayBuffer>();
  const how = { full: false, away: false };
  const files: PictureFiles = {
    put: async (key, bytes) => {
      if (how.full || how.away) return false;
      all.set(key, bytes.slice(0));
      return true;
    },
    get: async (key) => (how.away ? undefined : all.get(key)?.slice(0)),
    keys: async () => (how.away ? undefined : [...all.keys()]),
    remove: async (key) => {
      if (how.away) return false;
      all.delete(key);
      return true;
    },
  };
  return { files, all, how };
}
