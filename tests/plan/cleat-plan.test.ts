import { describe, expect, test } from 'vitest';
import { editCase, editPutUp } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editFoot, editRoom, editStand, editUpright } from '../../src/job/room-edits';
import { cleatOnOf, nailerIsCleat } from '../../src/plan/cleat-on';
import { cleatAt, cleatOf, ownStretch } from '../../src/plan/cleat-plan';
import { l, w } from '../trade/grooves/sample';
import { cleatedCase as decided } from './cleated-case';
import { worked } from './job-of';

const plan = (...changes: readonly Change[]) => worked(changes).plan;
const low = (...changes: readonly Change[]) => w(cleatAt(plan(...changes), 'c1').height?.low);

describe('cleatAt', () => {
  test('where the case has its cleat: under its top, its room of 1/16 over it', () => {
    // 60 - 3/4 - (3 + 1/16) = 56 3/16
    expect(low(...decided(1))).toBe('56 3/16');
    // the highest of three
    expect(low(...decided(3))).toBe('56 3/16');
    expect(low(...decided(0))).toBe('none');
  });

  test('without cleats the top nailer of the case is it: as thick, as wide and as high as that stands', () => {
    // 60 - 3/4 - 2 3/4 = 56 1/2
    const nailed = [...decided(0), ...editCase('c1', { hasNailers: true, nailerWide: l('2 3/4') })];
    expect(low(...nailed)).toBe('56 1/2');
    const at = plan(...nailed);
    const { thick, wide } = cleatOf(at, 'c1');
    expect([w(thick), w(wide), cleatOnOf(at.job, 'c1')]).toEqual(['3/4', '2 3/4', 'case']);
    expect(nailerIsCleat(at.job, 'c1')).toBe(true);
    // a cleat that was said stands for it, and cleats of its own
    expect(nailerIsCleat(plan(...nailed, ...editPutUp('c1', { cleatAt: l('50') })).job, 'c1')).toBe(false);
    expect(nailerIsCleat(plan(...decided(1)).job, 'c1')).toBe(false);
    // none said is none
    expect(low(...nailed, ...editCase('c1', { nailers: 0 }))).toBe('none');
  });

  test('a foot that screws lifts it by what it stands at on the high point; a shim there is none', () => {
    const screw = editStand('c1', { footHow: 'screw', footHigh: l('1 1/4') });
    expect(low(...decided(1), ...screw)).toBe('57 7/16');
    expect(low(...decided(1), ...editStand('c1', { footHigh: l('1 1/4') }))).toBe('56 3/16');
  });

  test('what is said stands, and that the case has it elsewhere is told', () => {
    const said = cleatAt(plan(...decided(1), ...editPutUp('c1', { cleatAt: l('56') })), 'c1');
    expect([w(said.height?.low), said.wrong?.code]).toEqual(['56', 'differs']);
  });

  test('one in the case stands between bottom and top, one on the wall behind its back', () => {
    const at = (height: string, on: 'case' | 'wall') =>
      cleatAt(
        plan(...decided(0), ...editPutUp('c1', { cleatAt: l(height), cleatOn: on, cleatWide: l('3') })),
        'c1',
      ).wrong;
    // inside from 4 3/4 to 59 1/4; the back covers from 4 to 60
    expect([at('56 1/4', 'case'), at('57', 'wall'), at('4', 'wall')]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    const [over, under] = [at('57', 'case'), at('4', 'case')];
    expect(over?.code === 'over' && w(over.by)).toBe('3/4');
    expect(under?.code === 'under' && w(under.by)).toBe('3/4');
  });

  test('from the level line: under the feet where all were read, else in the room', () => {
    const room = editUpright('u', { at: l('2'), drop: l('36'), rise: l('60') });
    const line = (...more: readonly Change[]) =>
      w(cleatAt(plan(...decided(1), ...room, ...more), 'c1').height?.fromLine);
    // 56 3/16 - 36
    expect(line()).toBe('20 3/16');
    const feet = (['front1', 'front2', 'back1', 'back2'] as const).flatMap((foot, k) =>
      editFoot('c1', foot, { drop: l(k === 2 ? '35 3/4' : '36 1/8') }),
    );
    // 56 3/16 - 35 3/4, the least of them
    expect(line(...feet)).toBe('20 7/16');
    expect(line(...feet.slice(1))).toBe('20 3/16');
  });
});

describe('cleatOf', () => {
  test('a cleat on the wall is none of the case: how thick and wide it is must be said', () => {
    const wall = cleatOf(plan(...decided(1), ...editPutUp('c1', { cleatOn: 'wall' })), 'c1');
    expect(wall).toEqual({ thick: undefined, wide: undefined });
    const own = cleatOf(plan(...decided(1)), 'c1');
    expect([w(own.thick), w(own.wide)]).toEqual(['3/4', '3']);
  });
});

test('a case whose own cleat begins elsewhere ends where that of all ends', () => {
  const all = editRoom({ cleatFrom: l('2'), cleatTo: l('58') });
  const { job } = plan(...decided(1), ...all, ...editPutUp('c1', { cleatFrom: l('30') }));
  const own = ownStretch(job, 'c1');
  expect([w(own?.from), w(own?.to)]).toEqual(['30', '58']);
  expect(ownStretch(plan(...decided(1), ...all).job, 'c1')).toBeUndefined();
});
