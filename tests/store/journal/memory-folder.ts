import type { Folder } from '../../../src/store/journal/files';
import { standingIn } from '../../../src/store/journal/lines';

/** Files in memory whose k-th call may fail, or be cut off after some bytes as a killed phone cuts it off. */
export type MemoryFolder = Folder & {
  readonly files: Map<string, Uint8Array>;
  /** Called before each; throws to fail it, or says after how many bytes it is cut off. */
  fail: (() => number | undefined) | undefined;
};

const joined = (a: Uint8Array, b: Uint8Array): Uint8Array => {
  const all = new Uint8Array(a.length + b.length);
  all.set(a);
  all.set(b, a.length);
  return all;
};

export function memoryFolder(): MemoryFolder {
  const files = new Map<string, Uint8Array>();
  const folder: MemoryFolder = {
    files,
    fail: undefined,
    read: async (name, from = 0, most = Number.POSITIVE_INFINITY) => {
      folder.fail?.();
      return (files.get(name) ?? new Uint8Array()).subarray(from, from + most);
    },
    append: async (name, bytes) => {
      const cut = folder.fail?.();
      const now = files.get(name) ?? new Uint8Array();
      const stands = now.subarray(0, standingIn(now));
      const ended = stands.length === 0 || stands[stands.length - 1] === 10;
      const all = ended ? bytes : joined(new Uint8Array([10]), bytes);
      files.set(name, joined(stands, all.subarray(0, cut ?? all.length)));
      if (cut !== undefined) throw new Error('killed');
    },
    write: async (name, bytes) => {
      const cut = folder.fail?.();
      files.set(name, bytes.subarray(0, cut ?? bytes.length));
      if (cut !== undefined) throw new Error('killed');
    },
  };
  return folder;
}
