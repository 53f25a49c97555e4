import { expect, test } from 'vitest';
import { editCase, editJoin, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { joinPlace, middlesOf } from '../../src/plan/join-place';
import { joinsToBuy, slantsToBuy } from '../../src/plan/join-plan';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const decided: readonly Change[] = [
  ...editStock('a', { name: 'Birch', planned: l('23/32') }),
  ...editCase('c', {
    name: 'Cabinet',
    width: l('43 5/8'),
    height: l('66 1/2'),
    depth: l('18 3/4'),
    sideStock: 'a',
    bottomStock: 'a',
    topStock: 'a',
  }),
];
const shelf = ['1', '1 1/4', '1 1/2', '2'].map(l);

const place = (patch: Parameters<typeof editJoin>[1]) => {
  const { plan } = worked([...decided, ...editJoin('j', { of: 'c', ...patch })]);
  const [join] = plan.job.joins;
  if (!join) throw new Error('one join');
  return { plan, ...joinPlace(plan, join, shelf) };
};

test('dowels of a case stand along its depth, in its own stuff, until otherwise said', () => {
  // 23/32 takes 23/96 to 23/64: 5/16; (18 3/4 - 2 1/2) / 6 goes up to 3 spaces: 4 in a joint
  const { is, count, missing, plan } = place({ by: 'dowel', many: 4 });
  expect(missing).toEqual([]);
  expect(is?.by === 'dowel' && is.found.ok && w(is.found.value.size.thick)).toBe('5/16');
  expect(is && middlesOf(is).map(w)).toEqual(['1 1/4', '6 2/3', '12 1/12', '17 1/2']);
  expect(count).toBe(16);
  const bought = joinsToBuy(plan);
  expect(bought.map(({ place, count }) => [place, count])).toEqual([['Cabinet', 16]]);
});

test('the one dowel on the shelf is taken where it is said, or refused with what would fit', () => {
  const { is } = place({ by: 'dowel', thick: l('3/8'), long: l('2') });
  expect(is?.found).toMatchObject({ ok: false, error: { code: 'no-dowel' } });
});

test('slant screws ask for seat and head, and are bought as screws', () => {
  expect(place({ by: 'slant' }).missing).toEqual(['seat', 'head']);
  // part and mate 3/4 and 1 3/4 in one plane: 1 1/2 (README of fasteners, example 3); 4 in a joint of 18 3/4
  const { is, plan } = place({
    by: 'slant',
    part: l('3/4'),
    mate: l('1 3/4'),
    seat: l('5/8'),
    head: l('11/32'),
    flush: true,
    many: 2,
  });
  expect(is?.by === 'slant' && is.found.ok && w(is.found.value.long)).toBe('1 1/2');
  expect(slantsToBuy(plan, shelf).map(({ long, each }) => [w(long), each])).toEqual([['1 1/2', 8]]);
  expect(joinsToBuy(plan)).toEqual([]);
});

test('biscuits that do not go are told with what each size lacks, and nothing is bought', () => {
  // 1/2 leaves 1/2 - 11/32 = 5/32 under #0 where 3/16 is asked
  const { is, count } = place({ by: 'biscuit', mate: l('1/2') });
  expect(is?.found.ok).toBe(false);
  expect(count).toBeUndefined();
});
