import { expect, test } from 'vitest';
import type { Entry } from '../../../src/job/entry';
import { freshIn, textOf } from '../../../src/screens/handover/outgoing';
import { knownIn } from '../../../src/store/handover/known';

const entry = (count: number): Entry => ({
  ...{ job: 'j', device: 'p', count, at: '2026-11-02T08:30:00.000Z', act: `p.${count}` },
  ...{ label: 'Job named', kind: 'edit', path: 'job/name', value: `Cabinet ${count}` },
});
const entries = [1, 2, 3].map(entry);

test('to a phone that has nothing all is new; to one that has some, the rest; then nothing goes out', () => {
  expect(freshIn(entries, undefined)).toBe(3);
  expect(freshIn(entries, knownIn(entries.slice(0, 2)))).toBe(1);
  expect(freshIn(entries, knownIn(entries))).toBe(0);
});

test('the whole job holds every entry, changes only those the other phone lacks', () => {
  const log = { job: 'j', entries };
  const names = (text: string | undefined) => [...(text ?? '').matchAll(/Cabinet \d/g)].map(([name]) => name);
  const known = knownIn(entries.slice(0, 2));
  expect(names(textOf(log, 'whole', known))).toEqual(['Cabinet 1', 'Cabinet 2', 'Cabinet 3']);
  expect(names(textOf(log, 'changes', known))).toEqual(['Cabinet 3']);
});
