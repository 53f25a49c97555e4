import { expect, test } from 'vitest';
import { editCase, editJob, editJoin, editStock } from '../../src/job/edits';
import type { Change, Json } from '../../src/job/entry';
import { fromMillimetres } from '../../src/length/length';
import { toStored } from '../../src/length/stored';
import { joinPlace } from '../../src/plan/join-place';
import { joinsToBuy } from '../../src/plan/join-plan';
import type { Operation } from '../../src/trade/setups/operation';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const edit = (path: string, value: Json): Change => ({ kind: 'edit', path, value });

/** 43 5/8 x 66 1/2 x 18 3/4 of 23/32, 4 off the floor, one partition, the top over the sides by 1/2. */
const cabinet = (patch: Parameters<typeof editCase>[1] = {}): readonly Change[] => [
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
    topPast: l('1/2'),
    partitionJoint: 'butt',
    shelfJoint: 'butt',
    sideStock: 'a',
    ...patch,
  }),
];

/** A fixed shelf so high over the bottom, in that bay. */
const shelf = (id: string, bay: number, at: string): readonly Change[] => [
  edit(`cases/c/inside/${id}/kind`, 'fixed'),
  edit(`cases/c/inside/${id}/bay`, bay),
  edit(`cases/c/inside/${id}/at`, toStored(l(at))),
];

type At = NonNullable<Parameters<typeof editJoin>[1]['at']>;
const held = (at: At, patch: Parameters<typeof editJoin>[1] = {}) =>
  editJoin(`j${at}`, { by: 'dowel', of: 'c', at, ...patch });

const bored = (operations: readonly Operation[]) =>
  operations
    .filter(({ which }) => which?.is === 'fasteners')
    .map(
      ({ id, setup }) => `${id.slice(4)} ${w(setup.figure?.value ?? l('0'))} ${w(setup.height ?? l('0'))}`,
    );

/** What a join of a meeting comes to. */
function placed(changes: readonly Change[]) {
  const { plan } = worked(changes);
  const [join] = plan.job.joins;
  if (!join) throw new Error('one join');
  return { plan, ...joinPlace(plan, join, []) };
}

test('a top under the ends of the sides is bored off its under face, the sides from their lower ends', () => {
  // clear 66 1/2 − 2 − 4 − 1 7/16 = 59 1/16; its under face 4 23/32 + 59 1/16 = 63 25/32 up, and 23/64
  const low = { topJoint: 'butt', sidePast: l('2') } as const;
  const { plan } = placed([...cabinet(low), ...held('top')]);
  expect(bored(plan.operations)).toEqual([
    'c~left/dowels~top/1 64 9/64 9/16',
    'c~right/dowels~top/1 64 9/64 9/16',
    'c~top/dowels~top/1 23/64 1 1/16',
  ]);
  // at their ends off its upper face, the sides from their upper ends
  const flush = placed([...cabinet({ topJoint: 'butt' }), ...held('top')]);
  expect(bored(flush.plan.operations)[0]).toBe('c~left/dowels~top/1 23/64 9/16');
});

test('a bottom held by dowels is bored in both ends and in both sides, at one line', () => {
  // half of 23/32 off its under face; in the sides that face stands 4 up: 4 + 23/64. 1/2 + 1/16 deep in a face
  const { plan, count, usual } = placed([...cabinet(), ...held('bottom')]);
  expect(bored(plan.operations)).toEqual([
    'c~left/dowels~bottom/1 4 23/64 9/16',
    'c~right/dowels~bottom/1 4 23/64 9/16',
    'c~bottom/dowels~bottom/1 23/64 1 1/16',
  ]);
  const op = plan.byId.get('cut/c~bottom/dowels~bottom/1');
  expect(op?.which).toMatchObject({
    is: 'fasteners',
    row: { in: { named: ['left', 'right'], off: 'under' } },
  });
  // 6 2/3 and 12 1/12 between the first and the last, whose marks are these
  expect(op?.row && [w(op.row.first), w(op.row.last)]).toEqual(['1 1/4', '17 1/2']);
  expect(op?.after).toEqual(['cut/c~bottom/len/1']);
  expect([usual.part, usual.mate, usual.run].map((x) => x && w(x))).toEqual(['23/32', '23/32', '18 3/4']);
  // 4 in each of 2 joints, once
  expect(count).toBe(8);
  expect(joinsToBuy(plan).map((one) => one.count)).toEqual([8]);
  // what stands up is dry-fitted once it is bored
  const dry = plan.operations.find(({ what }) => what === 'dry-fit');
  expect(dry?.after).toContain('cut/c~left/dowels~bottom/1');
});

