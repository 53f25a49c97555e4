import { expect, test } from 'vitest';
import { cutsAcross } from '../../../src/screens/shared/cuts-across';
import type { Part } from '../../../src/trade/carcass/part';
import { l } from '../../length/write-figures';
import { at, opened } from '../../plan/laid-sample';

test('cutsAcross draws a rabbet at the top at the far end, one at the bottom at the near end', () => {
  const side = at(opened.entries).plan.parts.find((p) => p.id === 'case~left');
  if (!side) throw new Error('a side is wanted');
  const rabbet = (named: 'top' | 'bottom') => ({
    ...side.rabbets[0],
    id: named,
    along: { at: 'end', named },
    width: l('1/2'),
    depth: l('1/4'),
  });
  const part = {
    ...side,
    length: { ...side.length, sum: { ...side.length.sum, value: l('30') } },
    board: undefined,
    laps: [],
    notches: [{ id: 'n', near: l('4'), long: l('3/4'), deep: l('3/8') }],
    rabbets: [rabbet('top'), rabbet('bottom')],
  } as unknown as Part;
  expect(cutsAcross(part).map(({ id, near, width }) => [id, near, width])).toEqual([
    ['n', 4, 0.75],
    ['top', 29.5, 0.5],
    ['bottom', 0, 0.5],
  ]);
});
