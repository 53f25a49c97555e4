import { describe, expect, test } from 'vitest';
import { readSettings } from '../../src/job/settings';

describe('readSettings', () => {
  test('nothing kept yet gives the usual', () =>
    expect(readSettings({})).toEqual({
      shelf: {},
      theme: 'phone',
      hand: 'right',
      aloud: 'tap',
      text: 'phone',
      calipers: 'tape',
      tape: '1/32',
    }));

  test('what is kept reads back', () => {
    const kept = {
      theme: 'blued',
      hand: 'left',
      aloud: 'each',
      text: 'large',
      calipers: 'mm',
      tape: '1/2 mm',
    };
    const where = { job: 'j1', here: '#/job', saw: '#/saw/b1/r1~1~p1' };
    expect(readSettings({ ...kept, ...where })).toEqual({ shelf: {}, ...kept, ...where });
  });

  test.each([
    ['another theme', { theme: 'pink' }],
    ['a number for a hand', { hand: 1 }],
    ['a tape nobody sells', { tape: '1/7' }],
    ['an address that is no screen', { here: 'https://example.com/' }],
    ['a list for a job', { job: ['j1'] }],
    ['a key of another version', { later: true }],
  ])('%s falls back to the usual', (_, kept) => expect(readSettings(kept)).toEqual(readSettings({})));
});
