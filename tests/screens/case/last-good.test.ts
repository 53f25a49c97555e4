import { expect, test } from 'vitest';
import { editCase, editStock } from '../../../src/job/edits';
import type { Change, Entry } from '../../../src/job/entry';
import { lastGoodCase } from '../../../src/screens/case/last-good';
import { l } from '../../length/write-figures';

const sheet = editStock('a', { name: 'Maple', readings: [l('23/32')], used: l('23/32') });
const sizes = { sideStock: 'a', width: l('30'), height: l('36'), depth: l('12') };
const logOf = (changes: readonly Change[]): readonly Entry[] =>
  changes.map((change, k) => ({
    job: 'j',
    device: 'p1',
    count: k + 1,
    at: '2026-11-02T08:30:00.000Z',
    act: `p1.${k + 1}`,
    label: 'Case',
    ...change,
  }));
const at = { job: 'j', id: 'c1', shop: {} };

test('a width keyed too narrow leaves the figures of the width before', () => {
  const entries = logOf([...sheet, ...editCase('c1', sizes), ...editCase('c1', { width: l('1') })]);
  const good = lastGoodCase(entries, at);
  expect(good?.sizes.width.value.equals(l('30'))).toBe(true);
});

test('a case that never could be cut has no figures', () =>
  expect(lastGoodCase(logOf([...sheet, ...editCase('c1', { width: l('1') })]), at)).toBeUndefined());
