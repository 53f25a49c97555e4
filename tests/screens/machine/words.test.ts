import { describe, expect, test } from 'vitest';
import { editBoard } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import * as words from '../../../src/screens/machine/words';
import { tickAct } from '../../../src/screens/shared/piece-words';
import { testOn } from '../../../src/screens/shared/setup-words';
import type { Operation } from '../../../src/trade/setups/operation';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

/** Two shelves alike with a groove. */
const { plan, folded } = worked([
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
]);
const list = checklistOf(plan, folded);
const [rip, again] = plan.operations.filter(({ what }) => what === 'rip');
const card = list.cards[0];
if (!rip || !again || !card) throw new Error('two rips are wanted');

describe('the big bar says the next true thing', () => {
  test('a piece by its name', () => expect(words.isDone(rip)).toBe('Shelf 1 is cut'));
  test('the next setting with its figure', () =>
    expect(words.nextSetting(card, list)).toBe('Next: rip fence at 12'));
  test('a tick and taking it back are told apart', () => {
    expect(tickAct(rip, false)).toBe('Cut: Shelf 1');
    expect(tickAct(rip, true)).toBe('Not cut: Shelf 1');
  });
  test.each([
    ['carry-in', 'Carried in: Cabinet', 'Not carried in: Cabinet'],
    ['level', 'Levelled: Cabinet', 'Not levelled: Cabinet'],
    ['anchor', 'Anchored: Cabinet', 'Not anchored: Cabinet'],
    ['frame-on', 'Fitted with its frame: Cabinet', 'Not fitted with its frame: Cabinet'],
  ] as const)('of the step %s what undo names is what was done', (what, done, taken) => {
    const step: Operation = { ...rip, what, name: { of: { role: 'case', named: 'Cabinet' } } };
    expect(tickAct(step, false)).toBe(done);
    expect(tickAct(step, true)).toBe(taken);
  });
  test('a mark on the stick and a slide are not cut', () => {
    expect(words.isDone({ ...rip, what: 'marks' })).toBe('Shelf 1 is marked on the stick');
    expect(words.isDone({ ...rip, what: 'slide' })).toBe('Shelf 1 is set on its stick');
  });
});

test('what goes ahead out of turn is cut, or bored where it is a row', () => {
  expect([words.because(rip), words.aheadAct(rip)]).toEqual([
    'or cut it anyway, because',
    'Cut anyway: Shelf 1',
  ]);
  const row: Operation = { ...rip, what: 'bore' };
  expect([words.because(row), words.aheadAct(row)]).toEqual([
    'or bore it anyway, because',
    'Bored anyway: Shelf 1',
  ]);
});

describe('the last call', () => {
  test('counts one and several', () => {
    expect(words.stillWant(1)).toBe('One more piece wants this figure:');
    expect(words.stillWant(3)).toBe('3 more pieces want this figure:');
    expect(words.leaveWith(1)).toBe('Leave, one to come back for');
    expect(words.leaveWith(3)).toBe('Leave, 3 to come back for');
  });

  test('names a piece, and says that it is blocked', () => {
    expect(words.unmade(rip, false, '1/32')).toBe('Shelf 1, rip');
    expect(words.unmade(rip, true, '1/32')).toBe('Shelf 1, rip (blocked for now)');
    expect(words.stay(rip, '1/32')).toBe('Stay, cut Shelf 1');
    expect(words.stay(undefined, '1/32')).toBe('Stay');
  });
});

describe('a change of cutter', () => {
  const stack = (cutter: string, height: string) => ({
    ...rip,
    setup: { ...rip.setup, machine: 'stop' as const, cutter: l(cutter), height: l(height) },
  });

  test('says what comes off and what goes on', () => {
    expect(words.offAndOn(undefined, stack('23/32', '1/4'), '1/32')).toBe('Unplug. 23/32 stack on.');
    expect(words.offAndOn(stack('13/32', '3/16'), stack('23/32', '1/4'), '1/32')).toBe(
      'Unplug. 13/32 stack off, 23/32 stack on.',
    );
    expect(words.offAndOn(rip, stack('23/32', '1/4'), '1/32')).toBe('Unplug. Blade off, 23/32 stack on.');
    expect(words.offAndOn(stack('23/32', '3/16'), stack('23/32', '1/4'), '1/32')).toBe(
      'Unplug. The 23/32 stack stays on; only its height is changed.',
    );
  });

  test('a bit comes off for another bit of its machine, not for the blade of a saw', () => {
    const bit = (cutter: string, machine: 'template' | 'press') => ({
      ...rip,
      setup: { ...rip.setup, machine, cutter: l(cutter), height: l('3/8') },
    });
    expect(words.offAndOn(bit('1/4', 'template'), bit('3/8', 'template'), '1/32')).toBe(
      'Unplug. 1/4 bit off, 3/8 bit on.',
    );
    expect(words.offAndOn(bit('1/4', 'template'), rip, '1/32')).toBe('Unplug. Blade on.');
    expect(words.offAndOn(rip, bit('1/4', 'press'), '1/32')).toBe('Unplug. 1/4 bit on.');
  });

  test('the bar sums up what is on, how high, and whether it was tested', () => {
    expect(words.setSays(stack('23/32', '1/4'), '1/32', true)).toBe(
      '23/32 stack on, 1/4 high, the test cut fits',
    );
    expect(words.setSays(rip, '1/32', false)).toBe('blade on');
  });

  test('a tap that says of a test cut that it fits says so; one that does not, does not', () => {
    expect(words.isSet(true)).toBe('Set and tested');
    expect(words.isSet(false)).toBe('It is set');
  });

  test('a test is made on scrap of the sheet it is for', () => {
    expect(testOn(['Sheet A', 'Sheet B'])).toBe('Test on scrap of Sheet A and Sheet B.');
    expect(testOn([])).toBe('Test on scrap of the same stuff.');
  });

  test('what was passed by is named with its figure', () =>
    expect(words.passedBy([card], '1/32')).toContain('Shelf 1 at 12'));
});

test('what comes first is called done by its name, several together', () => {
  expect(words.alreadyDone([rip])).toBe('The rip is done already');
  expect(words.alreadyDone([rip, again])).toBe('All that is done already');
});

test('of a change of build both figures are read, as they stand on its screen; of a blade alone nothing', () => {
  const setup = { ...rip.setup, machine: 'stop', cutter: l('47/64'), height: l('1/4') } as const;
  expect(words.aloudSet({ ...rip, setup }, '1/32')).toBe(
    'Stack forty-seven sixty-fourths; Raise to a quarter, off the table',
  );
  expect(words.aloudSet(rip, '1/32')).toBe('');
});
