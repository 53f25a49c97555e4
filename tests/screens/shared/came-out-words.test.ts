import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/shared/came-out-words';
import type { Operation } from '../../../src/trade/setups/operation';
import { l } from '../../length/write-figures';
import { at, opened } from '../../plan/laid-sample';

const { plan } = at(opened.entries);
const cut = (what: Operation['what']): Operation => {
  const found = plan.operations.find((op) => op.what === what && op.part === 'case~left');
  if (!found) throw new Error(`no ${what}`);
  return found;
};

describe('a piece that came out another size', () => {
  test('is said by how much, and which way', () => {
    expect(words.cameOut('Bottom', 'length', l('-1/32'))).toBe('Bottom came out 1/32 short');
    expect(words.cameOut('Bottom', 'length', l('1/32'))).toBe('Bottom came out 1/32 long');
    expect(words.cameOut('Top', 'width', l('-1/16'))).toBe('Top came out 1/16 narrow');
    expect(words.cameOut('Top', 'width', l('1/16'))).toBe('Top came out 1/16 wide');
  });

  test('a true size taken away leaves no blank at the end of its act', () => {
    expect(words.measured('Side', '34 1/2')).toBe('As cut: Side 34 1/2');
    expect(words.measured('Side', '')).toBe('As cut: Side');
  });

  test('too far off, it is said by how much, how far mates follow, and what to do', () => {
    const says = words.noMatch({ code: 'too-far', by: l('3/16'), most: l('1/8') });
    expect(says).toBe('That is 3/16 off, and mates follow by at most 1/8. Recut it, or change the drawing.');
    expect(words.noMatch({ code: 'alone' })).toMatch(/^No other part is cut by this size\. Recut it/);
  });
});

describe('a mate cut already', () => {
  const off = (what: Operation['what'], was: string, now: string) =>
    words.offBy({ op: cut(what), was: l(was), now: l(now) }, '1/32');

  test('is long or short, wide or narrow, by how much', () => {
    expect(off('length', '42', '41 31/32')).toBe('Left side: 1/32 long');
    expect(off('length', '41 31/32', '42')).toBe('Left side: 1/32 short');
    expect(off('rip', '17', '17 1/32')).toBe('Left side: 1/32 narrow');
  });

  test('a groove is named, and how far it is off either way', () => {
    expect(off('groove', '4', '4 1/32')).toMatch(/^Left side.*, .+: 1\/32$/);
    expect(off('groove', '4 1/32', '4')).toMatch(/: 1\/32$/);
  });
});

test('what becomes of the outside names its case', () => {
  expect(words.outside('', '43 5/8', '43 19/32', 'across')).toBe(
    'The case comes out 43 19/32 wide instead of 43 5/8.',
  );
});
