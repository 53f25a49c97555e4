import { describe, expect, test } from 'vitest';
import { editSheet } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { toStored } from '../../src/length/stored';
import { layOp } from '../../src/plan/progress';
import { cutBefore, cutsMade, sheetCodes } from '../../src/plan/sheet-codes';
import type { CutStep } from '../../src/trade/sheets/cut-steps';
import { l } from '../length/write-figures';
import { at, kerf, sampleLog, withMore } from './laid-sample';

/**
 * A sheet of 48 by 24 ripped at 11 into a strip of 11 and one of 24 - 11 - 1/8 = 12 7/8; both crosscut at 20 at one
 * setting, the second figure of the job, then a last rip at 5 of the second strip.
 */
const laid = (last = '5') =>
  editSheet('one', {
    stock: 'sheeta',
    no: 1,
    long: l('48'),
    wide: l('24'),
    kerf,
    tree: {
      is: 'cut',
      way: 'rip',
      at: l('11'),
      near: { is: 'cut', way: 'cross', at: l('20'), near: { is: 'left' }, far: { is: 'left' } },
      far: {
        is: 'cut',
        way: 'cross',
        at: l('20'),
        near: { is: 'cut', way: 'rip', at: l(last), near: { is: 'left' }, far: { is: 'left' } },
        far: { is: 'left' },
      },
    },
  });

function codesOf(log: readonly Entry[]) {
  const { plan, found } = at(log);
  const one = sheetCodes(plan, found).find(({ sheet }) => sheet.id === 'one');
  if (!one) throw new Error('a sheet is wanted');
  return one;
}

describe('the codes of a sheet on paper', () => {
  const log = withMore(sampleLog, laid());
  const one = codesOf(log);

  test('a cut has its number; those at one setting have a letter each besides', () => {
    expect(one.steps.map(({ path }) => one.codes.get(path))).toEqual(['1', '2A', '2B', '3']);
  });

  test('its signs stay when a cut is ticked, and are others once a cut is at another figure', () => {
    expect(one.check).toMatch(/^[2-9A-HJ-NP-Z]{2}$/);
    expect(codesOf(withMore(log, cutsMade(one.sheet, one.steps.slice(0, 2)))).check).toBe(one.check);
    expect(codesOf(withMore(sampleLog, laid('5 1/2'))).check).not.toBe(one.check);
  });

  test('all of its cuts off the paper are as many ticks, each at the figure it was set to', () => {
    const { ticks } = at(withMore(log, cutsMade(one.sheet, one.steps))).folded;
    for (const { path, figure } of one.steps)
      expect(ticks.get(layOp('one', path))?.figure).toBe(toStored(figure.value));
  });
});

test('an offcut whose cuts are made is out of the rack', () => {
  const changes = cutsMade({ ...codesOf(withMore(sampleLog, laid())).sheet, left: 'o1' }, []);
  expect(changes).toMatchObject([{ kind: 'edit', path: 'offcuts/o1/gone', value: true }]);
});

test('cutBefore: a cut inside another waits for it, until that one is made', () => {
  const [outer, inner] = [{ path: 'r' }, { path: 'rn' }] as unknown as readonly [CutStep, CutStep];
  const steps = [outer, inner];
  expect(cutBefore({ steps, done: () => false }, inner)).toBe(outer);
  expect(cutBefore({ steps, done: ({ path }) => path === 'r' }, inner)).toBeUndefined();
  expect(cutBefore({ steps, done: () => false }, outer)).toBeUndefined();
});
