import { expect, test } from 'vitest';
import { inches, zero } from '../../../src/length/length';
import { moveTo } from '../../../src/screens/shared/move-cut';
import { partsOf } from '../../../src/trade/carcass/parts';
import { operationsOf } from '../../../src/trade/setups/operations';
import { plainCase, sheets } from '../../trade/carcass/sample-case';

const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32' });
if (!worked.ok) throw new Error('no case');
const ops = operationsOf(
  { parts: worked.value.parts, cases: [plainCase], hand: [], recuts: () => ({}) },
  { shop: {}, tape: '1/32' },
);
const of = (...ids: readonly string[]) => ops.filter(({ id }) => ids.includes(id));
const told = (changes: ReturnType<typeof moveTo>) =>
  changes.map((change) => (change.kind === 'edit' ? [change.path, change.value] : []));

test('a rip and a length are moved with their parts, a groove with its board', () => {
  expect(told(moveTo(of('cut/c1~left/rip/1', 'cut/c1~right/rip/1'), 'circular'))).toEqual([
    ['parts/c1~left/ripOn', 'saw'],
    ['parts/c1~left/ripBy', null],
    ['parts/c1~right/ripOn', 'saw'],
    ['parts/c1~right/ripBy', null],
  ]);
  expect(told(moveTo(of('cut/c1~left/len/1'), 'sliding'))).toEqual([
    ['parts/c1~left/lengthOn', 'slidingcut'],
    ['parts/c1~left/lengthBy', null],
  ]);
  expect(told(moveTo(of('cut/c1~left/bottom~only/1'), 'router'))).toEqual([
    ['parts/c1~left/machine', 'router'],
    ['parts/c1~left/by', null],
  ]);
});

test('a tool that does not make the cut moves nothing; taken back, a choice is gone', () => {
  expect(moveTo(of('cut/c1~left/rip/1'), 'router')).toEqual([]);
  expect(told(moveTo(of('cut/c1~left/rip/1'), undefined))).toEqual([
    ['parts/c1~left/ripOn', null],
    ['parts/c1~left/ripBy', null],
  ]);
});

test('on a machine of the shop’s own a cut is named by what that works like, and by its id; its name goes along', () => {
  const old = { id: 'own1', name: 'Old saw', like: 'fence', figures: {} } as const;
  expect(told(moveTo(of('cut/c1~left/rip/1'), old))).toEqual([
    ['parts/c1~left/ripOn', 'rip'],
    ['parts/c1~left/ripBy', 'own1'],
    ['machines/own1/name', 'Old saw'],
  ]);
  // a rip fence cuts nothing to length
  expect(moveTo(of('cut/c1~left/len/1'), old)).toEqual([]);
});

test('a joint is moved with its part, named by the machine alone; on that of every shop it says so', () => {
  const old = { id: 'own1', name: 'Old saw', like: 'fence', figures: {} } as const;
  const rabbet = of('cut/c1~left/rabbet~back/1');
  expect(told(moveTo(rabbet, old))).toEqual([
    ['parts/c1~left/edgeBy', 'own1'],
    ['machines/own1/name', 'Old saw'],
  ]);
  expect(told(moveTo(rabbet, 'fence'))).toEqual([['parts/c1~left/edgeBy', 'usual']]);
  expect(told(moveTo(rabbet, undefined))).toEqual([['parts/c1~left/edgeBy', null]]);
});

test('a groove that runs through is put on a router table apart from what is said of the part; a lap on a sliding saw', () => {
  const table = { id: 'own2', name: 'Router table', like: 'table', figures: {} } as const;
  const [rabbet] = of('cut/c1~left/rabbet~back/1');
  if (!rabbet) throw new Error('a rabbet is wanted');
  const along = [{ ...rabbet, what: 'along' } as const];
  expect(told(moveTo(along, table))).toEqual([
    ['parts/c1~left/alongBy', 'own2'],
    ['machines/own2/name', 'Router table'],
  ]);
  expect(told(moveTo(along, 'fence'))).toEqual([
    ['parts/c1~left/alongBy', null],
    ['parts/c1~left/edgeBy', 'usual'],
  ]);
  const stopped = {
    is: 'takes',
    takes: { part: 'bottom' },
    stopped: { from: zero, to: inches(9n), end: 'bottom' },
  } as const;
  expect(told(moveTo([{ ...rabbet, what: 'along', which: stopped }], table))).toEqual([
    ['parts/c1~left/edgeBy', 'own2'],
    ['machines/own2/name', 'Router table'],
  ]);
  const lap = [{ ...rabbet, what: 'lap' } as const];
  expect(told(moveTo(lap, 'sliding'))).toEqual([['parts/c1~left/shoulderBy', 'sliding']]);
  expect(told(moveTo(lap, 'sled'))).toEqual([['parts/c1~left/shoulderBy', 'usual']]);
});
