import { describe, expect, test } from 'vitest';
import { tickOf } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold, merge } from '../../src/job/log';
import { editFoot, editStand } from '../../src/job/room-edits';
import { blocks, checklistOf } from '../../src/plan/checklist';
import { feetStandOf, footStep } from '../../src/plan/feet-set';
import { offersOf } from '../../src/plan/offers';
import { installId } from '../../src/trade/setups/install-steps';
import { type Log, tap } from '../job/phones';
import { l } from '../length/write-figures';
import { caseDecided } from './carried-cabinet-case';
import { logOf, worked } from './job-of';

/** Example 12 of room: shims 3/16, 0, 5/16 and 1/16. */
const read: readonly Change[] = [
  ...editFoot('case', 'front1', { drop: l('34 9/16') }),
  ...editFoot('case', 'front2', { drop: l('34 3/8') }),
  ...editFoot('case', 'back1', { drop: l('34 11/16') }),
  ...editFoot('case', 'back2', { drop: l('34 7/16') }),
];
const set = (foot: string, figure: string) => tickOf(footStep('case', foot), l(figure));
const three = [...set('front1', '3/16'), ...set('front2', '0'), ...set('back2', '1/16')];
const level = installId('case', 'level');
const carried = tickOf(installId('case', 'carry-in'), l('0'));

const standOf = (...changes: readonly Change[]) => {
  const { job, folded } = worked(changes);
  return feetStandOf(job, 'case', folded.ticks);
};

test('the step of a foot is kept under its own id', () => {
  expect(footStep('case', 'front1')).toBe('cut/case~bench/foot~front1/1');
});

test('how many of those read are set; nothing until the last is read', () => {
  expect(standOf()).toBeUndefined();
  expect(standOf(...read.slice(0, 3))).toBeUndefined();
  expect(standOf(...read)).toEqual({ set: 0, of: 4 });
  expect(standOf(...read, ...three)).toEqual({ set: 3, of: 4 });
  expect(standOf(...read, ...three, ...set('back1', '5/16'))).toEqual({ set: 4, of: 4 });
  expect(standOf(...read, ...editStand('case', { across: 3 }))).toBeUndefined();
});

describe('the step level', () => {
  const listOf = (...changes: readonly Change[]) => {
    const { plan, folded } = worked([...caseDecided, ...carried, ...changes]);
    const list = checklistOf(plan, folded);
    const op = plan.byId.get(level);
    if (!op) throw new Error('there is no step level');
    return { list, op, offer: offersOf(list)(level) };
  };

  test('is held back by the foot that is not set, and by nothing once all are', () => {
    const { list, op, offer } = listOf(...read, ...three);
    expect(blocks(list, op)).toEqual([{ by: 'feet', set: 3, of: 4 }]);
    expect(offer.ok).toBe(false);
    const all = listOf(...read, ...three, ...set('back1', '5/16'));
    expect(blocks(all.list, all.op)).toEqual([]);
    expect(all.offer.ok).toBe(true);
  });

  test('of a case whose feet nobody read waits for none of them', () => {
    const { list, op } = listOf();
    expect(blocks(list, op)).toEqual([]);
  });

  test('goes ahead with a reason, and is held back again by an undo of the last foot', () => {
    const why: Change = { kind: 'edit', path: 'let/case~bench/level/1/why', value: 'set by the level alone' };
    const let1 = listOf(...read, ...three, why);
    expect(blocks(let1.list, let1.op)).toEqual([]);
    const log = logOf([...caseDecided, ...carried, ...read, ...three, ...set('back1', '5/16')]);
    const last = log[log.length - 1];
    if (!last) throw new Error('the log is empty');
    const back: Entry = {
      job: 'j',
      device: 'anna',
      count: last.count + 1,
      at: last.at,
      act: 'anna.undo',
      label: 'Undo',
      undoes: last.act,
      kind: 'untick',
      op: footStep('case', 'back1'),
    };
    const { plan } = worked([...caseDecided, ...carried, ...read]);
    const at = (entries: readonly Entry[]) => {
      const list = checklistOf(plan, fold(entries));
      const op = plan.byId.get(level);
      return op && blocks(list, op);
    };
    expect(at(log)).toEqual([]);
    expect(at([...log, back])).toEqual([{ by: 'feet', set: 3, of: 4 }]);
  });
});

describe('a reading taken again', () => {
  const setAfter = (changes: readonly Change[]) => standOf(...read, ...three, ...changes)?.set;

  test('leaves its foot alone to be set', () => {
    expect(setAfter(editFoot('case', 'front1', { drop: l('34 5/8') }))).toBe(2);
    expect(setAfter(editFoot('case', 'front1', { drop: l('34 9/16') }))).toBe(3);
    expect(setAfter(editFoot('case', 'back1', { drop: l('34 5/8') }))).toBe(3);
  });

  test('of the high point leaves all that stand by it to be set, but not the point itself', () => {
    // 34 5/16 is 1/16 higher: every other foot wants 1/16 more
    expect(setAfter(editFoot('case', 'front2', { drop: l('34 5/16') }))).toBe(1);
  });

  test('on another phone, while the foot is ticked here, leaves it to be set once both are together', () => {
    const start = tap([], 'anna', read);
    // Anna reads the floor 1/16 lower at the front left; Ben sets it to the 3/16 of before
    const anna = tap(start, 'anna', editFoot('case', 'front1', { drop: l('34 5/8') }));
    const ben = tap(start, 'ben', set('front1', '3/16'));
    const stand = (log: Log) => feetStandOf(jobOf('j', fold(log).values), 'case', fold(log).ticks);
    expect(stand(ben)).toEqual({ set: 1, of: 4 });
    expect(stand(merge(anna, ben))).toEqual({ set: 0, of: 4 });
    expect(stand(merge(ben, anna))).toEqual({ set: 0, of: 4 });
    // set to 34 5/8 - 34 3/8 = 1/4 it is set
    expect(stand(tap(merge(anna, ben), 'ben', set('front1', '1/4')))).toEqual({ set: 1, of: 4 });
  });
});
