import { expect, test } from 'vitest';
import { editCase, editStock } from '../../../src/job/edits';
import { casesWithout } from '../../../src/screens/parts/not-worked';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const sound = {
  name: 'Low case',
  width: l('30'),
  height: l('40'),
  depth: l('12'),
  sideStock: 'ply',
  hasBack: true,
  backStock: 'ply',
};
const ply = editStock('ply', { used: l('23/32') });

test('a case whose joints do not go has no parts and is named; a sound one is not', () => {
  const { plan } = worked([
    ...ply,
    ...editCase('a', sound),
    ...editCase('b', { ...sound, name: 'High case', backWide: l('14') }), // a rabbet wider than the case is deep
  ]);
  expect(casesWithout(plan).map((c) => c.name)).toEqual(['High case']);
});
