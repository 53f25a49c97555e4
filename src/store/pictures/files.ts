import type { ScaleError } from '../../job/picture-head';

/** The second copy of pictures, a file each. Every call settles: `undefined` or false where there is no answer. */
export type PictureFiles = {
  /** True once the bytes are on the phone's disk. */
  readonly put: (key: string, bytes: ArrayBuffer) => Promise<boolean>;
  readonly get: (key: string) => Promise<ArrayBuffer | undefined>;
  readonly keys: () => Promise<readonly string[] | undefined>;
  readonly remove: (key: string) => Promise<boolean>;
};

/** A picture scaled down and written anew: its bytes, and its pixels. */
export type Scaled = { readonly bytes: ArrayBuffer; readonly wide: number; readonly high: number };

/** What the worker of pictures is asked, each with a number its answer carries. */
export type PicturesAsked = { readonly no: number } & (
  | { readonly what: 'put'; readonly key: string; readonly bytes: ArrayBuffer }
  | { readonly what: 'get' | 'remove'; readonly key: string }
  | { readonly what: 'keys' }
  | { readonly what: 'scale'; readonly file: Blob }
);

export type PicturesTold = {
  readonly no: number;
  readonly bytes?: ArrayBuffer;
  readonly keys?: readonly string[];
  readonly scaled?: Scaled;
  readonly refused?: ScaleError;
  /** What went wrong, by its name. */
  readonly error?: string;
};
