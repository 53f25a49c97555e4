import { describe, expect, test } from 'vitest';
import { tooSmallFor } from '../../../src/trade/machines/least-sizes';
import type { Need } from '../../../src/trade/machines/limits';
import { l, w } from '../../length/write-figures';

// sources: table saw manuals (push block under 6 by 12, nothing under 6 long is crosscut); the rest common practice
describe('tooSmallFor', () => {
  const told = (need: Need, tool: 'fence' | 'sled' | 'router' | 'circular') =>
    tooSmallFor(need, { tool }, { routerBase: l('3') }).map(({ code, by }) => `${code} ${w(by)}`);

  test.each<readonly [string, Need, 'fence' | 'sled' | 'router' | 'circular', readonly string[]]>([
    ['an edging 5/8 wide', { cut: 'rip', width: l('5/8'), length: l('30') }, 'fence', ['narrow-strip 1/8']],
    ['a rail 2 wide', { cut: 'rip', width: l('2'), length: l('30') }, 'fence', ['push-block 4']],
    ['a piece 10 long', { cut: 'rip', width: l('8'), length: l('10') }, 'fence', ['short-along-fence 2']],
    ['a side 17 1/2 wide', { cut: 'rip', width: l('17 1/2'), length: l('64') }, 'fence', []],
    ['a block 4 1/2 long', { cut: 'crosscut', length: l('4 1/2') }, 'sled', ['short-on-sled 1 1/2']],
    ['a shelf 29 long', { cut: 'crosscut', length: l('29') }, 'sled', []],
    [
      'a groove across 4',
      { cut: 'groove', near: l('2'), width: l('3/8'), across: l('4') },
      'router',
      ['under-base 2'],
    ],
    [
      'the same along a saw guide',
      { cut: 'groove', near: l('2'), width: l('3/8'), across: l('4') },
      'circular',
      [],
    ],
  ])('%s', (_, need, tool, want) => expect(told(need, tool)).toEqual(want));

  test('a size that is not known is not called too small', () =>
    expect(told({ cut: 'rip' }, 'fence')).toEqual([]));
});
