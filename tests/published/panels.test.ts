import { describe, expect, test } from 'vitest';
import type { Stock } from '../../src/job/job';
import {
  add,
  atMost,
  equals,
  fromMillimetres,
  type Length,
  less,
  subtract,
  times,
  toMillimetres,
} from '../../src/length/length';
import { readLength } from '../../src/length/read';
import { roundTo } from '../../src/length/round';
import { writeDecimal } from '../../src/length/write';
import { sheetOf } from '../../src/plan/measured-sheets';
import { stuffOf } from '../../src/plan/parts-of-job';
import { clearances, type Fit, fitFrom, leastSpreadToWarn } from '../../src/trade/grooves/fit';
import { l, w } from '../trade/grooves/sample';

// Source: Voluntary Product Standard PS 1, Structural Plywood (PS 1-19 effective December 1, 2019, title page seen),
// as told second-hand by the makers' association: Performance Category and Thickness
// (apawood-europe.org/products-trademarks/plywood/ trademarks/performance-category/; date not read). Table:
// "Thickness Requirements for Unsanded, Touch Sanded and Overlaid Grades", category, minimum and maximum in inches
// and (mm), recommended thickness label. Seen, every cell as printed. Its note 1: "Thickness requirements are based
// on a tolerance of 1/32 or ±0.8mm for panels with Performance Categories of 13/16 and less, and ±5% for panels with
// Performance Categories greater than 13/16."
const printed: readonly (readonly [string, string, string, string, string, string])[] = [
  ['1/4', '0.219', '5.56', '0.281', '7.14', '0.225'],
  ['11/32', '0.313', '7.94', '0.375', '9.53', '0.322'],
  ['3/8', '0.344', '8.73', '0.406', '10.32', '0.354'],
  ['7/16', '0.406', '10.32', '0.469', '11.91', '0.418'],
  ['15/32', '0.438', '11.11', '0.500', '12.70', '0.451'],
  ['1/2', '0.469', '11.91', '0.531', '13.49', '0.483'],
  ['19/32', '0.563', '14.29', '0.625', '15.88', '0.578'],
  ['5/8', '0.594', '15.08', '0.656', '16.67', '0.609'],
  ['23/32', '0.688', '17.46', '0.750', '19.05', '0.703'],
  ['3/4', '0.719', '18.26', '0.781', '19.84', '0.734'],
  ['13/16', '0.781', '19.84', '0.844', '21.43', '0.788'],
  ['7/8', '0.831', '21.11', '0.919', '23.34', '0.849'],
  ['1', '0.950', '24.13', '1.050', '26.67', '0.970'],
  ['1 1/8', '1.069', '27.15', '1.181', '30.00', '1.091'],
  ['1 1/4', '1.188', '30.16', '1.313', '33.34', '1.213'],
];

const read = (text: string): Length => {
  const found = readLength(text);
  if (!found.ok) throw new Error(found.error.code);
  return found.value.value;
};
const fitted = (readings: readonly Length[], clearance: Length = clearances.glued): Fit => {
  const found = fitFrom(readings, clearance, true);
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};
const sheet = (readings: readonly Length[], more: Partial<Stock> = {}): Stock => ({
  id: 's1',
  name: 'Sheet A',
  kind: 'sheet',
  readings,
  readingIds: [],
  badPlaces: [],
  ...more,
});

/** The tolerance of note 1. */
const toleranceOf = (category: Length): Length =>
  atMost(category, l('13/16')) ? l('1/32') : (times(category, 1n).div(20n) as Length);

describe('the app writes a thickness as the table prints it', () => {
  // Worked from note 1: category less or plus its tolerance, to the thousandth of an inch and the hundredth of a
  // millimetre.
  const mm = (x: Length) =>
    toMillimetres(roundTo(x, fromMillimetres(1n, 100n), 'halfExpand').value).valueOf();

  test.each(printed)('category %s: from %s (%s) to %s (%s)', (category, least, leastMm, most, mostMm) => {
    const [thin, thick] = [
      subtract(l(category), toleranceOf(l(category))),
      add(l(category), toleranceOf(l(category))),
    ];
    expect([thin, thick].map(writeDecimal)).toEqual([least, most]);
    expect([thin, thick].map((x) => mm(x).toFixed(2))).toEqual([leastMm, mostMm]);
  });
});

