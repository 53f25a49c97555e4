import { describe, expect, test } from 'vitest';
import { editBoard } from '../../../src/job/edits';
import * as words from '../../../src/screens/cuts/words';
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
  });
});

describe('the last call', () => {
  test('says the figure where there is one, and one cut in the singular', () => {
    expect(words.stillWant([rip], '12')).toBe(`One cut still wants 12: Shelf 1.`);
    expect(words.stillWant(rips.slice(0, 2), '')).toMatch(/^2 cuts still want this: /);
    expect(words.stillWant([], '')).toBe('Nothing more wants this figure.');
    expect(words.stillWant([], '12')).toBe('Nothing more wants 12.');
  });

  test('one is blocked, two are; of five three are named', () => {
    expect(words.blockedForNow([rip])).toContain(' is blocked for now');
    expect(words.blockedForNow(rips.slice(0, 2))).toContain(' are blocked for now');
    expect(words.blockedForNow(rips)).toContain(' and 2 more are blocked');
  });

  test('one more at the same blade wants it, two want it', () => {
    expect(words.sameBuild(rip.setup, 1, '1/32')).toMatch(/one cut wants it\.$/);
    expect(words.sameBuild(rip.setup, 2, '1/32')).toMatch(/2 cuts want it\.$/);
  });
});

describe('a setup', () => {
  test('names the stocks its stack is built for, and nothing where it is built for none', () => {
    expect(words.standsOn(rip.setup, '1/32', ['Sheet A', 'Sheet B'])).toMatch(
      / Build the stack for Sheet A and Sheet B\.$/,
    );
    expect(words.standsOn(rip.setup, '1/32', [])).not.toContain('Build');
  });

  test('its line ends in its figure', () => {
    expect(words.setupLine(rip, '1/32')).toMatch(/ 12$/);
  });

  test('a tick and taking it back are told apart', () => {
    expect(words.tickAct(rip, false)).toBe(`Cut: Shelf 1`);
    expect(words.tickAct(rip, true)).toBe(`Not cut: Shelf 1`);
  });
});

test('what stands in the way: two are named, of three the first', () => {
  expect(words.blockers(['a', 'b'])).toBe('a and b');
  expect(words.blockers(['a', 'b', 'c'])).toBe('a and 2 more');
  expect(words.notMeasured(undefined)).toBe('the sheet is not measured');
  expect(words.openingNotMeasured(true)).toContain('front and back');
});

test('a piece that no longer fits says what of it is off', () => {
  expect(words.misfit(rip, 'width', '1/32')).toContain(', how wide: recut');
  expect(words.misfit(rip, 'depth', '1/32')).toContain(', how deep: recut');
  expect(words.misfit(rip, 'place', '1/32')).not.toContain(', how');
});
