import { describe, expect, test } from 'vitest';
import { editBoard, editJob, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { checklistOf } from '../../../src/plan/checklist';
import { setupPages } from '../../../src/screens/paper/setup-sheet';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';
import { at, opened } from '../../plan/laid-sample';
import { a4, expectNeat, letter, textOf, widthOf } from './on-pages';

const shelves: readonly Change[] = [
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
];

const printed = (list: Parameters<typeof setupPages>[0]['list'], leaf = a4) => [
  ...setupPages({ list, reach: {}, day: '30 Nov 2026', leaf, widthOf }),
];

function pagesOf(...more: readonly Change[]) {
  const { plan, folded } = worked([...shelves, ...more]);
  return { plan, pages: printed(checklistOf(plan, folded)) };
}

describe('a page for each build', () => {
  test('says what is set, the figure, and a lettered box for each piece; what waits says for what', () => {
    const { pages } = pagesOf();
    // the rip fence with its blade, then the crosscut
    expect(pages.length).toBe(2);
    const [rip = '', cross = ''] = pages.map(textOf);
    expect(rip).toContain('Table saw, single blade');
    expect(rip).toContain('Cabinet · 30 Nov 2026 · Setup 1 · page 1');
    expect(rip).toMatch(/Rip fence at\n12\n/);
    expect(rip).toMatch(/\nA\nShelf 1: rip\nB\nShelf 2: rip/);
    expect(cross).toContain('Not yet: Shelf 1, rip, comes first');
  });

  test('of some setups alone there are no others', () => {
    const { plan, folded } = worked(shelves);
    const list = checklistOf(plan, folded);
    const pages = [
      ...setupPages({ list, reach: {}, some: new Set(list.cards.slice(1)), day: '', leaf: a4, widthOf }),
    ];
    expect(pages.map(textOf).map((text) => /Setup \d/.exec(text)?.[0])).toEqual(['Setup 2']);
  });

  test('nothing is printed of a setup that is done, and its number stays that of the order', () => {
    const { plan } = pagesOf();
    const rips = plan.operations.filter(({ what }) => what === 'rip');
    const { pages } = pagesOf(...rips.flatMap((op) => tickOf(op.id, op.figure)));
    expect(pages.length).toBe(1);
    const [only = ''] = pages.map(textOf);
    expect(only).toContain('Setup 2 · page 1');
    expect(only).not.toContain('Not yet');
  });
});

test.each([
  ['A4', a4],
  ['Letter', letter],
])('of the sample nothing lies outside the margins of %s, and no text on another', (_, leaf) => {
  const { plan, folded } = at(opened.entries);
  const pages = printed(checklistOf(plan, folded), leaf);
  expect(pages.length).toBeGreaterThan(5);
  expectNeat(pages, leaf);
});
