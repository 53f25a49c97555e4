import { expect, test } from 'vitest';
import { editCase, editHandJoint, editJoin, editPart, editStock } from '../../src/job/edits';
import type { Change, Json } from '../../src/job/entry';
import { toStored } from '../../src/length/stored';
import { joinPlace } from '../../src/plan/join-place';
import { joinsToBuy } from '../../src/plan/join-plan';
import { withinReach } from '../../src/plan/within-reach';
import type { OwnMachine, Shop } from '../../src/trade/machines/shop';
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

const shelf = (id: string, bay: number, at: string): readonly Change[] => [
  edit(`cases/c/inside/${id}/kind`, 'fixed'),
  edit(`cases/c/inside/${id}/bay`, bay),
  edit(`cases/c/inside/${id}/at`, toStored(l(at))),
];

type At = NonNullable<Parameters<typeof editJoin>[1]['at']>;
const held = (at: At, patch: Parameters<typeof editJoin>[1] = {}) =>
  editJoin(`j${at}`, { by: 'biscuit', of: 'c', at, ...patch });

function placed(changes: readonly Change[], shop: Shop = {}) {
  const { plan } = worked(changes, shop);
  const join = plan.job.joins[plan.job.joins.length - 1];
  if (!join) throw new Error('no join');
  const cut = plan.operations
    .filter(({ which }) => which?.is === 'fasteners')
    .map(
      ({ id, setup }) => `${id.slice(4)} ${w(setup.figure?.value ?? l('0'))} ${w(setup.height ?? l('0'))}`,
    );
  return { plan, cut, ...joinPlace(plan, join, []) };
}

test('a bottom held by biscuits is slotted in both ends and in both sides, at one line', () => {
  // #20 wants 15/32 + 1/32 = 1/2 and leaves 7/32 of 23/32; half of that off the under face: 23/64, in the sides 4 up
  const { plan, cut, count } = placed([...cabinet(), ...held('bottom')]);
  expect(cut).toEqual([
    'c~left/slots~bottom/1 4 23/64 1/2',
    'c~right/slots~bottom/1 4 23/64 1/2',
    'c~bottom/slots~bottom/1 23/64 1/2',
  ]);
  const op = plan.byId.get('cut/c~bottom/slots~bottom/1');
  expect(op).toMatchObject({ what: 'slot', setup: { machine: 'plate', on: { at: 'face', named: 'under' } } });
  expect(op?.placing).toEqual({ face: { named: 'under', lies: 'up' } });
  expect(op?.which).toMatchObject({
    row: { biscuit: '20', thick: l('5/32'), in: { named: ['left', 'right'], off: 'under' } },
  });
  // the first at 2, the last 2 from 18 3/4
  expect(op?.row && [w(op.row.first), w(op.row.last)]).toEqual(['2', '16 3/4']);
  // (18 3/4 - 4) / 6 goes up to 3 spaces: 4 in each of 2 joints, once
  expect(count).toBe(8);
  expect(joinsToBuy(plan)).toMatchObject([{ count: 8, is: '20' }]);
  // so many joints as the case has, whatever was once said by hand
  expect(placed([...cabinet(), ...held('bottom', { many: 3 })]).count).toBe(8);
  // what stands up is dry-fitted once it is slotted
  const dry = plan.operations.find(({ what }) => what === 'dry-fit');
  expect(dry?.after).toContain('cut/c~left/slots~bottom/1');
});

test('where the joiner’s base gives the middle it is said, and a biscuit that lacks wood beside it is not taken', () => {
  // 3/8 off the under face, 4 3/8 up the sides; 23/32 - 3/8 - 5/64 = 17/64 beside
  const { cut } = placed([...cabinet(), ...held('bottom', { from: l('3/8') })]);
  expect(cut[0]).toBe('c~left/slots~bottom/1 4 3/8 1/2');
  expect(cut[2]).toBe('c~bottom/slots~bottom/1 3/8 1/2');
  // 1/4 leaves 1/4 - 5/64 = 11/64, 1/64 less than 3/16: of any size
  const { cut: none, is, count } = placed([...cabinet(), ...held('bottom', { from: l('1/4') })]);
  expect(is?.by === 'biscuit' && !is.found.ok && is.found.error).toMatchObject({
    code: 'no-biscuit',
    lacks: ['20', '10', '0'].map((no) => ({ no, lacks: 'beside', by: l('1/64') })),
  });
  expect([none, count]).toEqual([[], undefined]);
});

