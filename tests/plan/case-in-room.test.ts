import { describe, expect, test } from 'vitest';
import { editCase } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editAcross, editCorner, editRoom, editUpright, editWay } from '../../src/job/room-edits';
import { casesInRoom } from '../../src/plan/case-in-room';
import { roomPlanOf } from '../../src/plan/room-plan';
import { l } from '../length/write-figures';
import { figures, spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

/** Two walls that lean one way, and a level line: Example 2 of room and Example 4 of room. */
const walls: readonly Change[] = [
  ...editRoom({ apart: l('46') }),
  ...[
    ['0', '5/8', '1 1/8'],
    ['40', '7/8', '3/4'],
    ['80', '1 1/4', '3/8'],
  ].flatMap(([at = '', left = '', right = '']) =>
    editAcross(`w${at}`, { at: l(at), left: l(left), right: l(right) }),
  ),
];
const line: readonly Change[] = [
  ['0', '36 1/8', '60 1/16'],
  ['20', '35 15/16', '60 3/8'],
  ['40', '36 1/4', '59 15/16'],
].flatMap(([at = '', drop = '', rise = '']) =>
  editUpright(`h${at}`, { at: l(at), drop: l(drop), rise: l(rise) }),
);

const planOf = (changes: readonly Change[]) => roomPlanOf(worked([...caseDecided, ...changes]).job);
const caseOf = (changes: readonly Change[]) => {
  const { job, plan } = worked([...caseDecided, ...changes]);
  const [found] = casesInRoom(job, plan.worked);
  if (!found) throw new Error('no case');
  return found;
};

describe('the greatest case', () => {
  test('an unread room says nothing of a case', () => {
    const found = planOf([]);
    expect([found.wide, found.high, found.widest, found.highest, found.asks]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      [],
    ]);
    expect(caseOf([]).goesIn).toBeUndefined();
  });

  test('is 46 by 95 5/8: 47 less 1/2 each side, 95 7/8 less 1/4', () => {
    const found = planOf([...walls, ...line]);
    expect(spelled([found.wide, found.high])).toEqual([
      { value: '47', by: 'lines' },
      { value: '95 7/8', by: 'lines' },
    ]);
    expect(spelled(found.widest?.ok && found.widest.value.value)).toBe('46');
    expect(spelled(found.highest?.ok && found.highest.value.value)).toBe('95 5/8');
  });

  test('widths alone stand in for plumb lines; the burned inch comes off, the body of the tape is added', () => {
    // 44 3/4 and 44 5/8 read; 44 5/8 - 1 = 43 5/8, + 3 = 46 5/8; less twice 1/2: 45 5/8
    const read = [
      ...editAcross('a', { at: l('0'), wide: l('44 3/4') }),
      ...editAcross('b', { at: l('40'), wide: l('44 5/8') }),
    ];
    const both = editRoom({ burned: true, inside: true, body: l('3') });
    expect(spelled(planOf([...read, ...editRoom({ burned: true })]).wide)).toEqual({
      value: '43 5/8',
      by: 'least',
    });
    const found = planOf([...read, ...both]);
    expect(spelled(found.widest?.ok && found.widest.value.value)).toBe('45 5/8');
    expect(found.widths?.ok && found.widths.value.both).toBe(true);
  });

  test('with the body lit and not said no width counts', () => {
    const found = planOf([...editAcross('a', { at: l('0'), wide: l('44') }), ...editRoom({ inside: true })]);
    expect([found.asks, found.widest]).toEqual([['body'], undefined]);
    // nor is it said what the least is; the plumb lines need no body
    expect(found.widths).toBeUndefined();
    const lines = planOf([...walls, ...editAcross('w0', { wide: l('44') }), ...editRoom({ inside: true })]);
    expect(spelled([lines.asks, lines.wide?.value])).toEqual([['body'], '47']);
  });

  test('a spot read at one line only, and one without its height, are asked for', () => {
    const one = planOf([...walls, ...editAcross('x', { at: l('20'), left: l('1') })]);
    expect(one.plumb && !one.plumb.ok && one.plumb.error).toMatchObject({
      code: 'spots-differ',
      missing: 'right',
    });
    expect(one.widest).toBeUndefined();
    expect(planOf(editAcross('x', { wide: l('44') })).asks).toEqual(['at-across']);
    expect(planOf(editAcross('x', { at: l('0'), left: l('1'), right: l('1') })).asks).toEqual(['apart']);
  });
});

