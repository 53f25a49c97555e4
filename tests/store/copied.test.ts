import { describe, expect, test } from 'vitest';
import { between, copiedOut, finishedOne, isDue, putOff, readCopied } from '../../src/store/copied';

const start = readCopied(undefined);
const changed = (since: number) => ({ ...start, since });

describe('a reminder to copy out', () => {
  test('comes with the 200th change, not before', () => {
    expect(isDue(start)).toBe(false);
    expect(isDue(changed(between - 1))).toBe(false);
    expect(isDue(changed(between))).toBe(true);
  });

  test('put off, it comes again after as many more', () => {
    const off = putOff(changed(215));
    expect(isDue(off)).toBe(false);
    expect(isDue({ ...off, since: 414 })).toBe(false);
    expect(isDue({ ...off, since: 415 })).toBe(true);
  });

  test('copied out, it is gone, and the day is kept', () => {
    const done = copiedOut(changed(230), '2026-11-26T08:00:00.000Z');
    expect(isDue(done)).toBe(false);
    expect(done).toEqual({ since: 0, remindAt: between, at: '2026-11-26T08:00:00.000Z' });
  });

  test('the first job finished asks at once; the second waits its turn', () => {
    const once = finishedOne(changed(40));
    expect(isDue(once)).toBe(true);
    const out = copiedOut(once, '2026-11-26T08:00:00.000Z');
    expect(isDue(finishedOne({ ...out, since: 40 }))).toBe(false);
  });

  test('put off, the first finished job does not ask again', () =>
    expect(isDue(finishedOne(putOff(finishedOne(changed(40)))))).toBe(false));
});

describe('readCopied', () => {
  test.each([undefined, null, 'x', 3, [], { since: -1 }, { since: 1.5, remindAt: 'soon' }, { at: 4 }])(
    'what is not readable starts anew: %j',
    (json) => expect(readCopied(json as never)).toEqual({ since: 0, remindAt: between }),
  );

  test('what was kept reads back', () => {
    const kept = { since: 12, remindAt: 300, at: '2026-11-26T08:00:00.000Z', finished: true } as const;
    expect(readCopied(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
  });
});
