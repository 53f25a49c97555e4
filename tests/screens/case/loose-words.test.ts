import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/case/loose-words';
import type { Inside } from '../../../src/trade/carcass/case';
import { l } from '../../length/write-figures';
import { said } from '../said';

const at = {
  thick: '13/64',
  room: '1/32',
  wide: '1/4',
  deep: '3/8',
  first: '4 3/4',
  pitch: '1 1/2',
  top: '5',
  front: '2',
  behind: '2 1/2',
  bore: 'a drill press',
  sold: '72',
};
const size = {
  flange: '1/16',
  play: '1/32',
  frontPlay: '1/4',
  backPlay: '0',
  band: '1/8',
  edge: 'Maple',
  spares: '2',
};
const sentence = (own: Partial<Inside>, by: string): string =>
  said(
    words.loose({
      i: { id: 's', kind: 'loose', bay: 1, ...own },
      bay: null,
      count: `${own.count ?? 1}`,
      by,
      at,
      size,
    }),
  );

describe('loose shelves', () => {
  test('with no holes laid out nothing more is asked', () => {
    expect(sentence({}, 'pins')).toBe('1 loose shelf on pins.');
    expect(sentence({ count: 3 }, 'pins')).toBe('3 loose shelves on pins.');
  });

  test('in rows their holes, their rows and their own play are said', () => {
    expect(sentence({ count: 3, heldBy: 'pins' }, 'pins in rows of holes')).toBe(
      '3 loose shelves on pins in rows of holes: holes 1/4 wide and 3/8 deep, the first 4 3/4 over the bottom, ' +
        '1 1/2 apart, leaving 5 at the top; one row 2 from the front edge, the other 2 1/2 from the back, bored ' +
        'with a drill press. Each shelf 1/16 clear of the walls for its pins, with 1/32 play at each end, 1/4 free ' +
        'in front and 0 behind, its front edging 1/8 of Maple. Four pins a shelf, 2 to spare.',
    );
  });

  test('strips ask for themselves and their grooves, and no room for pins', () => {
    const says = sentence({ heldBy: 'strips' }, 'metal strips let in');
    expect(says).toContain('strips 1/4 wide and 13/64 thick in grooves 3/8 deep and 1/32 wider, one 2 from');
    expect(says).toContain('5 short of what is over them; sold 72 long. Each shelf with 1/32 play');
    expect(says).toContain('Four clips a shelf, 2 to spare.');
  });

  test('32 mm apart no pitch is asked', () => {
    const says = sentence({ heldBy: 'lines' }, 'pins 32 mm apart');
    expect(says).toContain('at least 4 3/4 from bottom and top; one row');
    expect(says).toContain('the other at least 2 1/2 from the back');
    expect(says).not.toContain('1 1/2');
  });
});

test('what is wrong says by how much, and what would fit', () => {
  const says = (problem: Parameters<typeof words.pinProblemText>[0]) =>
    words.pinProblemText(problem, () => 'the loose shelves in bay 1');
  expect(says({ code: 'no-hole', in: 's', by: l('1 3/4') })).toBe(
    'No hole fits: the first and the room over it are 1 3/4 more than there is.',
  );
  expect(says({ code: 'rows-cross', in: 's', cut: 'hole', by: l('0') })).toContain('The two rows touch.');
  expect(
    says({ code: 'holes-meet', in: 's', cut: 'hole', with: 'x', by: l('1/32'), most: l('17/64') }),
  ).toContain('run 1/32 into each other, with those of the loose shelves in bay 1. At most 17/64 deep each');
});

test('strips are told with how many and how long, of several openings each', () => {
  const at = { width: l('21/32'), proud: l('0') };
  const longs = (...pieces: readonly string[]) =>
    words.stripsSay({ ...at, pieces: pieces.map((long) => ({ long: l(long) })) });
  expect(longs('59 1/2')).toMatch(
    /^Four strips, at most 59 1\/2 long, in grooves 21\/32 wide .* Cut all four off/,
  );
  // the middle one takes none
  expect(longs('29 1/2', '-1/4', '14')).toMatch(
    /^Four strips an opening, at most 29 1\/2, 14 long from the bottom up, .* Cut the four of an opening off/,
  );
  expect(words.pinProblemText({ code: 'no-strips', in: 's', by: l('5') }, () => '')).toContain('5 too much');
  expect(words.pinWarningText({ code: 'no-strip', in: 's', opening: l('1 9/32') })).toContain('of 1 9/32');
  expect(words.pinWarningText({ code: 'strips-short', in: 's', by: l('4') })).toContain('4 shorter');
});

test('holes left out are told by number, one or several', () => {
  const says = (numbers: readonly number[]) =>
    words.pinWarningText({ code: 'holes-left-out', in: 's', numbers });
  expect(says([8])).toMatch(/: hole 8\.$/);
  expect(says([3, 8, 9])).toMatch(/: holes 3, 8 and 9\.$/);
});
