import { describe, expect, test } from 'vitest';
import { machineNames } from '../../../../src/screens/shared/machines/machine-names';
import { isOfMachine, machineWords, wordsOf } from '../../../../src/screens/shared/machines/machine-words';
import { cautionCode, machineAt, machineIds } from '../../../../src/trade/machines/machines';
import { handMachineIds } from '../../../../src/trade/machines/stored-ids';
import { l } from '../../../trade/grooves/sample';

describe.each(machineIds)('the machine %s', (id) => {
  test('has a name of its own at the head of a card', () => {
    expect(machineIds.filter((x) => machineNames[x] === machineNames[id])).toEqual([id]);
  });

  test('is offered for hand work just if its descriptor says so', () => {
    expect(wordsOf(id).forHandWork !== undefined).toBe(handMachineIds.some((one) => one === id));
  });

  test('has words for the caution that is said at it', () => {
    const code = cautionCode(id, machineAt(id));
    expect(isOfMachine(code) && machineWords[code].caution.length).toBe(2);
  });
});

/**
 * The pin stands a cutter off the blade: what lies against it or against a side that hangs on it begins there. A side
 * on the pin by its first slot reaches its first finger past it. So a side needs a strip of cutter less first finger;
 * the front, whose edge must lie two cutters less its slot from the pin, twice that.
 */
describe('the first slot off a pin', () => {
  const held = (begins: 'finger' | 'slot', first: string) =>
    wordsOf('finger').held?.('', {
      on: { at: 'fingers', begins },
      cutter: l('1/2'),
      figure: { value: l(first), rest: l('0') },
    });

  test('a first finger as wide as the cutter needs nothing between', () => {
    expect(held('finger', '1/2')).toBe('bottom edge against the pin; then each slot over the pin, 1 on');
    expect(held('slot', '1/2')).toBe(
      'bottom edge against that of a side hung on the pin by its first slot; then each slot over the pin, 1 on',
    );
  });

  test('a narrower one a strip, of 3/16 or twice that', () => {
    expect(held('finger', '5/16')).toContain('against the pin, a strip of 3/16 between;');
    expect(held('slot', '5/16')).toContain('by its first slot, a strip of 3/8 between;');
  });

  test('a wider one a stop, and the slot of its mate two passes', () => {
    expect(held('finger', '5/8')).toContain('bottom edge to a stop;');
    expect(held('slot', '5/8')).toContain('bottom edge to a stop, in two passes;');
  });
});
