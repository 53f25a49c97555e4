import { describe, expect, test } from 'vitest';
import { editJob, editKerfTest, editSheet } from '../../src/job/edits';
import { kerfsTested } from '../../src/plan/kerf-plan';
import { foundText } from '../../src/screens/install/kerf-test-words';
import type { Branch } from '../../src/trade/sheets/tree';
import { l } from '../length/write-figures';
import { spelled } from '../trade/room/sample';
import { worked } from './job-of';

const left: Branch = { is: 'left' };
const rip = (at: string, far: Branch): Branch => ({ is: 'cut', way: 'rip', at: l(at), near: left, far });
/** Crosscut first; three rips lie side by side on one half, one on the other: a line across meets three kerfs. */
const tree: Branch = {
  is: 'cut',
  way: 'cross',
  at: l('40'),
  near: rip('10', rip('10', rip('10', left))),
  far: rip('20', left),
};
const sheet = editSheet('s1', { stock: 'ply', long: l('96'), wide: l('48'), kerf: l('1/8'), tree });
const jobOf = (...changes: readonly Parameters<typeof worked>[0][]) => worked(changes.flat()).job;
// 6 - 2 - 3 27/32 = 5/32
const read = editKerfTest('kerf', { before: l('6'), pieces: l('2'), rest: l('3 27/32') });

describe('kerfsTested', () => {
  test('nothing is found until board, pieces and rest are read; one cut where none is said', () => {
    expect(kerfsTested(jobOf(), {}).map(({ blade, found }) => [blade, found])).toEqual([
      ['kerf', undefined],
      ['single', undefined],
    ]);
    const half = jobOf(editKerfTest('kerf', { before: l('6'), pieces: l('2') }));
    expect(kerfsTested(half, {})[0]?.found).toBeUndefined();
    expect(spelled(kerfsTested(jobOf(read), {})[0]?.found)).toEqual({ ok: true, value: '5/32' });
  });

  test('beside the shop’s, and what that comes to over the kerfs of one sheet', () => {
    const [found] = kerfsTested(jobOf(read, sheet), { kerf: l('1/8') });
    // 5/32 - 1/8 = 1/32, three times
    expect(spelled([found?.off, found?.adds])).toEqual(['1/32', { cuts: 3, by: '3/32' }]);
    expect(found && foundText(l('5/32'), found)).toBe(
      'A cut takes 5/32. Shop figures say 1/8: it is 1/32 more than that. Over the 3 cuts that lie side by side on one sheet that is 3/32.',
    );
  });

  test('as the shop has it, or where the shop has none, nothing differs', () => {
    const [alike] = kerfsTested(jobOf(read, sheet), { kerf: l('5/32') });
    expect([alike?.off, alike?.adds]).toEqual([undefined, undefined]);
    const [none] = kerfsTested(jobOf(read, sheet), {});
    expect(none && foundText(l('5/32'), none)).toBe('A cut takes 5/32. Shop figures say nothing.');
  });

  test('each blade has a test of its own', () => {
    const job = jobOf(
      read,
      editKerfTest('single', { before: l('6'), cuts: 2, pieces: l('2'), rest: l('3 3/4') }),
    );
    // 1/4 over two cuts
    expect(spelled(kerfsTested(job, {}).map(({ found }) => found?.ok && found.value))).toEqual([
      '5/32',
      '1/8',
    ]);
  });
});

describe('a saw of the shop’s own', () => {
  const rail = { id: 'own1', name: 'Rail saw', like: 'plunge', figures: { kerf: l('1/8') } } as const;
  const old = { id: 'own2', name: 'Old saw', like: 'fence', figures: {} } as const;
  const shop = { own: [rail, old, { ...old, id: 'own3', like: 'press' } as const] };
  const test1 = editKerfTest('own1', { before: l('6'), pieces: l('2'), rest: l('3 27/32') });

  test('is tested as those of every shop are, beside its own figure; what has no blade is not', () => {
    const all = kerfsTested(jobOf(test1), shop);
    expect(all.map(({ id, blade }) => `${id} ${blade}`)).toEqual([
      'kerf kerf',
      'single single',
      'own1 kerf',
      'own2 single',
    ]);
    // 6 − 2 − 3 27/32 = 5/32; 5/32 − 1/8
    expect(spelled([all[2]?.found, all[2]?.off])).toEqual([{ ok: true, value: '5/32' }, '1/32']);
  });

  test('its kerfs add up on a sheet only where it cuts the sheets of the job', () => {
    const adds = (...changes: readonly Parameters<typeof worked>[0][]) =>
      kerfsTested(jobOf(test1, sheet, ...changes), shop)[2]?.adds;
    expect(adds()).toBeUndefined();
    expect(spelled(adds(editJob({ guideSaw: 'own1' })))).toEqual({ cuts: 3, by: '3/32' });
  });
});
