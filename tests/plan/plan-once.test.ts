import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { jobWith } from '../../src/plan/job-with';
import { planOnce } from '../../src/plan/plan-once';
import { logOf } from './job-of';

const edit = (path: string, value: string | string[]): Change => ({ kind: 'edit', path, value });
const shop = {};
const made = [edit('stock/s1/kind', 'sheet'), edit('stock/s1/planned', '3/4'), edit('name', 'Cabinet')];
const reading = [edit('stock/s1/used', '23/32'), edit('stock/s1/name', 'Birch')];
const onceUsed = (changes: readonly Change[]) => jobOf('j', fold(logOf([...made, ...changes])).values);

test('what a reading would change, looked at, is the plan that stands once the reading is used', () => {
  const before = fold(logOf(made));
  const now = planOnce(jobOf('j', before.values), shop);
  const would = planOnce(jobWith(before, 'j', reading), shop);
  expect(would).not.toBe(now);
  expect(planOnce(onceUsed(reading), shop)).toBe(would);
});

test('another reading, another job or other figures of the shop are worked out anew', () => {
  const first = planOnce(onceUsed(reading), shop);
  const other = onceUsed([edit('stock/s1/used', '45/64'), edit('stock/s1/name', 'Birch')]);
  expect(planOnce(other, shop).stuff).not.toEqual(first.stuff);
  expect(planOnce(onceUsed(reading), {})).not.toBe(first);
  expect(planOnce(jobOf('k', fold(logOf([...made, ...reading])).values), shop).job.id).toBe('k');
});
