import { describe, expect, test } from 'vitest';
import { add, less, zero } from '../../../src/length/length';
import { partsOf } from '../../../src/trade/carcass/parts';
import { toolAt } from '../../../src/trade/machines/tool-at';
import { needOf } from '../../../src/trade/setups/need';
import { operationsOf } from '../../../src/trade/setups/operations';
import { l } from '../../length/write-figures';
import { plainCase, sheets } from '../carcass/sample-case';

const shop = { single: l('1/8'), block: l('3/4') };

function made(machine: 'stop' | 'fence') {
  const cutting = () => ({ machine, grows: 'toward' }) as const;
  const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32', cutting });
  if (!worked.ok) throw new Error('no case');
  const { parts } = worked.value;
  const ops = operationsOf(
    { parts, cases: [plainCase], hand: [], recuts: () => ({}) },
    { shop, tape: '1/32' },
  );
  return (id: string) => {
    const op = ops.find((o) => o.id === id);
    const part = parts.find((p) => p.id === op?.part);
    if (!op || !part) throw new Error(id);
    return { op, need: needOf(op, part) };
  };
}

describe('needOf', () => {
  test('a rip wants the fence at its width, a length the stop at its length', () => {
    const of = made('stop');
    expect(of('cut/c1~left/rip/1').need).toMatchObject({
      cut: 'rip',
      width: l('17 1/2'),
      length: l('64 1/4'),
    });
    expect(of('cut/c1~left/len/1').need).toMatchObject({
      cut: 'crosscut',
      length: l('64 1/4'),
      width: l('17 1/2'),
    });
  });

  test('a groove wants its teeth, however its machine reads them', () => {
    const onSled = made('stop')('cut/c1~left/bottom~only/1');
    const atFence = made('fence')('cut/c1~left/bottom~only/1');
    expect(onSled.need).toMatchObject({ cut: 'groove', across: l('17 1/2'), length: l('64 1/4') });
    if (onSled.need?.cut !== 'groove' || atFence.need?.cut !== 'groove') throw new Error('no groove');
    expect(atFence.need.near).toEqual(onSled.need.near);
    // block 3/4, and a stack wider than the blade the scale was zeroed to
    const { rides = zero } = atFence.need;
    expect(less(l('3/4'), rides)).toBe(true);
    expect(add(atFence.need.near, rides)).toEqual(atFence.op.figure);
    expect([toolAt(onSled.op.setup.machine), toolAt(atFence.op.setup.machine)]).toEqual(['sled', 'fence']);
  });

  test('a rabbet wants its depth of the stack, and what lies along the fence; no figure is set between', () =>
    expect(made('stop')('cut/c1~left/rabbet~back/1').need).toMatchObject({
      cut: 'edge',
      near: zero,
      across: l('64 1/4'),
      length: l('17 1/2'),
    }));
});
