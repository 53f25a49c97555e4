import { describe, expect, test } from 'vitest';
import { editAcross, editRoom, editWay } from '../../src/job/room-edits';
import { casesInRoom } from '../../src/plan/case-in-room';
import { doorsFor } from '../../src/plan/door-plan';
import { roomPlanOf } from '../../src/plan/room-plan';
import { doorPlaceText, doorText, doorTold } from '../../src/screens/shared/door-words';
import { briefly } from '../../src/screens/shared/in-room-words';
import { l } from '../length/write-figures';
import { spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

/** 96 between the walls; the cabinet from 1/2 to 39 1/4, 18 1/4 deep. */
const wide = editAcross('a', { at: l('0'), wide: l('96') });
const doorway = editWay('d', { name: 'Door', kind: 'doorway', width: l('30'), height: l('80') });
type Place = Parameters<typeof editWay>[1];
const foundOf = (place: Place, more: ReturnType<typeof editRoom> = []) => {
  const { job, plan } = worked([...caseDecided, ...wide, ...doorway, ...editWay('d', place), ...more]);
  const [found] = casesInRoom(job, plan.worked);
  if (!found) throw new Error('no case');
  return { found, door: found.doors[0], empty: doorsFor(job, roomPlanOf(job))[0] };
};

const front = { wall: 'front', corner: 'first', fromCorner: l('10'), hung: 'near', swing: 'in' } as const;

describe('a door of the room', () => {
  test('without its wall there is none, and nothing is asked', () => {
    expect(foundOf({}).door).toBeUndefined();
    expect(foundOf({ fromCorner: l('4') }).found.goesIn).toBe(true);
  });

  test('what is still to be said', () => {
    expect(foundOf({ wall: 'left' }).door?.asks).toEqual(['corner', 'fromCorner', 'hung', 'swing']);
    const unread = foundOf({ wall: 'front', corner: 'first' });
    expect(unread.door?.asks).toEqual(['fromCorner', 'hung', 'swing', 'deep']);
    expect(unread.door && doorTold(unread.door)?.says).toContain('say how far from the corner');
    expect(unread.door && doorText(unread.door)).toBeUndefined();
    expect(unread.found.goesIn).toBe(true);
  });

  test('in the wall 40 away its leaf strikes, and the case is said to stand in its way, by how much it must move', () => {
    // 40 - 18 1/4 = 21 3/4 free before it. √(900 - 473 1/16) = 20.662 and 10 - 1/2 = 9 1/2 more to the right: 30.162,
    // up to 30 3/16; to the right there is 96 - 39 1/4 = 56 3/4
    const { found, door } = foundOf(front, editRoom({ deep: l('40') }));
    expect(spelled(door?.swing)).toMatchObject({ code: 'strikes', opensTo: '21 3/4' });
    expect([found.goesIn, found.inDoor]).toEqual([true, true]);
    expect(briefly(found)).toBe(
      'It cannot stand there: a door is in its way. Door: its leaf strikes the case, it opens until its edge is 21 3/4 off its own wall. Stand the case 30 3/16 farther to the right, and it opens to a right angle.',
    );
  });

  test('a leaf that was measured counts, else the clear width', () => {
    // 30 - 21 3/4 is too much; a leaf of 21 3/4 just clears it. It is then narrower than the opening, as a narrow door
    const { door } = foundOf({ ...front, leaf: l('31 1/2') }, editRoom({ deep: l('49 3/4') }));
    expect(door && doorText(door)).toEqual({ says: 'Door: its leaf just clears the case.', wrong: false });
  });

  test('from the other corner it is counted back: 60 deep, 12 off the far corner, is 18 from the case’s wall', () => {
    const place = {
      wall: 'right',
      corner: 'second',
      fromCorner: l('12'),
      hung: 'near',
      swing: 'in',
    } as const;
    const { door } = foundOf(place, editRoom({ deep: l('60') }));
    expect(spelled(door?.door)).toMatchObject({ from: '18', hung: 'end' });
    expect(foundOf(place).door?.asks).toEqual(['deep']);
  });

  test('a door behind the case, and one that opens out of the room', () => {
    const place = { wall: 'left', corner: 'first', fromCorner: l('8'), hung: 'far', swing: 'out' } as const;
    const behind = foundOf(place);
    // 18 1/4 - 8
    expect(behind.door && doorText(behind.door)).toEqual({
      says: 'Door: the case stands 10 1/4 before its opening.',
      wrong: true,
    });
    expect([behind.found.goesIn, behind.found.inDoor]).toEqual([true, true]);
    const away = foundOf({ ...place, fromCorner: l('18 1/4') });
    expect(away.door && doorText(away.door)?.says).toBe('Door: its leaf opens away from the case.');
    expect([away.found.goesIn, away.found.inDoor]).toEqual([true, false]);
  });

  test('past the other corner, or wider than the wall: by how much, and what fits, before there is a case too', () => {
    const { door, empty } = foundOf({ ...front, fromCorner: l('70') }, editRoom({ deep: l('40') }));
    const says = 'Door: its opening would end 4 past the other corner. From its own corner 0 to 66 fits.';
    expect([door, empty].map((one) => one && doorTold(one))).toEqual([
      { says, wrong: true },
      { says, wrong: true },
    ]);
    expect(doorPlaceText('Door', { code: 'wider-than-wall', by: l('2'), most: l('28') })).toBe(
      'Door: its opening is 2 wider than the wall it is in. Up to 28 fits.',
    );
  });
});
