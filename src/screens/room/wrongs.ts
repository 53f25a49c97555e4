import { isNegative } from '../../length/length';
import { type CaseInRoom, caseInRoom, warningsAt } from '../../plan/case-in-room';
import { ownStretch, type WithCases } from '../../plan/cleat-plan';
import { doorsFor } from '../../plan/door-plan';
import { type RoomPlan, roomPlanOf } from '../../plan/room-plan';
import { wallPlanOf } from '../../plan/stud-plan';
import type { Worked } from '../../trade/carcass/parts';
import { cleatWrongs } from '../shared/cleat-lines';
import { doorText, doorTold } from '../shared/door-words';
import * as inRoom from '../shared/in-room-words';
import { wayText } from '../shared/way-words';
import * as said from './said';
import * as wall from './wall-words';

/** Those of the cases that work out. */
export const workedIn = (worked: WithCases['worked']): readonly Worked[] =>
  [...worked.values()].flatMap((found) => (found.ok ? [found.value] : []));

/** All that is wrong with the room as it was read, and with each case in it, by how much. */
export function wrongsOf(on: WithCases): readonly string[] {
  const { job } = on;
  const room = roomPlanOf(job);
  return [
    ...readWrong(room),
    ...wallWrong(on),
    ...wrongIn(doorsFor(job, room).map(doorTold)),
    ...workedIn(on.worked).flatMap((each) => caseWrong(caseInRoom(job, room, each))),
  ];
}

const wrongIn = (told: readonly ReturnType<typeof doorTold>[]): readonly string[] =>
  told.flatMap((one) => (one?.wrong ? [one.says] : []));

function readWrong({ widths, plumb, widest, heights, level, highest, corners }: RoomPlan): readonly string[] {
  const differs = plumb?.ok ? said.differsText(plumb.value.differs) : undefined;
  return [
    ...(widths && !widths.ok ? [said.rowErrorText(widths.error, said.spotAcross)] : []),
    ...(plumb && !plumb.ok ? [said.plumbErrorText(plumb.error)] : []),
    ...(differs ? [differs] : []),
    ...(widest && !widest.ok ? [said.widthErrorText(widest.error)] : []),
    ...(heights && !heights.ok ? [said.rowErrorText(heights.error, said.spotUpright)] : []),
    ...(level && !level.ok ? [said.levelErrorText(level.error)] : []),
    ...(highest && !highest.ok ? [said.heightErrorText(highest.error)] : []),
    ...Object.values(corners).flatMap((corner) => (corner.ok ? [] : [said.cornerErrorText(corner.error)])),
  ];
}

function wallWrong(on: WithCases): readonly string[] {
  const ids = on.job.cases.map(({ id }) => id);
  const own = ids.filter((id) => ownStretch(on.job, id));
  const all = [...(ids.length > 0 && own.length === ids.length ? [] : [undefined]), ...own];
  return [...all.flatMap((id) => studsWrong(on, id)), ...ids.flatMap((id) => cleatWrongs(on, id))];
}

/** @param of the case whose own cleat it is; nothing for the cleat that is said for all */
function studsWrong(on: WithCases, of: string | undefined): readonly string[] {
  const { found } = wallPlanOf(on, of);
  if (!found) return [];
  if (!found.ok) return [wall.studErrorText(found.error)];
  return found.value.tooFew ? [wall.tooFew(found.value.fix.length)] : [];
}

function caseWrong(found: CaseInRoom): readonly string[] {
  const { spareWide, spareHigh, tilt, standing, ways, doors } = found;
  const stands = !tilt || standing.how === 'upright' || (tilt.ok && tilt.value.passes);
  const up = stands ? undefined : inRoom.standUpText(found);
  const sides = (['left', 'right'] as const).flatMap((side) =>
    warningsAt(found, side).map((warning) => inRoom.fillerWarning(side, warning)),
  );
  return [
    ...(spareWide && isNegative(spareWide) ? [inRoom.spareWide(spareWide)] : []),
    ...(spareHigh && isNegative(spareHigh) ? [inRoom.spareHigh(spareHigh)] : []),
    ...(up ? [up] : []),
    ...sides,
    ...ways.flatMap((way) => {
      const { says, wrong } = wayText(way);
      return wrong ? [says] : [];
    }),
    ...wrongIn(doors.map(doorText)),
  ];
}
