import { expect, test } from 'vitest';
import { cameText } from '../../../src/screens/calipers/words';

const reading = { text: '0.745', unit: 'in' } as const;

test.each([
  ['taken', 'Calipers: 0.745 inches. Taken.'],
  ['shown', 'Calipers: 0.745 inches.'],
  ['no-length-wanted', 'Calipers: 0.745 inches. No length is wanted here.'],
  ['nowhere', 'Calipers: 0.745 inches. Open a blank first.'],
] as const)('a reading that was %s', (came, says) => expect(cameText({ reading, came }, false)).toBe(says));

test('at the saw no second figure is shown', () =>
  expect(cameText({ reading, came: 'nowhere' }, true)).toBe('Calipers: no blank is open.'));

test('a reading is said in the unit it came in, or as it is where that is the tape’s', () => {
  const said = (unit: 'mm' | undefined) => cameText({ reading: { text: '18', unit }, came: 'shown' }, false);
  expect(said('mm')).toBe('Calipers: 18 mm.');
  expect(said(undefined)).toBe('Calipers: 18.');
});
