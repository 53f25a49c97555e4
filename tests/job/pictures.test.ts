import { describe, expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import {
  addPicture,
  clearPictures,
  picturesAt,
  picturesHeld,
  picturesIn,
  putPictureBack,
  takePictureOff,
} from '../../src/job/pictures';
import { goneOver, saysGone } from '../../src/job/tombstones';

const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const one = (id: string, of = 'room') => addPicture({ id, of, hash, size: 1000, wide: 1600, high: 1200 });
const jobWith = (...acts: readonly (readonly Change[])[]) =>
  jobOf('j1', new Map(acts.flat().flatMap((c) => (c.kind === 'edit' ? [[c.path, c.value] as const] : []))));
const idsAt = (job: ReturnType<typeof jobWith>, of: string) => picturesAt(job, of).map(({ id }) => id);

describe('a picture in the log', () => {
  test('is at its place, in the order taken, and every word of it reads back', () => {
    const job = jobWith(one('p1'), one('p2', 'part~case~left'), one('p3'));
    expect(job.unread).toEqual([]);
    expect([idsAt(job, 'room'), idsAt(job, 'part~case~left'), idsAt(job, 'job')]).toEqual([
      ['p1', 'p3'],
      ['p2'],
      [],
    ]);
  });

  test('taken off it is not at its place and counts all the same; put back it is there', () => {
    const off = jobWith(one('p1'), takePictureOff('p1'));
    expect([idsAt(off, 'room'), picturesHeld(off)]).toEqual([[], { count: 1, bytes: 1000 }]);
    expect(idsAt(jobWith(one('p1'), takePictureOff('p1'), putPictureBack('p1')), 'room')).toEqual(['p1']);
  });

  test('deleted for good it counts no more', () => {
    const job = jobWith(one('p1'), one('p2'), clearPictures(['p1']));
    expect([idsAt(job, 'room'), picturesHeld(job)]).toEqual([['p2'], { count: 1, bytes: 1000 }]);
  });

  test('M11: it is taken off by a tombstone, and a note at the place is no part of it', () => {
    expect(saysGone('pictures/p1/gone')).toBe(true);
    expect(goneOver('pictures/p1/hash')).toEqual(['pictures/p1/gone']);
  });

  test('one whose hash is none, or whose place is none, can name no file', () => {
    const bad = jobWith([
      { kind: 'edit', path: 'pictures/p1/of', value: 'room' },
      { kind: 'edit', path: 'pictures/p1/hash', value: '../../etc' },
      { kind: 'edit', path: 'pictures/p1/size', value: 10 },
      { kind: 'edit', path: 'pictures/p2/of', value: 'moon/1' },
      { kind: 'edit', path: 'pictures/p2/hash', value: hash },
      { kind: 'edit', path: 'pictures/p2/size', value: 10 },
      { kind: 'edit', path: 'pictures/p3/size', value: -1 },
    ]);
    expect(picturesIn(bad).map(({ id, of }) => [id, of])).toEqual([['p2', 'job']]);
    expect(bad.unread).toEqual(['pictures/p3/size']);
  });
});
