import { describe, expect, test } from 'vitest';
import { pickUpAt } from '../../../src/screens/job/next-words';
import * as words from '../../../src/screens/job/words';

describe('the next thing to do', () => {
  test('names the first piece, and how many more the setup takes', () => {
    const next = (more: number) => words.nextSetup('rip fence', 'Side A', more);
    expect([0, 1, 2].map(next)).toEqual([
      'Next: rip fence, Side A',
      'Next: rip fence, Side A and 1 more',
      'Next: rip fence, Side A and 2 more',
    ]);
  });

  test('is picked up at the router, or at a saw', () => {
    expect(pickUpAt('router')).toBe('Pick up at the router');
    expect(pickUpAt('fence')).toBe('Pick up at the saw');
    expect(pickUpAt('saw')).toBe('Pick up at the saw');
  });
});

describe('what the job holds', () => {
  test('one of a thing stands in the singular', () => {
    expect(words.pieces(1)).toBe('1 piece');
    expect(words.pieces(2)).toBe('2 pieces');
    expect(words.double(1)).toBe('Phones disagree in one place');
    expect(words.double(2)).toBe('Phones disagree in 2 places');
    expect(words.cutOtherwise(1)).toBe('One piece is cut already, and its size has changed since: see Cuts.');
    expect(words.cutOtherwise(2)).toBe(
      '2 pieces are cut already, and their sizes have changed since: see Cuts.',
    );
  });

  test('fronts are counted until the first one is on, then those that are', () => {
    expect(words.frontsOn(0, 1)).toBe('1 front');
    expect(words.frontsOn(0, 6)).toBe('6 fronts');
    expect(words.frontsOn(1, 1)).toBe('1 of 1 front on');
    expect(words.frontsOn(2, 6)).toBe('2 of 6 fronts on');
  });

  test('the first case needs no number, those after it have theirs', () =>
    expect([1, 2, 3].map(words.caseName)).toEqual(['Case', 'Case 2', 'Case 3']));
});

describe('what is kept', () => {
  test('says in how many copies, and whether it works with no signal', () => {
    expect(words.kept('both', true)).toBe('Kept on this phone, in two copies. Works with no signal.');
    for (const one of ['database', 'journal'] as const)
      expect(words.kept(one, false)).toBe('Kept on this phone, in a single copy.');
  });

  test('one or more that could not be read', () => {
    expect(words.unread(1)).toBe('One value could not be read and stands at its usual figure.');
    expect(words.unread(2)).toBe('2 values could not be read and stand at their usual figures.');
    expect(`${words.setAside(1)} ${words.shareAside(1)}`).toBe(
      'One entry could not be read. It is set aside, unchanged. Share it out',
    );
    expect(`${words.setAside(2)} ${words.shareAside(2)}`).toBe(
      '2 entries could not be read. They are set aside, unchanged. Share them out',
    );
  });
});
