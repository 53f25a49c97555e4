import type { Found, PictureIn } from '../../job/pictures';
import { err, ok, type Result } from '../../length/result';
import { type Connection, type SaveError, saveError } from '../db';
import { sent, strict, whole } from '../whole';
import type { PictureFiles } from './files';
import { asideKey, isAside, isWhole } from './keys';

type Copies = {
  readonly connection: Pick<Connection, 'use' | 'write' | 'readOnly'>;
  readonly files: PictureFiles | undefined;
};

const own = ({ connection }: Copies, key: string): Promise<ArrayBuffer | undefined> =>
  connection.use((db) => db.get('pictures', key));

const putOwn = ({ connection }: Copies, key: string, bytes: ArrayBuffer): Promise<void> =>
  connection.write((db) => {
    const tx = db.transaction('pictures', 'readwrite', strict);
    return whole(tx, async () => sent(tx.store.put(bytes, key)));
  });

const removeOwn = ({ connection }: Copies, keys: readonly string[]): Promise<void> =>
  connection.write((db) => {
    const tx = db.transaction('pictures', 'readwrite', strict);
    return whole(tx, async () => {
      for (const key of keys) sent(tx.store.delete(key));
    });
  });

/**
 * Keeps the bytes of a picture in both copies, the database first: what it refuses is in neither (D4, D17). The room
 * laid by for the last change is not given up for a picture.
 */
export async function keepPicture(
  here: Copies,
  key: string,
  bytes: ArrayBuffer,
): Promise<Result<PictureIn, SaveError>> {
  if (here.connection.readOnly()) return err({ code: 'read-only' });
  const broken = await putOwn(here, key, bytes).then(() => undefined, saveError);
  if (broken && broken.code !== 'failed') return err(broken);
  const second = (await here.files?.put(key, bytes)) ?? false;
  if (!broken) return ok(second ? 'both' : 'database');
  return second ? ok('files') : err(broken);
}

/**
 * The bytes of a picture, out of the copy that has them whole; the other gets them again. Bytes that are not those of
 * their key are never shown: where no copy has them whole they are set aside, and stay (D18).
 */
export async function readPicture(here: Copies, key: string): Promise<Found> {
  const asked = await own(here, key).catch(() => 'no-answer' as const);
  const first = asked === 'no-answer' ? undefined : asked;
  if (first && (await isWhole(key, first))) return first;
  const second = await here.files?.get(key);
  if (second && (await isWhole(key, second))) {
    await putOwn(here, key, second).catch(() => undefined); // as it was: read off the file again
    return second;
  }
  if (first || second) return putAside(here, key, [first, second]);
  if (asked === 'no-answer') return asked;
  const aside = asideKey(key);
  return (await own(here, aside)) || (await here.files?.get(aside)) ? 'damaged' : 'missing';
}

/** Damaged bytes stand beside: whole ones can come in under the key again. */
async function putAside(
  here: Copies,
  key: string,
  [first, second]: readonly (ArrayBuffer | undefined)[],
): Promise<'damaged'> {
  if (here.connection.readOnly()) return 'damaged';
  try {
    if (first) {
      await putOwn(here, asideKey(key), first);
      await removeOwn(here, [key]);
    }
    if (second && (await here.files?.put(asideKey(key), second))) await here.files?.remove(key);
  } catch {
    // no room for it: it stays where it is, and is not shown
  }
  return 'damaged';
}

/** Deletes bytes for good in both copies, also what was set aside of them; false where a copy did not take it. */
export async function dropPictures(here: Copies, keys: readonly string[]): Promise<boolean> {
  if (here.connection.readOnly()) return false;
  const all = keys.flatMap((key) => [key, asideKey(key)]);
  const inFiles = await Promise.all(all.map((key) => here.files?.remove(key) ?? true));
  const inDatabase = await removeOwn(here, all).then(
    () => true,
    () => false,
  );
  return inDatabase && inFiles.every((done) => done);
}

const ownKeys = ({ connection }: Copies): Promise<readonly string[]> =>
  connection.use((db) => db.getAllKeys('pictures'));

/** The keys of all pictures that are kept, in either copy; what was set aside counts by its key. */
export async function keptPictures(here: Copies): Promise<ReadonlySet<string>> {
  const [first, second] = await Promise.all([ownKeys(here).catch(() => []), here.files?.keys()]);
  return new Set([...first, ...(second ?? [])].map((key) => key.replace(/~damaged$/, '')));
}

/** How many pictures are in one copy alone once the copies were brought even. */
type Evened = { readonly alone: number };

/**
 * Brings both copies to hold the same pictures, one at a time. No bytes are read where both have the same keys. What
 * was set aside stays where it is.
 */
export async function evenPictures(here: Copies): Promise<Evened> {
  if (here.connection.readOnly()) return { alone: 0 };
  const [first, second] = await Promise.all([ownKeys(here).catch(() => undefined), here.files?.keys()]);
  if (!first || !second) return { alone: (first ?? second ?? []).filter((key) => !isAside(key)).length };
  const [inFirst, inSecond] = [new Set(first), new Set(second)];
  let alone = 0;
  for (const key of first)
    if (!isAside(key) && !inSecond.has(key) && !(await given(here, key, 'files'))) alone += 1;
  for (const key of second)
    if (!isAside(key) && !inFirst.has(key) && !(await given(here, key, 'database'))) alone += 1;
  return { alone };
}

/** Gives one copy what it lacks, where the other has it whole. */
async function given(here: Copies, key: string, to: 'files' | 'database'): Promise<boolean> {
  const bytes = to === 'files' ? await own(here, key).catch(() => undefined) : await here.files?.get(key);
  if (!bytes || !(await isWhole(key, bytes))) return false;
  if (to === 'files') return (await here.files?.put(key, bytes)) ?? false;
  return putOwn(here, key, bytes).then(
    () => true,
    () => false,
  );
}
