import { expect, test } from 'vitest';
import { jointFields, meetings, reachOf, seenOf } from '../../../src/trade/carcass/meetings';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { l, w } from '../grooves/sample';
import { plainCase, sheets } from './sample-case';

const sized = sizesOf({ ...plainCase, dado: l('1/4'), topRabbet: l('11/32') }, sheets());
if (!sized.ok) throw new Error('the case does not work out');

test('a bottom reaches into both sides and hides it; a top reaches into its rabbets and shows it', () => {
  expect([w(reachOf(sized.value, 'dado')), w(seenOf(sized.value, 'dado'))]).toEqual(['1/4', '0']);
  expect([w(reachOf(sized.value, 'topRabbet')), w(seenOf(sized.value, 'topRabbet'))]).toEqual([
    '11/32',
    '11/32',
  ]);
});

test('a case has the joints of the parts it has', () => {
  expect(jointFields({ ...plainCase, partitions: 0, hasTop: false, hasBack: false, cleats: 0 })).toEqual([
    'dado',
  ]);
  const all = { ...plainCase, partitions: 1, hasTop: true, hasBack: true, cleats: 1 };
  const either = new Set([...jointFields(all), ...jointFields({ ...all, backHow: 'groove' })]);
  expect([...either].sort()).toEqual(Object.keys(meetings).sort());
  expect(jointFields({ ...all, backHow: 'applied' }).some((field) => field.startsWith('back'))).toBe(false);
});
