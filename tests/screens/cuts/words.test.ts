import { describe, expect, test } from 'vitest';
import { editBoard } from '../../../src/job/edits';
import * as words from '../../../src/screens/cuts/words';
import { groupName } from '../../../src/screens/shared/piece-words';
import type { Operation } from '../../../src/trade/setups/operation';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

/** Five shelves alike, each named by its number. */
const { plan } = worked(editBoard('shelf', { name: 'Shelf', copies: 5, length: l('30'), across: l('12') }));
const rips = plan.operations.filter(({ what }) => what === 'rip');
const [rip] = rips;
if (!rip || rips.length !== 5) throw new Error('five rips are wanted');

describe('counts of one and of several', () => {
  test.each([
    [words.settingsDone(1), 'One setting done'],
    [words.settingsDone(2), '2 settings done'],
    [words.ticksKept(1), 'one tick; their figures stay on the card'],
    [words.ticksKept(3), '3 ticks; their figures stay on the card'],
    [words.setupsDone(0, 1), '0 of 1 setup done'],
    [words.setupsDone(1, 4), '1 of 4 setups done'],
    [words.cutsMade(0, 1), '0 of 1 cut made'],
    [words.cutsMade(1, 2), '1 of 2 cuts made'],
    [words.partCut(2, 2), 'all cut'],
    [words.partCut(1, 2), '1 of 2 cut'],
  ])('%s is %s', (says, wanted) => expect(says).toBe(wanted));
});

describe('the order of the setups', () => {
  const found = { settings: 1, builds: 2, least: 1 };

  test('is said to be proved only where it is', () => {
    expect(words.order({ ...found, proved: true })).toContain('; no order has fewer.');
    expect(words.order({ ...found, proved: false })).toContain('no order has fewer than 1.');
  });

  test('counts one setting and two set-ups', () => {
    expect(words.order({ ...found, proved: true })).toMatch(/^1 setting in 2 set-ups of blade/);
  });

  test('a ring comes round to where it began', () => {
    expect(words.ring(['a', 'b'])).toContain(': a → b → a. Take one “after” away.');
  });
});

describe('the parts on a card', () => {
  test('three are named, the others counted', () => {
    expect(words.cardParts(['a', 'b', 'c'], 0, 1)).toBe('a, b, c');
    expect(words.cardParts(['a', 'b', 'c', 'd', 'e'], 2, 5)).toBe('a, b, c and 2 more · 2 of 5');
    expect(words.cardParts(['a', 'b'], 0, 2)).toBe('a, b');
  });

  test('one with a single mitred end says which; of two no end is named', () => {
    const named = (...ends: readonly string[]) => {
      const op: Operation = { ...rip, what: 'mitre', which: { is: 'long-points', ends } };
      return groupName({ part: 'p', name: { of: { role: 'left' } }, pieces: [{ op, letter: '' }] }, '1/32');
    };
    expect(named('bottom')).toBe('Left side, bottom end');
    expect(named('bottom', 'top')).toBe('Left side');
  });
});

test('a piece that no longer fits says what of it is off', () => {
  expect(words.misfit(rip, 'width', '1/32')).toContain(', how wide: recut');
  expect(words.misfit(rip, 'depth', '1/32')).toContain(', how deep: recut');
  expect(words.misfit(rip, 'place', '1/32')).not.toContain(', how');
});
