import { describe, expect, test } from 'vitest';
import { editBoxJoint } from '../../../src/job/box-joint';
import type { Entry } from '../../../src/job/entry';
import { jobOf } from '../../../src/job/job';
import * as words from '../../../src/screens/double/words';
import type { Corner } from '../../../src/trade/fronts/corner';
import { l } from '../../trade/grooves/sample';

const job = jobOf(
  'j',
  new Map([
    ['stock/birch/name', 'Birch'],
    ['boards/b/name', 'Shell shelf'],
  ]),
);
const about = (place: string) => words.aboutPlace(place, { job, plan: undefined });

describe('what a reading is about', () => {
  test.each([
    ['stock/birch/planned', 'Birch', 'thickness planned'],
    ['stock/birch/readings/r2/size', 'Birch', 'readings 2, thickness'],
    ['boards/b/runs/r3/width', 'Shell shelf', 'groove run 3, width'],
    ['boards/unknown/length', 'Board', 'length'],
    ['cases/c/inside/s/stripSold', 'Case', 'in a bay, how long a strip is as sold'],
    ['cases/c/shelfedgeStock', 'Case', 'what the shelf edging is of'],
    ['name', 'This job', 'name'],
    ['cut/b/no1', 'Shell shelf', 'cut to'],
    ['banks/d/corner/finger/size', 'Drawers', 'width of a finger'],
    ['banks/d/corner/joint/how', 'Drawers', 'how box front and sides are joined'],
  ])('%s', (place, thing, what) => expect(about(place)).toEqual({ thing, what }));
});

test('every figure of a joint of drawers is called by its own name', () => {
  const whole: Required<Corner> = {
    boxJoint: 'butted',
    frontRabbet: l('3/8'),
    fingers: 'any',
    finger: l('1/2'),
    fingerStep: l('1'),
    fingerPlay: l('.003'),
    frontAt: 'between',
    frontIs: 'box',
    dowel: l('1/4'),
    dowelLong: l('1 1/2'),
  };
  const called = editBoxJoint('d', whole).map((change) => about('path' in change ? change.path : '').what);
  expect(new Set(called).size).toBe(10);
  expect(called.filter((what) => /thickness|corner/.test(what))).toEqual([]);
});

describe('who wrote it', () => {
  const of = (device: string): Entry => ({
    ...{ job: 'j', device, count: 1, at: '2026-11-02T08:30:00.000Z', act: `${device}.1`, label: 'Reading' },
    ...{ kind: 'edit', path: 'stock/birch/planned', value: '3/4' },
  });
  const own = (name: string) => name === 'mine';
  const between = (...names: readonly string[]) => [{ place: 'p', readings: names.map(of) }];

  test('this phone, or the other', () => {
    expect(words.whoWrote(of('mine'), own, between('mine', 'anna'))).toBe('this phone');
    expect(words.whoWrote(of('anna'), own, between('mine', 'anna'))).toBe('the other phone');
  });

  test('several others are told apart by a number', () =>
    expect(words.whoWrote(of('ben'), own, between('mine', 'ben', 'anna'))).toBe('another phone, no. 2'));
});

test('the act of picking fits the log, however long the names are', () => {
  expect(words.pickedAs({ thing: 'Birch', what: 'length' })).toBe('Picked: Birch, length');
  expect(words.pickedAs({ thing: 'x'.repeat(300), what: 'length' })).toHaveLength(200);
});