describe('readings within the printed band of a category', () => {
  const cases = printed.map(([category, least, , most, , label]) => ({
    category,
    least: read(least),
    most: read(most),
    label: read(label),
  }));

  test.each(cases)('$category: each alone is taken as it is read, and none is called odd', (row) => {
    for (const reading of [row.least, row.label, row.most]) {
      const one = fitted([reading, reading, reading, reading]);
      expect(one).toMatchObject({ wideSpread: false, weakGlueLine: false });
      expect(equals(one.width, add(reading, clearances.glued))).toBe(true);
      expect(sheetOf(sheet([reading]))[0]?.says).toBe(`${writeDecimal(reading)}, one reading`);
    }
  });

  test.each(cases)('$category: four readings 1/64 apart are one lot wherever they lie in it', (row) => {
    for (const from of [row.least, row.label, subtract(row.most, leastSpreadToWarn)]) {
      const far = add(from, leastSpreadToWarn);
      expect(fitted([from, far, far, from]).wideSpread).toBe(false);
      expect(fitted([from, add(far, l('0.001'))]).wideSpread).toBe(true);
    }
  });

  test.each(cases)(
    '$category: the thinnest and the thickest allowed are two lots, though both are in it',
    (row) => {
      const both = fitted([row.least, row.most]);
      expect(both).toMatchObject({ wideSpread: true, weakGlueLine: true });
      expect(both.groups).toEqual([[row.least], [row.most]]);
      expect(sheetOf(sheet([row.least, row.most]))[0]?.says).toBe(
        `${writeDecimal(row.least)} to ${writeDecimal(row.most)}, 2 readings`,
      );
    },
  );

  test.each(cases)(
    '$category: parts go by the category until the labelled thickness is read and taken up',
    (row) => {
      // The label lies in the band and is not the category.
      expect(atMost(row.least, row.label) && atMost(row.label, row.most)).toBe(true);
      const planned = sheet([row.label], { planned: l(row.category) });
      expect(stuffOf(planned)).toMatchObject([{ thickness: l(row.category), measured: false }]);
      expect(stuffOf({ ...planned, used: row.label })).toMatchObject([
        { thickness: row.label, measured: true },
      ]);
    },
  );
});

// Source: PS 1-19, as told second-hand by the makers' association (test.apawood-europe.org/products-trademarks/plywood/
// concrete-formwork-2/tolerances-4/; date not read). Seen: "two different sanded plywood panels with a Performance
// Category of ¾ in, but both within manufacturing tolerances, can form a joint with a 1/32″ (0.8mm) variation in
// surface level between the panels", "Sanded Plyform : ¾” (19mm): ±1/64″ (0.4mm); ≥ ¾” (19mm): ± 3%". The readings
// are worked from it; the clearance is ours.
describe('two sanded 3/4 panels within the printed tolerance', () => {
  const [thin, thick] = [subtract(l('3/4'), l('1/64')), add(l('3/4'), l('1/64'))];
  const both = fitted([thin, thick, thin, thick]);

  test('may differ by 1/32, which the app says is more than one lot', () => {
    expect(w(both.spread)).toBe('1/32');
    expect(both.wideSpread).toBe(true);
    expect(less(leastSpreadToWarn, both.spread)).toBe(true);
  });

  test('a groove for the thicker leaves the thinner loose by that 1/32 and the clearance: two stacks', () => {
    expect(equals(both.loosest, add(l('1/32'), clearances.glued))).toBe(true);
    expect(both.weakGlueLine).toBe(true);
    expect(both.groups?.map((group) => group.map(w))).toEqual([
      ['47/64', '47/64'],
      ['49/64', '49/64'],
    ]);
  });

  test('each within its own half of the tolerance is one lot', () => {
    for (const panel of [thin, thick]) expect(fitted([panel, l('3/4')]).wideSpread).toBe(false);
  });
});
