import { describe, expect, test } from 'vitest';
import { fromMillimetres } from '../../../src/length/length';
import { labelsOf } from '../../../src/plan/label-plan';
import { labelPaperOf, labelSheets } from '../../../src/plan/label-print';
import { drawerLabels, labelPages, partLabels, tooHigh } from '../../../src/screens/paper/label-drawing';
import { at, opened } from '../../plan/laid-sample';
import { expectNeat, textOf, widthOf } from './on-pages';

const { plan } = at(opened.entries);
const paper = labelPaperOf(plan.job);
const label = { wide: paper.wide, high: paper.high };

describe.each([
  ['parts', partLabels(plan)],
  ['drawers and trays', drawerLabels(labelsOf(plan))],
])('labels of %s', (_, labels) => {
  const laid = labelSheets(paper, labels.length);
  if (!laid.ok) throw new Error('they fit');
  const pages = [...labelPages(labels, { ...laid.value, label, widthOf })];

  test('lie on their pages, no text on another or outside its label, none under 4 mm', () => {
    expect(labels.length).toBeGreaterThan(4);
    expect(pages.length).toBe(laid.value.pages);
    expect(tooHigh(labels, { label, widthOf })).toBeUndefined();
    for (const page of pages) expectNeat([page], { wide: page.wide, high: page.high, margin: 12 });
    for (const { ink } of pages) {
      const boxes = ink.flatMap((one) => (one.draw === 'box' ? [one] : []));
      for (const one of ink) {
        if (one.draw !== 'text') continue;
        expect(one.high).toBeGreaterThanOrEqual(4);
        const [x, y] = one.at;
        const own = boxes.find(
          ({ at: [left, top], wide, high }) =>
            x >= left && x <= left + wide && y - one.high >= top && y + one.high / 4 <= top + high,
        );
        expect(own, one.text).toBeDefined();
      }
    }
  });

  test('every one has its name, once', () => {
    const all = pages.map(textOf).join('\n').replaceAll(/\s+/g, ' ');
    for (const { name } of labels) expect(all).toContain(name);
  });
});

test('words that want more height than a label has are refused by how much, to the next millimetre', () => {
  const low = { wide: paper.wide, high: fromMillimetres(20n) };
  const [first] = partLabels(plan);
  const over = tooHigh(partLabels(plan), { label: low, widthOf });
  expect(over?.name).toBe(first?.name);
  // on the left side lines 4, 4.6, 5, 4, 4, 4 and 4 high: what says its face has 30 signs of 3.2, more than 88.9 - 5,
  // and takes two. Each 1.7 times, 50.32; there are 20 less twice 2.5: 35.32 over
  expect(over?.by.equals(fromMillimetres(36n))).toBe(true);
});