describe('the cabinet in it', () => {
  // 38 3/8 + twice 3/16 of frame = 38 3/4 wide; 64 1/4 high; 17 1/2 + 3/4 = 18 1/4 deep
  test('stands as wide as its frame and as deep as frame and case', () => {
    expect(spelled(caseOf([]).outside.stands)).toEqual({
      width: '38 3/4',
      height: '64 1/4',
      depth: '18 1/4',
    });
  });

  test('a loose top stands on it and past its sides, and is carried apart', () => {
    // 38 3/8 + twice 1 = 40 3/8; 64 1/4 + 23/32 = 64 31/32
    const { stands, carried } = caseOf(
      editCase('case', { hasLooseTop: true, looseSide: l('1'), looseFront: l('1') }),
    ).outside;
    expect(spelled(stands)).toEqual({ width: '40 3/8', height: '64 31/32', depth: '19 1/4' });
    expect(spelled(carried)).toEqual({ width: '38 3/4', height: '64 1/4', depth: '18 1/4' });
  });

  test('goes in with 46 - 38 3/4 = 7 1/4 and 95 5/8 - 64 1/4 = 31 3/8 to spare', () => {
    const found = caseOf([...walls, ...line]);
    expect(spelled([found.spareWide, found.spareHigh, found.goesIn])).toEqual(['7 1/4', '31 3/8', true]);
    // left of it 1/2, 3/4, 1 1/8, as in Example 2 of room
    expect(figures(found.fillers?.left.gaps ?? [])).toEqual(['1/2', '3/4', '1 1/8']);
  });

  test('just fits 39 3/4 between the walls, and by 1/32 less it does not go in', () => {
    const at = (wide: string) => caseOf(editAcross('a', { at: l('0'), wide: l(wide) }));
    expect(spelled([at('39 3/4').spareWide, at('39 3/4').goesIn])).toEqual(['0', true]);
    expect(spelled([at('39 23/32').spareWide, at('39 23/32').goesIn])).toEqual(['-1/32', false]);
  });

  test('is not stood up under 66 1/2: by Example 5 of room it asks 66 13/16, on thirty-seconds too', () => {
    // 64 1/4² + 18 1/4² = 4461 1/8; 66 25/32² is 4459 753/1024, less; 66 13/16² is 4463 233/256, more
    const low = editUpright('a', { at: l('0'), high: l('66 1/2') });
    expect(caseOf(low).goesIn).toBe(true);
    const lying = caseOf([...low, ...editRoom({ standsUp: true })]);
    expect(lying.goesIn).toBe(false);
    expect(spelled(lying.tilt?.ok && [lying.tilt.value.diagonal, lying.tilt.value.spare])).toEqual([
      '66 13/16',
      '-5/16',
    ]);
  });

  test('a corner that opens by 4809/20480 over 30 opens over 18 1/4 by that times 18 1/4 over 30', () => {
    const found = caseOf(editCorner('left', { back: l('40'), side: l('30'), across: l('50 3/16') }));
    // 4809/20480 × 73/120 = 351057/2457600 = 117019/819200
    expect(found.corners.map(({ side, over }) => [side, `${over.s * over.n}/${over.d}`])).toEqual([
      ['left', '-117019/819200'],
    ]);
  });

  test('one thing on the way that stops it is enough; what is not said yet is asked for', () => {
    const door = editWay('d', { kind: 'doorway', width: l('30'), height: l('79 1/2') });
    expect(caseOf(door).goesIn).toBe(true);
    expect(
      caseOf([...door, ...editWay('t', { kind: 'turn', from: l('28'), into: l('36'), height: l('64') })])
        .goesIn,
    ).toBe(false);
    const half = caseOf(editWay('d', { kind: 'stair', headroom: l('78') }));
    expect([half.goesIn, half.ways[0]?.asks]).toEqual([undefined, ['going', 'rise', 'between']]);
    const turning = caseOf(editWay('d', { kind: 'stair', winders: true })).ways[0];
    expect([turning?.asks, turning?.found && !turning.found.ok && turning.found.error.code]).toEqual([
      [],
      'winders',
    ]);
  });
});