test('shelves back to back on a partition are refused by how much, and what would do', () => {
  // 1/2 from either face and 1/8 between is 1 1/8, 13/32 over 23/32; 5/32 thick, 1/8 apart they want 1/32 more
  const two = [...cabinet(), ...shelf('s1', 1, '20'), ...shelf('s2', 2, '20 1/8'), ...held('shelf')];
  const { meets, cut, plan } = placed(two);
  const [fault] = meets?.faults ?? [];
  if (fault?.code !== 'holes-meet') throw new Error('slots meet');
  expect([w(fault.by), w(fault.move)]).toEqual(['13/32', '1/32']);
  expect([cut, joinsToBuy(plan)]).toEqual([[], []]);
  expect(placed([...two, ...shelf('s2', 2, '20 5/32')]).cut).toHaveLength(6);
});

test('a slot that comes into a lap of its part is refused by how much, and clears it moved so far', () => {
  // its middle 4 23/64 up the side, 5/32 thick: to 4 7/16; a lap from 4 3/8 up is 1/16 into it
  const lap = editHandJoint('h', {
    part: 'c~left',
    kind: 'lap',
    at: 'end',
    near: l('4 3/8'),
    width: l('1'),
    depth: l('3/8'),
  });
  const { meets, cut } = placed([...cabinet(), ...lap, ...held('bottom')]);
  const [fault] = meets?.faults ?? [];
  expect(fault).toMatchObject({ code: 'in-cut', cut: 'lap', way: 'along', on: { role: 'left' } });
  expect(fault?.code === 'in-cut' && w(fault.by)).toBe('1/16');
  expect(cut).toEqual([]);
});

test('what holds a shelf may not come into what holds its partition: the one set out last is told', () => {
  // dowels 1 1/16 up the partition; a slot 3/4 + 23/64 up it begins 5/64 lower, at 1 1/32: 1/32 into them
  const both = [
    ...cabinet(),
    ...shelf('s1', 1, '3/4'),
    ...editJoin('jpartition', { by: 'dowel', of: 'c', at: 'partition' }),
    ...held('shelf', { most: l('4') }),
  ];
  // the first dowel at 1 1/4, the first slot at 2 and 1 3/8 to either side
  const { meets, cut } = placed(both);
  const [fault] = meets?.faults ?? [];
  expect(fault).toMatchObject({ code: 'in-cut', cut: 'fastener', way: 'along', on: { role: 'partition' } });
  expect(fault?.code === 'in-cut' && w(fault.by)).toBe('1/32');
  expect(cut.map((one) => one.split(' ')[0])).toEqual([
    'c~bottom/dowels~p1/1',
    'c~top/dowels~p1/1',
    'c~partition1/dowels~partition/1',
  ]);
  // 25/32 up it clears them
  expect(placed([...both, ...shelf('s1', 1, '25/32')]).meets?.faults).toEqual([]);
});

test('a plate joiner is held against its figures, the shop’s or one of its own; a blank one is asked', () => {
  const slotted = [...cabinet(), ...held('bottom')];
  const found = (shop: Shop, id: string, more: readonly Change[] = []) => {
    const { plan } = worked([...slotted, ...more], shop);
    const op = plan.byId.get(`cut/${id}/slots~bottom/1`);
    if (!op) throw new Error('a slot');
    const { own } = withinReach(op, plan, shop) ?? {};
    const lacks = own?.lacks.map((lack) => (lack.code === 'short' ? `${lack.field} ${w(lack.by)}` : ''));
    return { lacks, asks: own?.asks.map(({ field, wants }) => `${field} ${w(wants)}`), own: op.setup.own };
  };
  // 1/2 deep in both; 23/64 in the end alone, for over a face it stands against a straightedge
  expect(found({}, 'c~bottom').asks).toEqual(['plateDeep 1/2', 'plateFence 23/64']);
  expect(found({}, 'c~left').asks).toEqual(['plateDeep 1/2', 'plateBase 4 23/64']);
  // 1/2 - 7/16, 23/64 - 1/4
  const short = { plateDeep: l('7/16'), plateFence: l('1/4') };
  expect(found(short, 'c~bottom').lacks).toEqual(['plateDeep 1/16', 'plateFence 7/64']);
  expect(found(short, 'c~left').lacks).toEqual(['plateDeep 1/16']);
  const own: OwnMachine = {
    id: 'own1',
    name: 'Joiner',
    like: 'plate',
    figures: { plateDeep: l('3/4'), plateFence: l('1 1/4'), plateBase: l('3/8') },
  };
  const chosen = editPart('c~bottom', { slotBy: 'own1' });
  expect(found({ ...short, own: [own] }, 'c~bottom', chosen)).toEqual({
    lacks: [],
    asks: [],
    own: { id: 'own1', name: 'Joiner', like: 'plate' },
  });
  // in an order said it takes what the other is short of, without a word
  expect(found({ ...short, own: [own], order: ['plate', 'own1'] }, 'c~left').own?.id).toBe('own1');
});
