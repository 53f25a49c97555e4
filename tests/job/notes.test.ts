import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { editNote, notedPlaces, noteOf } from '../../src/job/notes';
import type { NotedPlace } from '../../src/job/place-code';

const jobWith = (changes: readonly Change[]) =>
  jobOf('j1', new Map(changes.flatMap((c) => (c.kind === 'edit' ? [[c.path, c.value] as const] : []))));

const places: readonly NotedPlace[] = [
  { of: 'job' },
  { of: 'room' },
  { of: 'part', id: 'case~left' },
  { of: 'setup', id: 'rip~r35d2' },
  { of: 'drawer', id: 'drawers~c1d2' },
];

test('a note stands at its place and at no other; all of it reads back', () => {
  for (const place of places) {
    const job = jobWith(editNote(place, 'a knot'));
    expect(job.unread).toEqual([]);
    expect(places.map((at) => noteOf(job, at))).toEqual(places.map((at) => (at === place ? 'a knot' : '')));
  }
});

test('those of the job and of setups are the fields there were before', () => {
  expect(editNote({ of: 'job' }, 'x')).toMatchObject([{ path: 'note' }]);
  expect(editNote({ of: 'setup', id: 'rip~r35d2' }, 'x')).toMatchObject([{ path: 'recipes/rip~r35d2/note' }]);
});

test('one wiped out is none', () => {
  const job = jobWith([...editNote({ of: 'room' }, 'damp'), ...editNote({ of: 'part', id: 'b1' }, 'knot')]);
  expect(notedPlaces(job)).toEqual(['room', 'part~b1']);
  expect(editNote({ of: 'room' }, '')).toMatchObject([{ value: null }]);
});
