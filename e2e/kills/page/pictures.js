// Pictures taken in as the app takes them, and whether those that the log names are whole.
import { picturesWorker } from '../../../src/app/picture-files';
import { picturesOf } from '../../../src/app/pictures';
import { addPicture } from '../../../src/job/pictures';
import { evenPictures, readPicture } from '../../../src/store/pictures/kept';
import { isWhole, pictureKey } from '../../../src/store/pictures/keys';
import { job } from './acts';

/** A photo nobody took before: mostly noise, so that its bytes take their time. */
async function drawn(pick) {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [200 + pick(400), 200 + pick(400)];
  const drawing = canvas.getContext('2d');
  const image = drawing.createImageData(canvas.width, canvas.height);
  const noise = new Uint32Array(image.data.buffer);
  for (let k = 0; k < noise.length; k += 1) noise[k] = 0xff000000 | pick(1 << 24);
  drawing.putImageData(image, 0, 0);
  return new Promise((done) => canvas.toBlob(done, 'image/jpeg', 0.8));
}

/** Takes one picture in; resolves with what was acknowledged: the entries that name it, its bytes kept before. */
export function taker(store, { name, pick }) {
  const pictures = picturesOf(store);
  let made = 0;
  return async () => {
    made += 1;
    const id = `${name}p${made}`;
    let told;
    const note = async ({ hash, size, wide, high }) => {
      const changes = addPicture({ id, of: 'room', hash, size, wide, high });
      const label = `${id}/${changes.length}`;
      const done = await store.append({ job, label, changes });
      told = done.ok ? { label, entries: done.value, picture: hash } : { label, refused: done.error.code };
    };
    const taken = await pictures.take({ id: job, tree: new Map() }, await drawn(pick), note);
    return told ?? { label: `${id}/0`, refused: taken.ok ? 'untold' : taken.error.code };
  };
}

/**
 * Of the pictures that entries name: how many are not shown whole as the store stands open (`half`), and how many are
 * not whole in both copies once these were brought even (`single`).
 */
export async function flawed(store, entries) {
  const { connection } = store;
  const { files } = picturesWorker();
  const named = entries.filter(({ kind, path }) => kind === 'edit' && /^pictures\/[^/]+\/hash$/.test(path));
  const keys = [...new Set(named.map(({ value }) => pictureKey(job, value)))];
  const here = { connection, files };
  let [half, single] = [0, 0];
  for (const key of keys) if (!((await readPicture(here, key)) instanceof ArrayBuffer)) half += 1;
  await evenPictures(here);
  for (const key of keys) {
    const both = [await connection.use((db) => db.get('pictures', key)), await files?.get(key)];
    const whole = await Promise.all(both.map((bytes) => bytes !== undefined && isWhole(key, bytes)));
    if (whole.includes(false)) single += 1;
  }
  return { half, single };
}
