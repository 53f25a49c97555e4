import { describe, expect, test } from 'vitest';
import { machineNames } from '../../../../src/screens/shared/machines/machine-names';
import { isOfMachine, machineWords, wordsOf } from '../../../../src/screens/shared/machines/machine-words';
import { cautionCode, machineAt, machineIds } from '../../../../src/trade/machines/machines';
import { handMachineIds } from '../../../../src/trade/machines/stored-ids';

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
