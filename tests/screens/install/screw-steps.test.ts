import { expect, test } from 'vitest';
import { editCase, editPutUp, editScrews, editStock } from '../../../src/job/edits';
import { screwSteps } from '../../../src/screens/install/screw-steps';
import { worked } from '../../plan/job-of';
import { l, w } from '../../trade/grooves/sample';

const { plan } = worked([
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c1', {
    name: 'Cabinet',
    hold: 'outside',
    width: l('36'),
    height: l('64 1/4'),
    depth: l('16'),
    sideStock: 's',
    hasTop: true,
    cleats: 1,
  }),
  ...editPutUp('c1', { fixings: 2, cover: l('1/2') }),
  ...editScrews('x', { of: 'c1', kind: 'case', run: l('26 1/4'), end: l('2 1/8'), most: l('12') }),
]);
const shelf = ['1 1/4', '2', '2 1/2', '3'].map(l);

// Anchors: through 3/4 + 1/2, bite 1 1/4: 2 1/2. Number 8: its shank .060 + 8 × .013 = .164, the least 64th over it
// 11/64; a pilot of 1/8 in hardwood or ply. Case to its neighbour: 3/4 into 3/4, 1 1/8 to 1 3/8: 1 1/4; 26 1/4 less
// 4 1/4 is 22, two spaces of 11: marks at 2 1/8, 13 1/8, 24 1/8.
test('screw, drills and marks, place by place', () => {
  const steps = screwSteps(plan, 'c1', shelf);
  expect(steps.map(({ id, figure }) => [id, w(figure.value)])).toEqual([
    ['anchors~long', '2 1/2'],
    ['anchors~clear', '11/64'],
    ['anchors~pilot', '1/8'],
    ['x~long', '1 1/4'],
    ['x~clear', '11/64'],
    ['x~pilot', '1/8'],
    ['x~mark1', '2 1/8'],
    ['x~mark2', '13 1/8'],
    ['x~mark3', '24 1/8'],
  ]);
  expect(steps[7]?.title).toBe('Case to its neighbour: mark 2 of 3');
});

test('no figure where no screw of the shelf does', () => {
  expect(screwSteps(plan, 'c1', [l('1/2')])).toEqual([]);
});
