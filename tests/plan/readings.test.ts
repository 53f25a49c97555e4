import { describe, expect, test } from 'vitest';
import { editCase, editReading, editSheet, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { stuffOf } from '../../src/plan/parts-of-job';
import { layOp } from '../../src/plan/progress';
import { isCutOf, readingsFrom, readingTaken } from '../../src/plan/readings';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const decided: readonly Change[] = [
  ...editStock('a', { name: 'Birch', planned: l('3/4') }),
  ...editStock('b', { name: 'Oak', planned: l('3/4') }),
  ...editCase('c', {
    width: l('30'),
    height: l('48'),
    depth: l('11 1/4'),
    sideStock: 'a',
    bottomStock: 'b',
    topStock: 'b',
  }),
];

/** The job after readings of a stock, taken one by one as the page takes them; what else was done before each. */
function reading(
  stock: string,
  takes: readonly { readonly id: string; readonly size?: string; readonly before?: readonly Change[] }[],
) {
  let log = decided;
  for (const { id, size, before = [] } of takes) {
    log = [...log, ...before];
    const { plan, folded, job } = worked(log);
    const own = job.stock.find((s) => s.id === stock);
    if (!own) throw new Error(stock);
    log = [
      ...log,
      ...readingTaken(own, { id, size: size ? l(size) : undefined }, isCutOf(stock, plan, folded)),
    ];
  }
  return worked(log);
}

const thickness = ({ job }: ReturnType<typeof worked>, stock: string) => {
  const own = job.stock.find((s) => s.id === stock);
  const [stuff] = own ? stuffOf(own) : [];
  return stuff && `${w(stuff.thickness)}${stuff.measured ? '' : ' planned'}`;
};

const four = ['.708', '.714', '.711', '.709'].map((size, k) => ({ id: `r${k}`, size }));

describe('readingTaken', () => {
  test('while nothing is cut the greatest of .708 .714 .711 .709 is in use, with no tap', () => {
    expect(thickness(reading('a', four.slice(0, 1)), 'a')).toBe('177/250');
    expect(thickness(reading('a', four), 'a')).toBe('357/500');
    expect(thickness(reading('b', []), 'b')).toBe('3/4 planned');
  });

  test('a reading put right, or taken away, is followed too', () => {
    expect(thickness(reading('a', [...four, { id: 'r1', size: '.712' }]), 'a')).toBe('89/125');
    expect(thickness(reading('a', [...four, { id: 'r1' }]), 'a')).toBe('711/1000');
    expect(thickness(reading('b', [...four.slice(0, 1), { id: 'r0' }]), 'b')).toBe('3/4 planned');
  });

  test('once a part of it is cut what is in use stays, whatever is read, until it is taken up', () => {
    const cut = tickOf('cut/c~left/rip/1', l('11 1/4'));
    const late = reading('a', [
      { id: 'r0', size: '.708' },
      { id: 'r1', size: '.714', before: cut },
    ]);
    expect(thickness(late, 'a')).toBe('177/250');
    const put = reading('a', [
      { id: 'r0', size: '.714' },
      { id: 'r0', size: '.708', before: cut },
    ]);
    expect(thickness(put, 'a')).toBe('357/500');
    const planned = reading('b', [{ id: 'r0', size: '.708', before: tickOf('cut/c~bottom/rip/1', l('11')) }]);
    expect(thickness(planned, 'b')).toBe('3/4 planned');
    const taken = worked([
      ...decided,
      ...editStock('a', { readings: [l('.708'), l('.714')], used: l('.714') }),
    ]);
    expect(thickness(taken, 'a')).toBe('357/500');
  });

  test('a sheet cut down of it counts; a part of another stuff, and the scrap of a test cut, do not', () => {
    const isCut = (...changes: readonly Change[]) => {
      const { plan, folded } = worked([...decided, ...editStock('a', { used: l('.7') }), ...changes]);
      return isCutOf('a', plan, folded);
    };
    const sheet = editSheet('s1', {
      stock: 'a',
      no: 1,
      long: l('96'),
      wide: l('48'),
      kerf: l('1/8'),
      tree: { is: 'cut', way: 'cross', at: l('50'), near: { is: 'left' }, far: { is: 'left' } },
    });
    const other = tickOf('cut/c~bottom/rip/1', l('11'));
    expect(isCut(...sheet, ...other, ...tickOf('cut/test/x/1', l('1/2')))).toBe(false);
    expect(isCut(...sheet, ...tickOf(layOp('s1', 'r'), l('50')))).toBe(true);
    expect(isCut(...tickOf('cut/c~left/len/1', l('48')))).toBe(true);
  });
});

describe('stuffOf', () => {
  test('an old job opens as it was kept: the reading taken up, however the others read', () => {
    const { job } = worked(editStock('a', { readings: [l('.708'), l('.714')], used: l('.708') }));
    expect(job.stock.flatMap(stuffOf).map((s) => w(s.thickness))).toEqual(['177/250']);
  });
});

test('readings of another job are in use here like readings of one’s own, and its size where none is said', () => {
  const other = worked([
    ...editStock('z', { name: 'Left over', long: l('60'), wide: l('48') }),
    ...four.flatMap(({ id, size }) => editReading('z', id, { size: l(size) })),
  ]).job.stock[0];
  const before = worked([...decided, ...editStock('a', { long: l('96') })]);
  const [own] = before.job.stock;
  if (!own || !other) throw new Error('two sheets');
  const ids = ['n1', 'n2', 'n3', 'n4', 'n5', 'n6', 'n7', 'n8'];
  const newId = () => ids.pop() ?? '';
  const after = worked([
    ...decided,
    ...editStock('a', { long: l('96') }),
    ...readingsFrom(own, other, { cut: false, newId }),
  ]);
  const [sheet] = after.job.stock;
  expect(thickness(after, 'a')).toBe('357/500'); // the greatest of .708, .714, .711, .709
  expect(sheet?.readings.length).toBe(4);
  expect([sheet?.long && w(sheet.long), sheet?.wide && w(sheet.wide)]).toEqual(['96', '48']);
  // once something of it is cut they wait to be taken up, as any reading does
  const late = worked([...decided, ...readingsFrom(own, other, { cut: true, newId })]);
  expect(thickness(late, 'a')).toBe('3/4 planned');
});
