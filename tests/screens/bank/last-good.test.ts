import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { editBank } from '../../../src/job/edits';
import type { Change, Entry } from '../../../src/job/entry';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { lastGood } from '../../../src/screens/bank/last-good';
import { l, w } from '../../trade/grooves/sample';

function benchOf(changes: readonly Change[]) {
  const entries = changes.map(
    (change, k): Entry => ({
      job: 'j',
      device: 'p1',
      count: k + 1,
      at: '2026-11-02T08:30:00.000Z',
      act: `p1.${k + 1}`,
      label: 'Drawers',
      ...change,
    }),
  );
  const job = jobOf('j', fold(entries).values);
  return { entries: signal(entries), job: signal(job), shop: signal({}) };
}

const sizes = editBank('b', { width: l('18'), height: l('24'), depth: l('20') });

test('gaps keyed wider than the opening leave the fronts of before', () => {
  const good = lastGood(benchOf([...sizes, ...editBank('b', { between: l('30') })]), 'b');
  expect(w(good?.columns[0]?.opening.high.value)).toBe('24');
});

test('fronts that never could be cut have no figures', () =>
  expect(lastGood(benchOf(editBank('b', { width: l('18') })), 'b')).toBeUndefined());
