// Random acts as a shop makes them: ticks, readings, several things at one tap, another phone's rows, a setting.
import { inches } from '../../../src/length/length';

export const job = 'killjob';
const otherJob = 'otherjob';

const op = (n) => `cut/b${n % 50}/r1~${n % 9}~p1/${1 + (n % 2)}`;

function change(pick) {
  const n = pick(1000);
  if (pick(10) < 6) return { kind: 'tick', op: op(n), figure: `${2 * n + 1}/64` };
  if (pick(4) === 0) return { kind: 'untick', op: op(n) };
  return { kind: 'edit', path: `boards/b${n % 50}/length`, value: `${2 * n + 1}/32` };
}

/**
 * One act. Its label says how many entries it has, so that a torn one shows: `<name>/<entries>`. Resolves with what was
 * acknowledged, `{ entries }` or `{ figure: [where, n] }` with n only ever growing, or with `{ refused }`.
 *
 * @param how `name` of this writer, no other has it; `pick` its chance; `shelf` the figure of the shop it writes;
 *   `from` what stands there
 */
export function actor(store, { name, pick, shelf, from }) {
  let made = 0;
  let others = 0;
  let [note, figure] = [0, from];
  const other = `other${name}`;
  const told = (done, what) =>
    done.ok ? what(done.value) : { refused: done.error.code, name: done.error.name };
  const changes = (size) => Array.from({ length: size }, () => change(pick));
  const append = (label, size) =>
    store
      .append({ job, label, changes: changes(size) })
      .then((done) => told(done, (entries) => ({ entries })));
  const take = (label, size) => {
    const first = others + 1;
    others += size;
    const at = new Date().toISOString();
    const stamp = { job: otherJob, device: other, at, act: `${other}.${first}`, label };
    const entries = changes(size).map((one, k) => ({ ...stamp, count: first + k, ...one }));
    return store.addEntries(otherJob, entries).then((done) => told(done, () => ({ entries })));
  };
  const keep = () => {
    note += 1;
    const at = [`settings note${name}`, note];
    return store.keep(`note${name}`, note).then((done) => told(done, () => ({ figure: at })));
  };
  const keepShop = () => {
    figure += 1;
    const at = [`shop ${shelf}`, figure];
    return store.keepShop(shelf, inches(BigInt(figure))).then((done) => told(done, () => ({ figure: at })));
  };
  return async () => {
    made += 1;
    const kind = pick(20);
    const size = kind < 13 ? 1 : 2 + pick(5);
    const label = `${name}.${made}/${size}`;
    if (kind === 19) return { label, ...(await keep()) };
    if (kind === 18) return { label, ...(await keepShop()) };
    if (kind === 17) return { label, ...(await take(label, size)) };
    return { label, ...(await append(label, size)) };
  };
}

/** Everything the store has: entries of all jobs, and each setting and figure of the shop that is a number. */
export async function everything(store) {
  const lines = await store.jobs();
  const loaded = await Promise.all(lines.map(({ id }) => store.load(id)));
  const settings = Object.entries(await store.settings()).filter(([, value]) => typeof value === 'number');
  const shop = Object.entries(await store.shop()).map(([key, value]) => [`shop ${key}`, Number(value.n)]);
  return {
    entries: loaded.flatMap(({ entries }) => entries),
    setAside: loaded.reduce((sum, { setAside }) => sum + setAside, 0),
    figures: Object.fromEntries([...settings.map(([key, n]) => [`settings ${key}`, n]), ...shop]),
  };
}
