import { signal } from '@preact/signals';
import { hashOf } from '../job/picture-hash';
import { mostFileBytes } from '../job/picture-head';
import { mostPictureBytes, mostPictures, picturesHeld } from '../job/pictures';
import { err, ok, type Result } from '../length/result';
import type { PictureError, Pictures, Taken } from '../screens/pictures';
import { dropPictures, evenPictures, keepPicture, keptPictures, readPicture } from '../store/pictures/kept';
import { partsOf, pictureKey } from '../store/pictures/keys';
import type { Store } from '../store/store';
import { type PicturesWorker, picturesWorker } from './picture-files';

/** A picture leaves so much of the phone free, bytes: ticks come first. */
const roomForTicks = 20 * 1024 * 1024;

/** A picture is taken and its bytes are deleted one after the other, whatever pages do it. */
const inTurn = <T>(work: () => Promise<T>): Promise<T> =>
  navigator.locks ? navigator.locks.request('knifeline-pictures', work) : work();

/** The bytes of pictures on this phone. Nothing of it is read or begun at a start but the keys of what is kept. */
export function picturesOf({ connection }: Pick<Store, 'connection'>): Pictures {
  const worker = picturesWorker();
  const here = { connection, files: worker.files };
  const alone = signal(0);
  const some = signal(false);
  const hands: Hands = {
    here,
    worker,
    keptIn: (where) => {
      some.value = true;
      if (where !== 'both') alone.value += 1;
    },
  };
  void anyKept(here).then(async (any) => {
    some.value ||= any;
    if (!any) return;
    // as it was where it fails: tried again at the next start
    const evened = await inTurn(() => evenPictures(here)).catch(() => undefined);
    if (evened) alone.value = evened.alone;
  });
  return { alone, some, ...takingIn(hands), ...atHand(here) };
}

function takingIn(hands: Hands): Pick<Pictures, 'take' | 'keep'> {
  return {
    take: (job, file, note) =>
      inTurn(async () => {
        const taken = await takeIn(hands, job, file);
        if (!taken.ok) return taken;
        hands.keptIn(taken.value.keptIn);
        await note(taken.value);
        return taken;
      }),
    keep: (job, hash, bytes) =>
      inTurn(async () => {
        const free = await freeRoom();
        if (free !== undefined && free < roomForTicks) return false;
        const kept = await keepPicture(hands.here, pictureKey(job, hash), bytes);
        if (kept.ok) hands.keptIn(kept.value);
        return kept.ok;
      }),
  };
}

const atHand = (here: Here): Pick<Pictures, 'read' | 'here' | 'jobless' | 'drop'> => ({
  read: (job, hash) => readPicture(here, pictureKey(job, hash)),
  here: async (job) => {
    const keys = [...(await keptPictures(here))].map(partsOf);
    return new Set(keys.flatMap((key) => (key.job === job ? [key.hash] : [])));
  },
  jobless: async (jobs) =>
    [...(await keptPictures(here))].map(partsOf).filter(({ job }) => !jobs.includes(job)),
  drop: (job, hashes) =>
    inTurn(() =>
      dropPictures(
        here,
        hashes.map((hash) => pictureKey(job, hash)),
      ),
    ),
});

type Here = Parameters<typeof keepPicture>[0];

/** Whether any picture was ever taken: where none was, no worker is begun for them. */
async function anyKept({ connection }: Here): Promise<boolean> {
  const inDatabase = await connection.use((db) => db.count('pictures')).catch(() => 0);
  if (inDatabase > 0) return true;
  try {
    await (await navigator.storage.getDirectory()).getDirectoryHandle('knifeline-pictures');
    return true;
  } catch {
    return false;
  }
}

type Hands = {
  readonly here: Here;
  readonly worker: PicturesWorker;
  /** Says where a picture is kept. */
  readonly keptIn: (where: Taken['keptIn']) => void;
};

async function takeIn(
  { here, worker }: Pick<Hands, 'here' | 'worker'>,
  job: Parameters<Pictures['take']>[0],
  file: Blob,
): Promise<Result<Taken, PictureError>> {
  if (file.size > mostFileBytes) return err({ code: 'too-big', size: file.size });
  const held = picturesHeld(job);
  if (held.count >= mostPictures) return err({ code: 'too-many' });
  const free = await freeRoom();
  if (free !== undefined && free < roomForTicks) return err({ code: 'no-room', free });
  const scaled = await worker.scale(file);
  if (!scaled.ok) return scaled;
  const { bytes, wide, high } = scaled.value;
  const size = bytes.byteLength;
  if (held.bytes + size > mostPictureBytes) return err({ code: 'too-much', bytes: held.bytes + size });
  const hash = await hashOf(bytes);
  if (hash === undefined) return err({ code: 'no-check' });
  const kept = await keepPicture(here, pictureKey(job.id, hash), bytes);
  return kept.ok ? ok({ hash, size, wide, high, keptIn: kept.value }) : kept;
}

/** What the browser says is free; undefined where it does not say. */
async function freeRoom(): Promise<number | undefined> {
  try {
    const { quota, usage } = await navigator.storage.estimate();
    return quota === undefined || usage === undefined ? undefined : quota - usage;
  } catch {
    return undefined;
  }
}
