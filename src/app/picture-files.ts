import type { ScaleError } from '../job/picture-head';
import { err, ok, type Result } from '../length/result';
import type { PictureFiles, PicturesAsked, PicturesTold, Scaled } from '../store/pictures/files';
import { scaledBy } from '../store/pictures/scaled';
import { openImage } from './scale-here';

/** What takes longer gave no answer, milliseconds: a large picture takes its time, a phone that sleeps gives none. */
const patience = { put: 15_000, get: 15_000, remove: 15_000, keys: 15_000, scale: 60_000 };

type Question = PicturesAsked extends infer T ? (T extends PicturesAsked ? Omit<T, 'no'> : never) : never;

export type PicturesWorker = {
  /** Undefined where the browser has no file system of its own. */
  readonly files: PictureFiles | undefined;
  readonly scale: (file: Blob) => Promise<Result<Scaled, ScaleError | { readonly code: 'no-answer' }>>;
};

/** The worker of pictures, begun when it is first asked; after one that gave no answer another is begun. */
export function picturesWorker(): PicturesWorker {
  let worker: Worker | undefined;
  const waiting = new Map<number, (told: PicturesTold | undefined) => void>();
  let no = 0;
  const end = (): void => {
    worker?.terminate();
    worker = undefined;
    for (const settle of [...waiting.values()]) settle(undefined);
  };
  const begun = (): Worker => {
    if (worker) return worker;
    worker = new Worker(new URL('../workers/pictures.ts', import.meta.url), {
      type: 'module',
      name: 'pictures',
    });
    worker.onmessage = ({ data }: MessageEvent<PicturesTold>) => waiting.get(data.no)?.(data);
    worker.onerror = end;
    return worker;
  };
  const ask = (asked: Question): Promise<PicturesTold | undefined> =>
    new Promise((resolve) => {
      no += 1;
      const own = no;
      const late = setTimeout(end, patience[asked.what]);
      waiting.set(own, (told) => {
        clearTimeout(late);
        waiting.delete(own);
        resolve(told);
      });
      begun().postMessage({ no: own, ...asked } as PicturesAsked);
    });
  return { files: hasFiles() ? filesOf(ask) : undefined, scale: canDraw() ? scaledThere(ask) : scaledHere };
}

type Ask = (asked: Question) => Promise<PicturesTold | undefined>;

const hasFiles = (): boolean => 'storage' in navigator && 'getDirectory' in navigator.storage;

function filesOf(ask: Ask): PictureFiles {
  const done = async (asked: Question): Promise<boolean> => {
    const told = await ask(asked);
    return told !== undefined && told.error === undefined;
  };
  return {
    put: (key, bytes) => done({ what: 'put', key, bytes }),
    get: async (key) => (await ask({ what: 'get', key }))?.bytes,
    keys: async () => (await ask({ what: 'keys' }))?.keys,
    remove: (key) => done({ what: 'remove', key }),
  };
}

/** Whether a worker has something to draw on: the older of the browsers that still run the app have not. */
const canDraw = (): boolean => 'OffscreenCanvas' in globalThis;

const noAnswer = err({ code: 'no-answer' } as const);

const scaledThere =
  (ask: Ask): PicturesWorker['scale'] =>
  async (file) => {
    const told = await ask({ what: 'scale', file });
    if (told?.scaled) return ok(told.scaled);
    return told?.refused ? err(told.refused) : noAnswer;
  };

const scaledHere: PicturesWorker['scale'] = (file) =>
  Promise.race([
    scaledBy(openImage, file),
    new Promise<typeof noAnswer>((done) => setTimeout(done, patience.scale, noAnswer)),
  ]);
