import { expect, test } from 'vitest';
import { editCase, editJoin, editStock } from '../../src/job/edits';
import type { Change, Json } from '../../src/job/entry';
import { over, ratio } from '../../src/length/length';
import { toStored } from '../../src/length/stored';
import { joinPlace } from '../../src/plan/join-place';
import { slantsToBuy } from '../../src/plan/join-plan';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const edit = (path: string, value: Json): Change => ({ kind: 'edit', path, value });

/** 43 5/8 x 66 1/2 x 18 3/4 of 23/32, one partition, bottom and shelves butted, the top over the sides. */
const cabinet: readonly Change[] = [
  ...editStock('a', { name: 'Birch', planned: l('23/32') }),
  ...editCase('c', {
    name: 'Cabinet',
    width: l('43 5/8'),
    height: l('66 1/2'),
    depth: l('18 3/4'),
    feet: l('4'),
    partitions: 1,
    hasBack: false,
    bottomJoint: 'butt',
    topJoint: 'over',
    partitionJoint: 'butt',
    shelfJoint: 'butt',
    sideStock: 'a',
  }),
];

const shelf = (id: string, bay: number, at: string): readonly Change[] => [
  edit(`cases/c/inside/${id}/kind`, 'fixed'),
  edit(`cases/c/inside/${id}/bay`, bay),
  edit(`cases/c/inside/${id}/at`, toStored(l(at))),
];

const screws = ['1', '1 1/4', '1 1/2'].map(l);
const sized = { seat: l('21/32'), head: l('11/32') };

function placed(changes: readonly Change[], list = screws) {
  const { plan } = worked([...cabinet, ...changes], { screws: list });
  const join = plan.job.joins[plan.job.joins.length - 1];
  if (!join) throw new Error('no join');
  const cut = plan.operations.filter(({ which }) => which?.is === 'fasteners');
  return { plan, cut, ...joinPlace(plan, join, list) };
}
type At = NonNullable<Parameters<typeof editJoin>[1]['at']>;
const held = (at: At, patch = {}) => editJoin(`j${at}`, { by: 'slant', of: 'c', at, ...sized, ...patch });

test('a bottom held by slant screws is bored in its ends alone, under it, at its seat and its angle', () => {
  const { plan, cut, count, is } = placed(held('bottom'));
  expect(cut.map(({ id }) => id)).toEqual(['cut/c~bottom/slants~bottom/1']);
  const [op] = cut;
  expect(op).toMatchObject({
    what: 'bore',
    figure: l('21/32'),
    setup: { machine: 'slant', cutter: l('11/32'), sets: 'seat-back', on: { at: 'face', named: 'under' } },
    placing: { face: { named: 'under', lies: 'up' } },
  });
  // the collar is set to what was said: no remainder
  expect(w(op?.setup.figure?.rest ?? l('1'))).toBe('0');
  if (op?.which?.is !== 'fasteners') throw new Error('a row');
  const { slant, from, marks } = op.which.row;
  // leaves the end at half of 23/32; 21/32 x .9659 back; 23/64 / .2679 to the face
  expect(w(from)).toBe('23/64');
  expect([slant?.seatBack, slant?.meets]).toEqual([l('.633871875'), over(l('23/64'), ratio(2679n, 10_000n))]);
  expect(marks.map(w)).toEqual(['1 1/4', '6 2/3', '12 1/12', '17 1/2']);
  // 1 1/4 bites 19/32 x .9659 = .5735, under 23/32 - 1/8 = .59375; 1 1/2 would bite 27/32 x .9659 = .815
  expect(is?.by === 'slant' && is.found.ok && w(is.found.value.long)).toBe('1 1/4');
  // 4 in each of 2 joints, bought once, by the screw that does
  expect(count).toBe(8);
  expect(slantsToBuy(plan, screws).map(({ long, each }) => [w(long), each])).toEqual([['1 1/4', 8]]);
});

test('none on the shelf does: nothing is bored or bought, and each says what it misses', () => {
  // seat 5/8: 1 1/4 bites .6036875, .0099375 over .59375; 1 bites .3622125, .0127875 under 3/8
  const two = ['1', '1 1/4'].map(l);
  const { plan, cut, is } = placed(held('bottom', { seat: l('5/8') }), two);
  expect(is?.by === 'slant' && !is.found.ok && is.found.error).toMatchObject({
    code: 'none-fits',
    misses: [
      { long: l('1 1/4'), misses: 'mate', by: l('.0099375') },
      { long: l('1'), misses: 'bite', by: l('.0127875') },
    ],
  });
  expect([cut, slantsToBuy(plan, two)]).toEqual([[], []]);
  // no list of screws: that is asked for first
  const none = placed(held('bottom'), []);
  expect(none.is?.found).toMatchObject({ ok: false, error: { code: 'no-list' } });
  expect(none.cut).toEqual([]);
  // seat and head are read off the jig: until they are said, nothing
  const blank = placed(editJoin('j', { by: 'slant', of: 'c', at: 'bottom' }));
  expect([blank.missing, blank.cut]).toEqual([['seat', 'head'], []]);
});

test('sides under a top take them from inside the case, and a joint square is reckoned so whatever was said', () => {
  const { cut } = placed(held('top', { flush: true }));
  expect(cut.map(({ id, setup }) => [id, setup.on])).toEqual([
    ['cut/c~left/slants~top/1', { at: 'face', named: 'inside' }],
    ['cut/c~right/slants~top/1', { at: 'face', named: 'inside' }],
  ]);
});

test('the tips of shelves back to back on a partition would meet: by how much, and what would do', () => {
  // .573503125 from either face and 1/8 between is 1.27200625, .55325625 over 23/32; a head of 11/32 and a drift of
  // 19/32 x .2588 = .1536625 to both sides take .651075: 1/8 apart they want .526075 more
  const two = [...shelf('s1', 1, '20'), ...shelf('s2', 2, '20 1/8'), ...held('shelf')];
  const { meets, cut } = placed(two);
  const [fault] = meets?.faults ?? [];
  if (fault?.code !== 'holes-meet') throw new Error('tips meet');
  expect([fault.by, fault.move]).toEqual([l('.55325625'), l('.526075')]);
  expect(cut).toEqual([]);
  // 11/16 apart they clear: .6875
  expect(placed([...two, ...shelf('s2', 2, '20 11/16')]).cut).toHaveLength(2);
});
