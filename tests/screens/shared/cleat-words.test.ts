import { describe, expect, test } from 'vitest';
import { editCase, editPutUp } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editRoom, editStand, editUpright, editZone } from '../../../src/job/room-edits';
import { cleatAt } from '../../../src/plan/cleat-plan';
import { lowerEdgeAsk } from '../../../src/screens/shared/cleat-asks';
import { cleatWrongs } from '../../../src/screens/shared/cleat-lines';
import * as words from '../../../src/screens/shared/cleat-words';
import { cleatedCase as decided } from '../../plan/cleated-case';
import { worked } from '../../plan/job-of';
import { l } from '../../trade/grooves/sample';

const plan = (...changes: readonly Change[]) => worked(changes).plan;
const says = (...changes: readonly Change[]) => words.heightText(cleatAt(plan(...changes), 'c1'));

describe('heightText', () => {
  test('asks while nobody says it', () => {
    expect(says(...decided(0))).toBe('Say how high the cleat stands: its line on the wall follows.');
  });

  test('says where the figure is from, and how it is measured from the level line', () => {
    // 60 - 3/4 - (3 + 1/16) = 56 3/16 in the case; with 1 1/4 of foot 57 7/16, its upper edge 60 7/16; 57 7/16 - 36
    const feet = editStand('c1', { footHow: 'screw', footHigh: l('1 1/4') });
    const line = editUpright('u', { at: l('2'), drop: l('36'), rise: l('60') });
    expect(says(...decided(1), ...feet, ...line)).toBe(
      'It is 56 3/16 up in the case, with 1 1/4 of foot under it. Its upper edge is 60 7/16 up. ' +
        'Its lower edge is 21 7/16 over the level line.',
    );
    expect(says(...decided(0), ...line, ...editPutUp('c1', { cleatAt: l('36') }))).toBe(
      'Its lower edge is just on the level line.',
    );
    expect(says(...decided(0), ...line, ...editPutUp('c1', { cleatAt: l('35 1/2') }))).toContain(
      '1/2 under the level line',
    );
  });
});

describe('lowerEdgeAsk', () => {
  const refused = (height: string, ...more: readonly Change[]) => {
    const ask = lowerEdgeAsk(
      plan(...decided(0), ...editPutUp('c1', { cleatWide: l('3') }), ...more),
      'c1',
      '',
    );
    return ask.as === 'length' && ask.refuse?.(l(height));
  };

  test('refuses what is not behind the case, by how much, and says what fits', () => {
    // 57 + 3 - 59 1/4 = 3/4; 59 1/4 - 3 = 56 1/4
    expect(refused('57')).toBe(
      'The upper edge of the cleat is 3/4 over the inside of the case: 4 3/4 to 56 1/4 fits for its lower edge.',
    );
    expect(refused('4')).toBe(
      'The lower edge of the cleat is 3/4 under the inside of the case: 4 3/4 to 56 1/4 fits.',
    );
    expect(refused('56 1/4')).toBeUndefined();
    const wall = editPutUp('c1', { cleatOn: 'wall' });
    expect(refused('57', ...wall)).toBeUndefined();
    expect(refused('58', ...wall)).toContain('1 over the back of the case: 4 to 57 fits');
  });

  test('takes a height of a case that does not work out yet, but for none at all', () => {
    const ask = lowerEdgeAsk(plan(...editCase('c1', { name: 'Case' })), 'c1', 'Case');
    expect(ask.as === 'length' && [ask.refuse?.(l('90')), ask.refuse?.(l('0'))]).toEqual([
      undefined,
      '0 cannot be: any length over 0 fits.',
    ]);
    expect(ask.title).toBe('Case: how high the lower edge of the cleat stands');
  });
});

describe('cleatWrongs', () => {
  test('that the case has it elsewhere, and which way', () => {
    expect(cleatWrongs(plan(...decided(1), ...editPutUp('c1', { cleatAt: l('56') })), 'c1')).toEqual([
      'The case has its cleat at 56 3/16: this is 3/16 too low. Left empty, the figure of the case stands.',
    ]);
  });

  test('what is in the way at that height, and how far it moves either way', () => {
    // its screws at 40 + 1 1/2 = 41 1/2; the pipe wants 39 or 44
    const at = (low: string, high: string) =>
      cleatWrongs(
        plan(
          ...decided(0),
          ...editRoom({ cleatFrom: l('2'), cleatTo: l('30') }),
          ...editPutUp('c1', { cleatAt: l('40'), cleatWide: l('3') }),
          ...editZone('z', { what: 'Pipe', from: l('0'), to: l('9'), low: l(low), high: l(high) }),
        ),
        'c1',
      );
    expect(at('41', '42')).toEqual([
      'At this height the screws of the cleat are too near to: Pipe. Move the cleat 2 1/2 up or 2 1/2 down, and its screws clear everything said here.',
    ]);
    expect(at('1', '70')[0]).toContain('No height behind the case clears it');
    expect(at('44', '45')).toEqual([]);
  });
});
