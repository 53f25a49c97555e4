import { describe, expect, test } from 'vitest';
import { boardFields } from '../../../src/job/fields';
import { workFields } from '../../../src/job/hand-fields';
import { inches, subtract } from '../../../src/length/length';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { settingsOn } from '../../../src/trade/grooves/settings';
import { gauges } from '../../../src/trade/machines/gauges';
import { grooveMachines, machineFor } from '../../../src/trade/machines/groove-machines';
import type { Cuts, GrooveMachine } from '../../../src/trade/machines/machine';
import {
  cautionCode,
  isTested,
  type MachineId,
  machineAt,
  machineIds,
} from '../../../src/trade/machines/machines';
import type { ShopField } from '../../../src/trade/machines/shop';
import { grooveMachineIds, handMachineIds } from '../../../src/trade/machines/stored-ids';
import { board, l, run, w } from '../grooves/sample';

/** Every machine, and what is turned on it: one that is added does not compile until it stands here. */
const cutsOf: Record<MachineId, Cuts> = {
  rip: 'blade',
  crosscut: 'blade',
  mitre: 'blade',
  stop: 'stack',
  fence: 'stack',
  router: 'bit',
  saw: 'blade',
  spacers: 'stack',
  index: 'stack',
  sliding: 'stack',
  tablerouter: 'bit',
  slidingcut: 'blade',
  rabbet: 'stack',
  notch: 'shoulders',
  lap: 'shoulders',
  slidingnotch: 'shoulders',
  slidinglap: 'shoulders',
  dovetail: 'tool',
  finger: 'stack',
  routertable: 'bit',
  stick: 'blade',
  jig: 'tool',
  press: 'bit',
  template: 'bit',
  slant: 'bit',
  plate: 'tool',
  hand: 'tool',
  bench: 'none',
};

describe.each(Object.entries(cutsOf))('the machine %s', (id, cuts) => {
  const own = machineIds.find((x) => x === id) ?? 'hand';
  const machine = machineAt(own);

  test(`cuts with a ${cuts}, and is tested first if that is a stack`, () => {
    expect(machine.cuts).toBe(cuts);
    expect(isTested(machine)).toBe(cuts === 'stack' || cuts === 'shoulders');
  });

  test('says its own caution, or that of a machine that has one', () => {
    const code = machineIds.find((x) => x === cautionCode(own, machine));
    expect(code && machineAt(code).caution).toBeUndefined();
    expect(code).toBeDefined();
  });
});

// each stands in logs and in keys of setups that phones keep
test('ids of machines and letters of gauges are spelled so, for ever', () => {
  expect(machineIds.join(' ')).toBe(Object.keys(cutsOf).join(' '));
  expect(Object.entries(gauges).map(([gauge, letter]) => `${letter} ${gauge}`)).toEqual([
    's stop-to-near-teeth',
    'o other-stop-to-teeth',
    'f fence-scale',
    'g guide-edge',
    'p spacer',
    'i fence-mark',
    'r rip-fence',
    'l length-stop',
    'm long-point',
    'x exposed',
    'n near-shoulder',
    'k stick-length',
    'j from-end',
    'a as-said',
    'b fence-to-bit',
    'e row-from-front',
    'd first-slot',
    'q edge-slot',
    't bit-fence',
    'v line-in',
    'u row-middle',
    'z seat-back',
  ]);
});

describe('what a job keeps', () => {
  test.each(machineIds)('takes %s for a board just if it cuts grooves, for hand work if offered', (id) => {
    expect(boardFields.machine.read(id)).toBe(grooveMachineIds.find((x) => x === id));
    expect(workFields.machine.read(id)).toBe(handMachineIds.find((x) => x === id));
  });

  test('takes what phones keep of either', () => {
    expect(grooveMachineIds.join(' ')).toBe('stop fence router saw spacers index sliding tablerouter');
    expect(Object.keys(grooveMachines)).toEqual(grooveMachineIds);
    expect(handMachineIds).toEqual(machineIds.filter((id) => machineAt(id).forHandWork));
    expect([...handMachineIds].sort().join(' ')).toBe(
      'bench crosscut fence hand rip router saw sliding stop',
    );
  });
});

const dado = board({
  length: l('40'),
  runs: [run({ spacing: 'given', at: [l('12')], width: l('3/4'), depth: l('3/8') })],
});

/** Every figure a machine asks a shop for; bit and blade narrower than the groove. */
const shop: Partial<Record<ShopField, ReturnType<typeof l>>> = {
  single: l('1/8'),
  routerBase: l('3'),
  bit: l('1/2'),
  shoeKeep: l('1'),
  shoeWaste: l('4'),
  kerf: l('1/8'),
};

describe.each(grooveMachineIds)('a groove on the machine %s', (id) => {
  const machine = machineFor(id);
  const settingsWith = (own: typeof shop) => {
    const toward = { ...dado, machine: id };
    return settingsOn(machine, layOut(toward), { board: toward, shop: own, tape: '1/32' });
  };

  test('is set once all figures of the shop it asks for are measured, and not before', () => {
    for (const field of machine.needs?.(dado) ?? [])
      expect(settingsWith({ ...shop, [field]: undefined }).problems).toContainEqual({
        code: 'shop-figure-missing',
        field,
      });
    const { problems, settings } = settingsWith(shop);
    expect(problems).toEqual([]);
    expect(settings[0]?.groove.no).toBe('1');
  });

  test('has both its walls where they were laid out', () => {
    const { settings } = settingsWith(shop);
    expect(settings.some((s) => w(s.nearTeeth.value) === '12')).toBe(true);
    expect(settings.some((s) => w(s.farTeeth.value) === '12 3/4')).toBe(true);
  });
});

/** A router table nobody here has: read from its own zero, four inches out, it takes the far wall first. */
const imaginary: GrooveMachine = {
  cuts: 'bit',
  holds: 'stop',
  needs: () => ['bit'],
  order: (passes) => [...passes].reverse(),
  set: ({ teeth }) => ({ measures: 'fence-mark', figure: subtract(teeth, inches(4n)) }),
};

describe('a machine that is added as data', () => {
  const on = (own: typeof shop, over: Parameters<typeof board>[0] = {}) => {
    const held = { ...dado, ...over };
    return settingsOn(imaginary, layOut(held), { board: held, shop: own, tape: '1/32' });
  };

  test('sets its own figure, in its own order, by its own cutter', () => {
    // walls at 12 and 12 1/4 for a bit of 1/2, read four inches less
    expect(on(shop).settings.map((s) => `${s.wall} ${w(s.figure.value)}`)).toEqual(['far 8 1/4', 'near 8']);
  });

  test('asks for its own figure of the shop, and for no other', () => {
    expect(on({}).problems).toEqual([{ code: 'shop-figure-missing', field: 'bit' }]);
    expect(on({ bit: l('1/2') }).problems).toEqual([]);
  });

  test('is refused what its stop does not reach', () => {
    const far = layOut(dado);
    const settings = settingsOn(imaginary, far, {
      board: dado,
      shop: { ...shop, stopReach: l('8') },
      tape: '1/32',
    });
    expect(settings.problems.map((p) => p.code)).toEqual(['beyond-fence']);
  });

  test('has a caution of its own, and no test cut', () => {
    expect(cautionCode('table', imaginary)).toBe('table');
    expect(cautionCode('table', { ...imaginary, caution: 'router' })).toBe('router');
    expect(isTested(imaginary)).toBe(false);
  });
});