test('sides under a top are bored in their ends, and the top in its under face, past them', () => {
  // 1/2 past the side and 23/64 into its thickness: 55/64 from either end
  const { plan, count } = placed([...cabinet(), ...held('top')]);
  expect(bored(plan.operations)).toEqual([
    'c~left/dowels~top/1 23/64 1 1/16',
    'c~right/dowels~top/1 23/64 1 1/16',
    'c~top/dowels~left/1 55/64 9/16',
    'c~top/dowels~right/1 55/64 9/16',
  ]);
  expect(plan.byId.get('cut/c~top/dowels~right/1')?.setup.on).toEqual({ at: 'end', named: 'right' });
  expect(count).toBe(8);
});

test('a partition is bored at its left face, bottom and top each from its own left end', () => {
  // a bay is (43 5/8 - 3 x 23/32) / 2 = 20 47/64; the bottom begins there: + 23/64 = 21 3/32; the top 1 7/32 before
  const { plan, count } = placed([...cabinet(), ...held('partition')]);
  expect(bored(plan.operations)).toEqual([
    'c~bottom/dowels~p1/1 21 3/32 9/16',
    'c~top/dowels~p1/1 22 5/16 9/16',
    'c~partition1/dowels~partition/1 23/64 1 1/16',
  ]);
  expect(count).toBe(8);
});

test('a shelf is bored at its under face, each wall from its own lower end', () => {
  // 20 over a bottom of 23/32 that is 4 up: 24 23/32 + 23/64 = 25 5/64; a partition stands on the bottom: 20 23/64
  const { plan, count } = placed([...cabinet(), ...shelf('s1', 1, '20'), ...held('shelf')]);
  expect(bored(plan.operations)).toEqual([
    'c~left/dowels~s1/1 25 5/64 9/16',
    'c~partition1/dowels~s1/1 20 23/64 9/16',
    'c~s1/dowels~shelf/1 23/64 1 1/16',
  ]);
  expect(plan.byId.get('cut/c~partition1/dowels~s1/1')?.name).toMatchObject({ copy: 'A' });
  expect(count).toBe(8);
});

test('shelves back to back on a partition are refused by how much, and what would do', () => {
  // 9/16 from either face and 1/8 between is 1 1/4, 17/32 over 23/32; 5/16 thick: 1/8 apart they want 3/16 more
  const two = [...cabinet(), ...shelf('s1', 1, '20'), ...shelf('s2', 2, '20 1/8'), ...held('shelf')];
  const { plan, meets, count } = placed(two);
  const [fault] = meets?.faults ?? [];
  if (fault?.code !== 'holes-meet') throw new Error('holes meet');
  expect([w(fault.by), w(fault.move)]).toEqual(['17/32', '3/16']);
  expect(bored(plan.operations)).toEqual([]);
  expect(count).toBeUndefined();
  expect(joinsToBuy(plan)).toEqual([]);
  const clear = placed([...two, ...shelf('s2', 2, '20 5/16')]);
  expect(clear.meets?.faults).toEqual([]);
  expect(bored(clear.plan.operations)).toHaveLength(6);
});

test('in a metric shop the holes of two faces leave 3 between them, and dowels are 8 by 40', () => {
  // a third of 40 and 1.5 from either face and 3 between is 32 2/3, 14 2/3 over 18; 3 apart they want 5 more
  const metric = [...editJob({ tape: '1 mm' }), ...cabinet(), ...editStock('a', { planned: l('18 mm') })];
  const two = [...shelf('s1', 1, '500 mm'), ...shelf('s2', 2, '503 mm'), ...held('shelf')];
  const [fault] = placed([...metric, ...two]).meets?.faults ?? [];
  if (fault?.code !== 'holes-meet') throw new Error('holes meet');
  expect([fault.by, fault.move]).toEqual([fromMillimetres(44n, 3n), l('5 mm')]);
});

