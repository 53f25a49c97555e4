import { describe, expect, test } from 'vitest';
import { acidRound } from '../../../src/trade/boxes/acid';

describe('acidRound', () => {
  test('oak round shells is named, with what it harms; minerals without lime are not', () => {
    expect(
      acidRound(['Birch ply', 'Oak, for the frame'], ['Whelk shells', 'Geode halves', 'Calcite']),
    ).toEqual([{ stuff: 'Oak, for the frame', wood: 'oak', things: ['Whelk shells', 'Calcite'] }]);
  });

  test.each([
    ['Sweet chestnut', 'Coral', 1],
    ['white OAK', 'an ostrich egg', 1],
    ['Maple', 'Whelk shells', 0],
    ['Oak', 'Quartz cluster', 0],
    ['Soaked pine', 'Shell', 0],
    ['Oak', 'Shellac flakes', 0],
    ['Oak', 'Eggplant print', 0],
  ])('%s round %s: %d', (stuff, thing, found) => {
    expect(acidRound([stuff], [thing])).toHaveLength(found);
  });

  test('each stuff is named once, nothing where nothing goes in', () => {
    expect(acidRound(['Oak', 'Oak'], ['Shells'])).toHaveLength(1);
    expect(acidRound(['Oak'], [])).toEqual([]);
  });
});
