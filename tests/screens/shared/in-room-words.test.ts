import { describe, expect, test } from 'vitest';
import { editCase, editStock } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { editAcross, editRoom, editUpright, editWay } from '../../../src/job/room-edits';
import { casesInRoom } from '../../../src/plan/case-in-room';
import { briefly, standUpText } from '../../../src/screens/shared/in-room-words';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const stock = { sideStock: 's', bottomStock: 's', topStock: 's' };
const size = { width: l('30'), height: l('72'), depth: l('12'), feet: l('4'), ease: l('1/16') };
const tall: readonly Change[] = [
  ...editStock('s', { name: 'S', readings: [l('3/4')], used: l('3/4') }),
  ...editCase('c', { name: 'C', ...stock, ...size, dado: l('1/4'), topRabbet: l('3/8') }),
];
const found = (...changes: readonly (readonly Change[])[]) => {
  const { job, plan } = worked([...tall, ...changes.flat()]);
  const [first] = casesInRoom(job, plan.worked);
  if (!first) throw new Error('the case does not work out');
  return first;
};
const high = (x: string) => editUpright('h', { at: l('0'), high: l(x) });
const wide = (x: string) => editAcross('w', { at: l('0'), wide: l(x) });
const door = (width: string, height: string) =>
  editWay('d', { name: 'Door', kind: 'doorway', width: l(width), height: l(height) });

// 72 x 12: the diagonal is √(5184 + 144) = √5328, and 72 15/16² = 5319 225/256 is less, 73² = 5329 more.
// What goes up under 72 3/4: √(5292 9/16 − 144) = √5148 9/16, and 71 3/4² = 5148 1/16, 71 13/16² = 5157 9/256.
describe('72 high and 12 deep under 72 3/4', () => {
  test('through a door of 32 x 60 it comes lying, asks 73 of height, and does not go in', () => {
    const lying = found(high('72 3/4'), door('32', '60'));
    expect(lying.standing.how).toBe('only-lying');
    expect(lying.goesIn).toBe(false);
    expect(briefly(lying)).toMatch(
      /^It does not go in\. Door: it comes through only lying, .* it asks 73 of height: 1\/4 too much\. So deep, one of 71 3\/4 goes up\.$/,
    );
    expect(found(high('72 3/4'), door('32', '60'), editRoom({ standsUp: false })).goesIn).toBe(false);
  });

  test('through 32 x 73 it comes upright with one hand over it, and how it comes to stand is asked for', () => {
    const asked = found(high('72 3/4'), door('32', '73'));
    expect([asked.standing.how, asked.goesIn]).toEqual(['not-said', true]);
    expect(briefly(asked)).toContain('Say how it comes to stand');
    // by 1/16 lower there is no room for the hand: only lying
    expect(found(high('72 3/4'), door('32', '72 15/16')).goesIn).toBe(false);
    const said = found(high('72 3/4'), door('32', '73'), editRoom({ standsUp: false }));
    expect([said.goesIn, briefly(said).includes('Say how')]).toEqual([true, false]);
    expect(standUpText(said)).toMatch(/^It comes in upright: keep it on its feet\./);
    expect(found(high('72 3/4'), door('32', '73'), editRoom({ standsUp: true })).goesIn).toBe(false);
  });

  test('under 73 it goes up: 73² is 1 more than 5328', () => {
    // 72 and 1/4 under the ceiling are 72 1/4, less than 73
    expect(found(high('73'), door('32', '60')).goesIn).toBe(true);
  });

  test('with the room not measured in height the way in says what is to be measured', () => {
    const asked = found(door('32', '60'));
    expect(standUpText(asked)).toMatch(
      /^Door: it comes through only lying, .* Measure the height of the room for that\.$/,
    );
  });
});

describe('no more is said than was read', () => {
  test('a door alone: so far as read, and what was not', () => {
    expect(briefly(found(door('36', '80')))).toBe(
      'So far as read it goes in. Not read, or it does not work out: the width of the room, the height of the room.',
    );
  });

  test('a door of 13 stops it, and says so: 12 and two hands are 14, 1 too much', () => {
    // between the walls 40 less twice 1/2 less 30: 9; under 80 less 1/4 less 72: 7 3/4
    const room = [wide('40'), high('80')].flat();
    expect(briefly(found(room, door('36', '80')))).toBe(
      'It goes in, 9 to spare across, 7 3/4 to spare in height.',
    );
    const stopped = briefly(found(room, door('13', '80')));
    expect(stopped).toMatch(/^It does not go in\. Door: .* 1 too little sideways/);
    expect(stopped).not.toContain('to spare across');
  });
});
