import { expect, test } from 'vitest';
import { dowelsFor, usualDowels } from '../../../src/trade/fasteners/dowels';
import { l } from '../../length/write-figures';

const sizes = [{ thick: l('3/8'), long: l('1 1/2') }];
const plan = { part: l('3/4'), mate: l('3/4'), run: l('18'), end: l('1 1/4'), most: l('6'), sizes };

test('no dowel between a third and a half: both limits are told', () => {
  // 1/2 stock takes 1/6 to 1/4
  const found = dowelsFor({ ...plan, part: l('1/2') });
  expect(found).toMatchObject({ ok: false, error: { code: 'no-dowel' } });
  if (!found.ok && found.error.code === 'no-dowel')
    expect([found.error.least.equals(l('1/6')), found.error.most.equals(l('1/4'))]).toEqual([true, true]);
});

test('a line too near a face leaves a thin wall, and beyond it the dowels come out', () => {
  // 1/4 from the face less 3/16 leaves 1/16, under the 3/16 asked
  const near = dowelsFor({ ...plan, from: l('1/4') });
  expect(near.ok && near.value.warnings.map(({ code }) => code)).toEqual(['thin-wall']);
  const out = dowelsFor({ ...plan, from: l('1/8') });
  expect(out).toMatchObject({ ok: false, error: { code: 'off-the-part' } });
});

test('one alone turns; one near an end is told', () => {
  const alone = dowelsFor({ ...plan, run: l('2') });
  expect(alone.ok && alone.value.warnings.map(({ code }) => code)).toEqual(['turns']);
  const near = dowelsFor({ ...plan, end: l('3/4') });
  expect(near.ok && near.value.warnings.map(({ code }) => code)).toEqual(['near-end']);
});

test('of several as thick the longest is taken', () => {
  const found = dowelsFor({ ...plan, sizes: [...sizes, { thick: l('3/8'), long: l('2') }] });
  expect(found.ok && found.value.size.long.equals(l('2'))).toBe(true);
});

// A third of 16 is 5 1/3, a half 8: 8 by 40. 40/3 is over 16 - 3 - 1.5 = 11.5, so 11.5 + 1.5 and 40 - 11.5 + 1.5.
test('a metric shop has its own dowels and limits: 8 by 40 in 16 mm, 13 deep in the face and 30 in the end', () => {
  const sold = {
    part: l('16 mm'),
    mate: l('16 mm'),
    run: l('400 mm'),
    most: l('150 mm'),
    units: 'mm',
  } as const;
  const found = dowelsFor({ ...sold, end: l('25 mm'), sizes: usualDowels('mm') });
  if (!found.ok) throw new Error(found.error.code);
  const { size, inFace, inEdge, warnings } = found.value;
  expect([size.thick, size.long, inFace, inEdge]).toEqual(['8 mm', '40 mm', '13 mm', '30 mm'].map(l));
  expect(warnings).toEqual([]);
  const near = dowelsFor({ ...sold, end: l('24 mm'), sizes: usualDowels('mm') });
  expect(near.ok && near.value.warnings).toEqual([{ code: 'near-end', end: l('24 mm'), least: l('25 mm') }]);
});