test('with the back in a rabbet dowels stay in front of it, and a joint said longer is refused', () => {
  // a back rabbet 1/2 wide leaves 18 1/4: 17 at its last dowel
  const backed = cabinet({ hasBack: true, backWide: l('1/2'), backStock: 'a' });
  const { usual, plan } = placed([...backed, ...held('bottom')]);
  expect(usual.run && w(usual.run)).toBe('18 1/4');
  const op = plan.byId.get('cut/c~left/dowels~bottom/1');
  expect(op?.row && w(op.row.last)).toBe('17');
  const long = placed([...backed, ...held('bottom', { run: l('18 3/4') })]);
  expect(long.meets?.faults.map(({ code }) => code)).toEqual(['off-the-joint']);
  expect(bored(long.plan.operations)).toEqual([]);
  // shorter is as said: 12 - 1 1/4
  const short = placed([...backed, ...held('bottom', { run: l('12') })]).plan;
  expect(w(short.byId.get('cut/c~left/dowels~bottom/1')?.row?.last ?? l('0'))).toBe('10 3/4');
});

test('what is not butted any more is neither bored nor bought; held twice, the second is told', () => {
  const dadoed = placed([...cabinet({ bottomJoint: 'dado' }), ...held('bottom')]);
  expect([dadoed.meets?.ends.length, dadoed.missing.length, dadoed.count]).toEqual([0, 0, undefined]);
  expect(bored(dadoed.plan.operations)).toEqual([]);
  const { plan } = worked([...cabinet(), ...held('bottom'), ...editJoin('k', { of: 'c', at: 'bottom' })]);
  const faults = plan.job.joins.map((join) =>
    joinPlace(plan, join, []).meets?.faults.map(({ code }) => code),
  );
  expect(faults).toEqual([[], ['twice']]);
  expect(joinsToBuy(plan).map(({ count }) => count)).toEqual([8]);
  expect(bored(plan.operations)).toHaveLength(3);
});

test('one end butted, the other in a dado: the one is bored', () => {
  const { plan, count } = placed([...cabinet({ bottomRightJoint: 'dado' }), ...held('bottom')]);
  expect(bored(plan.operations).map((op) => op.split(' ')[0])).toEqual([
    'c~left/dowels~bottom/1',
    'c~bottom/dowels~bottom/1',
  ]);
  const op = plan.byId.get('cut/c~bottom/dowels~bottom/1');
  expect(op?.which).toMatchObject({ row: { in: { named: ['left'] } } });
  expect(count).toBe(4);
});

test('a hole that would come into a groove for strips is refused by how much', () => {
  // grooves 3/4 + 1/32 wide, 1 in from the front and from the back: 1 to 1 25/32, and 16 31/32 to 17 3/4; holes 5/16
  // wide at 1 1/4 and at 17 1/2 lie wholly in them
  const strips: readonly Change[] = [
    edit('cases/c/inside/s1/kind', 'loose'),
    edit('cases/c/inside/s1/bay', 1),
    edit('cases/c/inside/s1/heldBy', 'strips'),
    ...Object.entries({ width: '3/4', depth: '1/4', stripThick: '3/16', front: '1', behind: '1' }).map(
      ([field, said]) => edit(`cases/c/inside/s1/${field}`, toStored(l(said))),
    ),
  ];
  const { plan, meets } = placed([...cabinet(), ...strips, ...held('bottom')]);
  const faults = meets?.faults.map((fault) => (fault.code === 'in-groove' ? w(fault.by) : fault.code));
  expect(faults).toEqual(['5/16', '5/16']);
  expect(bored(plan.operations)).toEqual([]);
  // 2 3/8 - 5/32 = 2 7/32 from either end is clear of them: 16 17/32 + 5/32 = 16 11/16
  const clear = placed([...cabinet(), ...strips, ...held('bottom', { end: l('2 7/32') })]);
  expect(clear.meets?.faults).toEqual([]);
  expect(bored(clear.plan.operations)).toHaveLength(3);
});
