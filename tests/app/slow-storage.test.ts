import { describe, expect, test } from 'vitest';
import { logInHand } from '../../src/app/log-in-hand';
import { undoingOf } from '../../src/app/undoing';
import { editReading, editStock } from '../../src/job/edits';
import { jobOf } from '../../src/job/job';
import type { Store } from '../../src/store/store';
import { begun, eachAnew } from '../store/page-of-phone';
import { l, w } from '../trade/grooves/sample';

eachAnew();

/** A store that answers when it is told to, or refuses. */
async function slow() {
  const store = await begun();
  const held: ((how: 'kept' | 'full') => void)[] = [];
  const append: Store['append'] = (act) =>
    new Promise((done) => {
      held.push(
        (how) =>
          void (how === 'full' ? done({ ok: false, error: { code: 'full' } }) : store.append(act).then(done)),
      );
    });
  const log = logInHand({ ...store, append }, { setAside: 0, onOther: () => undefined });
  await log.load('j1');
  const answer = async (how: 'kept' | 'full') => {
    while (held.length === 0) await new Promise((done) => setTimeout(done));
    held.shift()?.(how);
    await new Promise((done) => setTimeout(done, 20));
  };
  const shown = () => jobOf('j1', log.folded.value.values).stock[0]?.readings.map(w);
  const stored = async () => jobOf('j1', (await logOf(store)).folded.value.values).stock[0]?.readings.map(w);
  return { store, log, answer, shown, stored, held };
}

async function logOf(store: Store) {
  const log = logInHand(store, { setAside: 0, onOther: () => undefined });
  await log.load('j1');
  return log;
}

const reading = (id: string, size: string) => editReading('s1', id, { size: l(size) });

describe('storage that answers late', () => {
  test('each reading is shown at once, said to be on its way, and all are kept', async () => {
    const { log, answer, shown, stored } = await slow();
    const all = ['.718', '.721', '.724', '.719'];
    const going = all.map((size, k) => log.write(`Reading ${k + 1}`, reading(`r${k}`, size)));
    expect(shown()).toEqual(['359/500', '721/1000', '181/250', '719/1000']);
    expect(log.underWay.value.map(({ label }) => label)).toEqual([
      'Reading 1',
      'Reading 2',
      'Reading 3',
      'Reading 4',
    ]);
    for (const _ of all) await answer('kept');
    await Promise.all(going);
    expect([log.underWay.value, shown(), await stored()]).toEqual([[], shown(), shown()]);
  });

  test('what is refused leaves the screen and waits by its name, in order; tried again, it is kept', async () => {
    const { log, answer, shown, stored } = await slow();
    for (const [k, size] of ['.718', '.721', '.724'].entries())
      void log.write(`Reading ${k + 1}`, reading(`r${k}`, size));
    await answer('full');
    await answer('kept');
    await answer('full');
    expect(shown()).toEqual(['721/1000']);
    expect(log.unsaved.now.value.map(({ label }) => label)).toEqual(['Reading 1', 'Reading 3']);
    const again = log.unsaved.tryAgain();
    await answer('kept');
    await answer('kept');
    await again;
    expect(log.unsaved.now.value).toEqual([]);
    expect([...((await stored()) ?? [])].sort()).toEqual(['181/250', '359/500', '721/1000']);
  });

  test('the file of the job carries every refused act', async () => {
    const { log, answer } = await slow();
    for (const k of [1, 2]) void log.write(`Reading ${k}`, reading(`r${k}`, '.7'));
    await answer('full');
    await answer('full');
    const last = log.entries.value[log.entries.value.length - 1]?.count ?? 0;
    const labels = log.unsaved.entriesOf('j1', last).map(({ label }) => label);
    expect(labels).toEqual(['Reading 1', 'Reading 2']);
    expect(log.unsaved.entriesOf('other', last)).toEqual([]);
  });

  test('two taps on undo, the first not kept yet, take back two acts', async () => {
    const { store, log, answer, shown } = await slow();
    const undoing = undoingOf(log, store.own, import('../../src/job/undo'));
    void log.write('Stock', editStock('s1', { name: 'A' }));
    await answer('kept');
    for (const k of [1, 2]) void log.write(`Reading ${k}`, reading(`r${k}`, `.7${k}`));
    const both = [undoing.undo(), undoing.undo()];
    for (let k = 0; k < 4; k += 1) await answer('kept');
    await Promise.all(both);
    expect(shown()).toEqual([]);
    expect(undoing.label.value).toBe('Stock');
  });
});
