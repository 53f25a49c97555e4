import { expect, test } from 'vitest';
import { groups, notMeasured } from '../../../src/screens/job/shop-words';
import { shopFields } from '../../../src/screens/shared/shop-field-words';

test('each figure of the shop is asked for once', () => {
  const asked = groups.flatMap(({ fields }) => fields);
  expect([...asked].sort()).toEqual(Object.keys(shopFields).sort());
});

test('only the overlap of two passes has a usual figure', () => {
  expect(notMeasured('overlap')).toBe('1/16, usual');
  expect(notMeasured('kerf')).toBe('not measured');
});
