import { describe, expect, test } from 'vitest';
import { type BandKind, bandOf, doubtOf, type Figure, inOtherUnit } from '../../src/length/bands';
import { fromMillimetres, inches } from '../../src/length/length';
import { readLength } from '../../src/length/read';
import type { Units } from '../../src/length/units';
import { l } from './write-figures';

const figure = (text: string, unit: Units): Figure => {
  const read = readLength(text, { unit });
  if (!read.ok) throw new Error(text);
  const { value, bare, fraction, notes } = read.value;
  const in_ = read.value.unit === 'mm' || read.value.unit === 'cm' ? 'mm' : 'in';
  return { value, unit: in_, bare, fraction, comma: notes.some((n) => n.code === 'comma-of-thousands') };
};
const doubt = (text: string, unit: Units, kind?: BandKind) => doubtOf(figure(text, unit), kind);

describe('doubtOf', () => {
  // common practice, no source: sheets, boards and kerfs of a shop
  test.each([
    ['18', 'in', 'thickness', '18 mm'],
    ['23/32', 'mm', 'thickness', '23/32'],
    ['762', 'in', 'length', '762 mm'],
    ['30', 'in', 'length', undefined],
    ['30', 'mm', 'length', undefined],
    ['3', 'in', 'kerf', '3 mm'],
    ['1/2', 'mm', undefined, '1/2'],
  ] as const)('%s in %s as a %s: perhaps %s', (text, unit, kind, meant) => {
    const found = doubt(text, unit, kind);
    expect(found?.code === 'other-unit' ? found.meant : undefined).toEqual(meant && l(meant));
  });

  test.each([
    ['100000', 'in', 'length'],
    ['100000', 'mm', 'length'],
    ['3', 'in', 'clearance'],
    ['40', 'in', 'room'],
    ['18 in', 'in', 'thickness'],
    ['0.7 mm', 'in', 'thickness'],
    ['0', 'in', 'thickness'],
  ] as const)('%s in %s as a %s is meant in neither', (text, unit, kind) =>
    expect(doubt(text, unit, kind)).toEqual({
      code: 'out-of-band',
      band: bandOf(kind, text.endsWith('mm') ? 'mm' : unit),
    }),
  );

  test('both ends of a band are in it, in each unit', () => {
    for (const kind of ['thickness', 'length', 'kerf'] as const)
      for (const unit of ['in', 'mm'] as const) {
        const { least, most } = bandOf(kind, unit);
        for (const value of [least, most])
          expect(doubtOf({ value, unit, bare: true, fraction: false, comma: false }, kind)).toBeUndefined();
      }
  });

  test('three figures behind a comma may be a thousand; one, two or four, or after a nought, are a decimal', () => {
    expect(doubt('1,200', 'mm')).toEqual({
      code: 'comma',
      ways: [fromMillimetres(1200n), fromMillimetres(6n, 5n)],
    });
    expect(['1,2', '1,20', '0,734', '1,2000'].map((text) => doubt(text, 'mm'))).toEqual(
      Array(4).fill(undefined),
    );
    expect(['1,200,5', '1,200.5'].map((text) => readLength(text).ok)).toEqual([false, false]);
  });
});

test('the same number in the other unit', () => {
  expect(inOtherUnit(inches(18n), 'in')).toEqual(fromMillimetres(18n));
  expect(inOtherUnit(fromMillimetres(23n, 32n), 'mm')).toEqual(inches(23n, 32n));
});
