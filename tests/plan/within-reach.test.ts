import { expect, test } from 'vitest';
import type { Tape } from '../../src/length/tape';
import { withinReach, worst } from '../../src/plan/within-reach';
import { partsOf } from '../../src/trade/carcass/parts';
import { operationsOf } from '../../src/trade/setups/operations';
import { l } from '../length/write-figures';
import { plainCase, sheets } from '../trade/carcass/sample-case';

const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32' });
if (!worked.ok) throw new Error('no case');
const { parts } = worked.value;
const ops = operationsOf(
  { parts, cases: [plainCase], hand: [], recuts: () => ({}) },
  { shop: {}, tape: '1/32' },
);
const at = (id: string, reach: Parameters<typeof withinReach>[2], tape: Tape = '1/32') => {
  const op = ops.find((o) => o.id === id);
  return op && withinReach(op, { parts, job: { tape } }, reach);
};

const sled = { sledCross: l('22'), stopReach: l('32'), tableHeight: l('3') };
const sideLength = 'cut/c1~left/len/1';

test('a side 64 1/4 long is beyond a stop at 32, and goes to the circular saw where the shop has one', () => {
  const alone = at(sideLength, sled);
  expect(alone?.own.lacks).toEqual([{ code: 'short', field: 'stopReach', by: l('32 1/4') }]);
  expect(alone?.can).toBeUndefined();
  expect(alone?.remedies.length).toBeGreaterThan(0);
  const saw = { ...sled, circularDepth: l('2'), circularGuide: l('100') };
  expect(at(sideLength, saw)?.can?.tool).toBe('circular');
});

test('a cut within reach names no other machine, and a blank figure is asked', () => {
  const wide = { ...sled, stopReach: l('72'), tableBeside: l('36') };
  expect(at(sideLength, wide)).toMatchObject({ own: { lacks: [], asks: [] }, remedies: [] });
  expect(at(sideLength, {})?.own.asks.map((ask) => ask.field)).toEqual([
    'sledCross',
    'stopReach',
    'tableHeight',
    // half of it past the blade's table is not known either
    'tableBeside',
  ]);
});

test('a step at the bench wants nothing of a machine', () =>
  expect(at('cut/c1~bench/dryfit/1', sled)).toBeUndefined());

test('where none can, every machine of the shop says what it lacks, by how much', () => {
  const none = at(sideLength, {
    ...sled,
    slidingCross: l('12'),
    circularDepth: l('1/2'),
    circularGuide: l('100'),
  });
  expect(none?.can).toBeUndefined();
  // 17 1/2 − 12; 23/32 + 1/8 − 1/2 = 11/32
  expect(none?.passed.map(({ tool, lacks }) => [tool, lacks])).toEqual([
    ['sliding', [{ code: 'short', field: 'slidingCross', by: l('5 1/2') }]],
    ['circular', [{ code: 'short', field: 'circularDepth', by: l('11/32') }]],
  ]);
});

// 23/32 is 18.25625: 18.25625 + 3 − 12.7 = 8.55625. Common practice, no source.
test('in a metric shop a saw stands 3 mm through, as its card says', () => {
  const low = { ...sled, circularDepth: l('12.7 mm'), circularGuide: l('100') };
  const found = at(sideLength, low, '1 mm')?.passed.find(({ tool }) => tool === 'circular');
  expect(found?.lacks).toEqual([{ code: 'short', field: 'circularDepth', by: l('8.55625 mm') }]);
});

test('a side that hangs over by more than half is said to: 64 1/4 − 24 = 40 1/4', () =>
  expect(at(sideLength, { ...sled, stopReach: l('72'), tableBeside: l('24') })?.hangs).toEqual({
    over: 'beside',
    by: l('40 1/4'),
  }));

test('of several pieces the one is named that falls shortest of each least size', () => {
  const under = (by: string) => ({ code: 'push-block', by: l(by), least: l('6') }) as const;
  expect(worst([under('1'), under('3'), under('2')])).toEqual([under('3')]);
});
