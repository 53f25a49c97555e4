import { describe, expect, test } from 'vitest';
import { editBoard } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { type Job, jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { planOf } from '../../src/plan/plan';
import { mostOperations } from '../../src/trade/setups/most';
import { boardOf, boards, entriesOf } from './big-job';

const jobWith = (changes: readonly Change[]): Job => jobOf('big', fold(entriesOf(changes)).values);

describe('planOf', () => {
  test('works out no more operations than a job takes, and says how many there are', () => {
    const { operations, over, order, parts } = planOf(jobWith(boards(60, 10, 100)), {});
    expect([operations.length, over, parts.length]).toEqual([0, 60 * 10 * 101, 60]);
    expect(order).toMatchObject({ ok: true, value: { runs: [] } });
  });

  test('works out as many as it takes', () => {
    const { operations, over } = planOf(jobWith(boards(9, 10, 100)), {});
    expect([operations.length, over]).toEqual([9 * 10 * 101 + 1, undefined]); // and a test cut
  });

  test('one board of more cuts than a layout takes stands as not set out', () => {
    const { operations, over } = planOf(jobWith(boardOf('b', 1000, 900)), {});
    expect([operations.length, over]).toEqual([2000, undefined]);
    expect(operations.filter(({ what }) => what === 'groove').every(({ cannot }) => cannot)).toBe(true);
  });

  test('of more things than there may be operations nothing is worked out', () => {
    const changes = Array.from({ length: mostOperations + 1 }, (_, k) =>
      editBoard(`b${k}`, { name: 'Board', made: 'alike' }),
    ).flat();
    const { parts, over } = planOf(jobWith(changes), {});
    expect([parts, over]).toEqual([[], mostOperations + 1]);
  });
});
