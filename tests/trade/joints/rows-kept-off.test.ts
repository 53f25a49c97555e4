import { expect, test } from 'vitest';
import { type HandJoint, withHandJoints } from '../../../src/trade/joints/by-hand';
import { rowsKeptOff } from '../../../src/trade/joints/rows-kept-off';
import { l } from '../../length/write-figures';
import { framedCase, part, work } from '../carcass/sample-case';

const stile = part(work(framedCase), 'stile');
const made = (own: Partial<HandJoint> & Pick<HandJoint, 'id' | 'kind'>): HandJoint => ({
  part: stile.id,
  at: 'end',
  takes: '',
  ...own,
});
// ten holes an inch apart, at 1 to 10
const row = made({
  id: 'row',
  kind: 'holes',
  width: l('1/4'),
  depth: l('3/8'),
  near: l('1'),
  off: l('3/4'),
  pitch: l('1'),
  count: 10,
});
const dado = (near: string) =>
  made({ id: 'dado', kind: 'dado', near: l(near), width: l('3/4'), depth: l('1/4') });
const kept = (own: readonly HandJoint[], cut: HandJoint) =>
  rowsKeptOff(withHandJoints(stile, own), cut, own).map(({ id }) => id);

test('a dado that a row by hand runs into keeps it from being bored', () => {
  const over = dado('5');
  expect(withHandJoints(stile, [row, over]).bores ?? []).toEqual([]);
  expect(kept([row, over], over)).toEqual(['row']);
});

test('one beside the row keeps nothing off, nor does the row itself', () => {
  const beside = dado('12');
  expect(kept([row, beside], beside)).toEqual([]);
  expect(kept([row, dado('5')], row)).toEqual([]);
});
