import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editCase, editHandJoint, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editAcross, editGap, editRoom, editStand } from '../../src/job/room-edits';
import { less } from '../../src/length/length';
import { checklistOf, misfits } from '../../src/plan/checklist';
import { closedIn, isStripAt, stripsToRip } from '../../src/plan/closing-plan';
import { roomPlanOf } from '../../src/plan/room-plan';
import { fillerId } from '../../src/trade/carcass/filler';
import { installId } from '../../src/trade/setups/install-steps';
import { l, w } from '../length/write-figures';
import { runs } from '../runs';
import { between, spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

/** The case is 38 3/8 and twice 3/16 of frame: 38 3/4 wide. */
const walls = (right: string, apart = '40'): readonly Change[] => [
  ...editRoom({ apart: l(apart) }),
  ...editAcross('a', { at: l('0'), left: l('3/8'), right: l(right) }),
];
const edge = (side: 'left' | 'right'): readonly Change[] => [
  ...editGap('case', `${side}1`, { side, at: l('0'), gap: l('1/8') }),
  ...editGap('case', `${side}2`, { side, at: l('32'), gap: l('9/32') }),
];

/** The steps between level and anchor. */
function stepsOf(...changes: readonly (readonly Change[])[]): readonly string[] {
  const { operations } = worked([...caseDecided, ...changes.flat()]).plan;
  const ids = operations.map(({ id }) => id);
  return operations
    .slice(ids.indexOf(installId('case', 'level')) + 1, ids.indexOf(installId('case', 'anchor')))
    .map(({ what }) => what);
}

test('with nothing read of the walls a case is levelled, then anchored', () => {
  expect(stepsOf()).toEqual([]);
});

test('gaps down an edge ask for the scribe; plumb lines for a strip at each side that is not scribed', () => {
  expect(stepsOf(edge('left'))).toEqual(['scribe']);
  expect(stepsOf(walls('1 3/16'))).toEqual(['filler']);
  expect(stepsOf(walls('1 3/16'), edge('left'))).toEqual(['scribe', 'filler']);
  expect(stepsOf(walls('1 3/16'), edge('left'), edge('right'))).toEqual(['scribe']);
});

test('an edge that hangs over too little is not scribed: a strip goes there once the lines are read', () => {
  // 9/32 - 1/8 = 5/32 comes off, 1/8 hangs over
  const short = [...edge('left'), ...editStand('case', { hangLeft: l('1/8') })];
  expect(stepsOf(short)).toEqual([]);
  expect(stepsOf(walls('1 3/16'), short)).toEqual(['filler']);
});

test('a gap so wide that a stile is wanted is no strip', () => {
  // the left is scribed; at the right 60 + 1 3/16 - 38 3/4 less the little at the left: over 22
  expect(stepsOf(walls('1 3/16', '60'), edge('left'))).toEqual(['scribe']);
});

test('a strip is as wide as the case leaves it when its other edge closes to the wall', () => {
  const { job, plan } = worked([...caseDecided, ...walls('1'), ...edge('left')]);
  const width = {
    value: '2 29/32',
    terms: [
      { what: 'widest-gap', value: '2 25/32' },
      { what: 'left-to-scribe', value: '1/8' },
    ],
  };
  // read 1/8 off a wall 3/8 out of its line the edge stands at -1/4; pushed by 9/32 at -17/32, its far side at 38 7/32:
  // 41 - 38 7/32 = 2 25/32, and 1/8 over
  expect(spelled(stripsToRip(job, plan.worked))).toEqual([
    { of: 'case', side: 'right', wide: '2 29/32', long: '64 1/4', width },
  ]);
  const other = worked([...caseDecided, ...walls('1'), ...edge('right')]);
  // the far side at 41 - 1/8 + 9/32 = 41 5/32, the near at 2 13/32; 2 13/32 + 3/8 = 2 25/32, and 1/8 over
  expect(spelled(stripsToRip(other.job, other.plan.worked))).toEqual([
    { of: 'case', side: 'left', wide: '2 29/32', long: '64 1/4', width },
  ]);
});

/** What a strip is ripped and cut to, of what, and how. */
function stripOf(side: 'left' | 'right', ...changes: readonly (readonly Change[])[]) {
  const { plan } = worked([...caseDecided, ...changes.flat()]);
  const part = plan.parts.find(({ id }) => id === fillerId('case', side));
  if (!part) return undefined;
  const ops = plan.operations
    .filter((op) => op.part === part.id)
    .map(({ id, figure }) => `${id} ${w(figure)}`);
  return { of: part.stuff, wide: w(part.width.mark.value), long: w(part.length.mark.value), ops };
}

describe('a filler strip is a part', () => {
  test('ripped and cut to length with the rest, of the stuff of the face frame', () => {
    // 1/2 free at the left, 40 + 3/8 + 1 3/16 between the walls: 41 9/16 - 1/2 - 38 3/4 = 2 5/16 at the right
    expect(stripOf('left', walls('1 3/16'))).toEqual({
      ...{ of: 'oak', wide: '5/8', long: '64 1/4' },
      ops: ['cut/case~fillerleft/rip/1 5/8', 'cut/case~fillerleft/len/1 64 1/4'],
    });
    expect(stripOf('right', walls('1 3/16'))).toMatchObject({ of: 'oak', wide: '2 7/16' });
  });

  test('with a joint by hand where it has one', () => {
    const joint = {
      part: fillerId('case', 'left'),
      kind: 'rabbet',
      at: 'back',
      width: l('1/4'),
      depth: l('1/8'),
    } as const;
    const strip = stripOf('left', walls('1 3/16'), editHandJoint('j1', joint));
    expect(strip?.ops).toHaveLength(3);
    expect(strip?.ops[2]).toMatch(/rabbet.*j1/);
  });

  test('of the sides where there is no face frame; of its own where that is said', () => {
    expect(stripOf('left', walls('1 3/16'), editCase('case', { hasFrame: false }))?.of).toBe('sheeta');
    expect(stripOf('left', walls('1 3/16'), editCase('case', { fillerStock: 'boxply' }))?.of).toBe('boxply');
  });

  test('none while what it is of has no thickness, nor where the edge is scribed or a wider stile is wanted', () => {
    const none = [...editStock('new', { kind: 'stick' }), ...editCase('case', { fillerStock: 'new' })];
    expect(stripOf('left', walls('1 3/16'), none)).toBeUndefined();
    expect(stripOf('left', walls('1 3/16'), edge('left'))).toBeUndefined();
    expect(stripOf('right', walls('1 3/16', '60'))).toBeUndefined();
    expect(stripOf('left')).toBeUndefined();
  });

  test('a strip goes up to the mark', () => {
    // 41 3/8 - 37/64 - 38 3/4: the right, 1 out of its line, 2 3/64, and 1/8: 2 11/64, at the tape 2 3/16
    const free = editRoom({ allowLeft: l('37/64') });
    expect(stripOf('right', walls('1'), free)?.wide).toBe('2 3/16');
    // 37/64 + 1/8 = 45/64, at the tape 23/32
    expect(stripOf('left', walls('1'), free)?.wide).toBe('23/32');
  });

  test('what is read down an edge goes before what the lines make of it', () => {
    // by the lines 1/2; read 3/4 at the middle, where 3/4 - 1/8 of overhang is not there: a strip of 3/4 + 1/8
    const read = [
      ...editGap('case', 'a', { side: 'left', at: l('0'), gap: l('1/8') }),
      ...editGap('case', 'b', { side: 'left', at: l('32'), gap: l('3/4') }),
    ];
    expect(stripOf('left', walls('1 3/16'), read)?.wide).toBe('7/8');
  });

  test('it follows the room; ripped already, it is told by how much it is too narrow', () => {
    const rip = 'cut/case~fillerright/rip/1';
    const { plan, folded } = worked([
      ...caseDecided,
      ...walls('1 3/16'),
      ...tickOf(rip, l('2 7/16')),
      ...editAcross('a', { right: l('1 1/4') }),
    ]);
    const found = misfits(checklistOf(plan, folded));
    // 40 + 3/8 + 1 1/4 - 1/2 - 38 3/4 = 2 3/8, and 1/8 over: 2 1/2, a sixteenth more
    expect(found.map(({ op, was, now }) => [op.id, w(was), w(now)])).toEqual([[rip, '2 7/16', '2 1/2']]);
  });

  test('it is cut before it is fitted', () => {
    const { plan } = worked([...caseDecided, ...walls('1 3/16')]);
    const after = plan.byId.get(installId('case', 'filler'))?.after;
    expect(after).toEqual([
      installId('case', 'level'),
      ...['left', 'right'].flatMap((side) => [
        `cut/case~filler${side}/rip/1`,
        `cut/case~filler${side}/len/1`,
      ]),
    ]);
  });

  test('as ripped it covers every place read, and is no narrower than 3/8', () => {
    const offset = between(-1, 2);
    fc.assert(
      fc.property(fc.array(offset, { minLength: 4, maxLength: 4 }), between(0, 1), (at, gap) => {
        const [a, b, c, d] = at;
        const { job, plan } = worked([
          ...caseDecided,
          ...editRoom({ apart: l('40') }),
          ...editAcross('a', { at: l('0'), ...(a && { left: a }), ...(b && { right: b }) }),
          ...editAcross('b', { at: l('40'), ...(c && { left: c }), ...(d && { right: d }) }),
          ...editGap('case', 'g', { side: 'right', at: l('20'), gap }),
          ...editGap('case', 'h', { side: 'right', at: l('30'), gap: l('1 1/2') }),
        ]);
        const closed = closedIn(job, roomPlanOf(job), { id: 'case', width: l('38 3/4') });
        for (const side of ['left', 'right'] as const) {
          const part = plan.parts.find(({ id }) => id === fillerId('case', side));
          expect(part !== undefined).toBe(isStripAt(closed, side));
          if (!part) continue;
          const wide = part.width.mark.value;
          expect(less(wide, l('3/8'))).toBe(false);
          const read = closed.fillers?.[side].gaps.map(({ value }) => value) ?? [];
          expect(read.filter((each) => less(wide, each))).toEqual([]);
          if (side === 'right') expect([gap, l('1 1/2')].filter((each) => less(wide, each))).toEqual([]);
        }
      }),
      { numRuns: runs(20) },
    );
  });
});
