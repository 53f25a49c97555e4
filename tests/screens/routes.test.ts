import { describe, expect, test } from 'vitest';
import { readRoute, writeRoute } from '../../src/screens/routes';

describe('routes', () => {
  test.each([
    '#/',
    '#/figure',
    '#/marks/b1',
    '#/saw/b1',
    '#/saw/b1/r1~3~near',
    '#/fit/b1/r1',
    '#/stock/s1',
    '#/stock/s1/case',
    '#/import',
    '#/things',
    '#/bank/b1',
    '#/bank/b1/wood',
    '#/room/wall',
    '#/room/wall/fix1',
    '#/scribe/c1/left~off1',
    '#/screws/c1/anchors~long',
  ])('%s reads and writes back', (hash) => expect(writeRoute(readRoute(hash))).toBe(hash));

  test.each(['', '#', '#/nowhere', '#/marks', '#/saw/', '#/%E0%A4%A', '#/__proto__'])(
    '“%s” leads to the job',
    (hash) => expect(readRoute(hash)).toEqual({ at: 'job' }),
  );
});
