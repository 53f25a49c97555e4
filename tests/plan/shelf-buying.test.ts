import { expect, test } from 'vitest';
import { editCase, editInside } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { buyView } from '../../src/plan/buying';
import { amountWords, lineName, whyText } from '../../src/screens/buy/words';
import type { Inside } from '../../src/trade/carcass/case';
import { l } from '../length/write-figures';
import { bookcase } from './bookcase';
import { worked } from './job-of';

const groups: readonly string[] = ['pins', 'clips', 'strips', 'edging'];

/** What the list says of what holds the two loose shelves of the bookcase, whose case is called Bookcase. */
function says(own: Partial<Inside>, ...more: readonly (readonly Change[])[]): readonly string[] {
  const { plan, folded } = worked([
    ...bookcase,
    ...editCase('case', { name: 'Bookcase' }),
    ...editInside('case', 'pins', own),
    ...more.flat(),
  ]);
  const { open } = buyView({ plan, needs: [], ticks: folded.ticks, frontScrew: () => undefined });
  return open
    .filter(({ group }) => groups.includes(group))
    .flatMap(({ rows }) => rows)
    .map(({ line }) => {
      const { figure, unit } = amountWords(line);
      return `${figure} ${unit}: ${lineName(line)}. ${whyText(line.why)}`.replaceAll('\u00a0', ' ');
    });
}

test('four pins a shelf, with no size while no holes are laid out', () => {
  expect(says({})).toEqual(['8 pins: Pins for loose shelves. Four a shelf: Bookcase 2 shelves.']);
  expect(says({ count: 0 })).toEqual([]);
});

test('pins by their hole, a line for all alike, and the spares', () => {
  const rows = { heldBy: 'pins', first: l('3'), pitch: l('2') } as const;
  const more = editInside('case', 'more', { kind: 'loose', bay: 1, count: 1, ...rows });
  // 4 × 2 + 3, and 4 more
  expect(says({ ...rows, spares: 3 }, more)).toEqual([
    '15 pins: Pins for holes 1/4 wide. Four a shelf: Bookcase 2 shelves, Bookcase 1 shelf; 3 to spare.',
  ]);
  expect(says({ ...rows, width: l('5/16') }, more)).toHaveLength(2);
});

test('strips by the opening, then by what they are sold as, and four clips a shelf', () => {
  const strips = {
    heldBy: 'strips',
    width: l('5/8'),
    stripThick: l('3/16'),
    depth: l('3/16'),
    endRoom: l('1/4'),
  } as const;
  // three openings: 14; 28 3/4 − 14.714 = 14.036; 48 − 3 − 2 × .714 = 43.572, less 29.464 is 14.108; each 1/4 short
  expect(says(strips)).toEqual([
    '8 clips: Clips for strips 5/8 wide. Four a shelf: Bookcase 2 shelves.',
    '12 strips: Strips 5/8 wide, 3/16 thick. Cut to at most: 4 of 13.858, 4 of 13.786, 4 of 13 3/4. Say on the page of the case how long they are sold.',
  ]);
  // 36 hold two: 36 − 13.858 − 13.786 − 1/16 = 8.2935; the third out of another: 36 − 13 3/4 = 22 1/4
  expect(says({ ...strips, stripSold: l('36') })[1]).toBe(
    '8 strips: Strips 5/8 wide, 3/16 thick, sold 36 long. Cut to at most: 4 of 13.858, 4 of 13.786, 4 of 13 3/4. The strips of all four grooves cut alike. Left of each: 8.294, 22 1/4, a saw cut of 1/16 off.',
  );
});

test('edging on the front of loose shelves by the foot, as wide as they are thick', () => {
  const rows = { heldBy: 'pins', first: l('3'), pitch: l('2'), band: l('1/8'), play: l('1/16') } as const;
  // 30 − 2 × .714 − 2 × 1/16 = 28.447, down to 28 7/16; two are 56 7/8; a tenth over 62 9/16: 5.21 ft
  expect(says(rows)[0]).toBe(
    '6 ft: Band 1/8 thick, for edges of 0.714. 2 shelves, 4.7 ft along their front edges, and 10 % over.',
  );
  expect(says({ ...rows, band: l('0') }).some((line) => line.includes('Band'))).toBe(false);
  // of a stick of the job it is a part, and no band
  const wood = editCase('case', { shelfedgeStock: 'strips' });
  expect(says(rows, wood)).toEqual(['8 pins: Pins for holes 1/4 wide. Four a shelf: Bookcase 2 shelves.']);
});
