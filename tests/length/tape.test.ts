import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches, isZero, subtract } from '../../src/length/length';
import { readLength } from '../../src/length/read';
import { cutterTape, fineOf, grainOf, showsDecimals, tapes, unitsOf } from '../../src/length/tape';
import { remainder, spoken, writeDecimals, writeLength } from '../../src/length/write';

const three = inches(3n);

describe('each tape', () => {
  test.each(tapes)('%s: a bare number is read in its units, and written so that it reads back', (tape) => {
    const read = readLength('3', { unit: unitsOf(tape) });
    if (!read.ok) throw new Error(read.error.code);
    const back = readLength(writeLength(read.value.value, tape), { unit: unitsOf(tape) });
    expect(back.ok && isZero(subtract(back.value.value, read.value.value))).toBe(true);
  });

  test.each(tapes)('%s: what is read finer stays in the same units', (tape) => {
    expect(unitsOf(fineOf(tape))).toBe(unitsOf(tape));
    expect(unitsOf(cutterTape(tape))).toBe(unitsOf(tape));
  });

  test.each(tapes)('%s: a mark off is told, a twentieth of a sixty-fourth is not', (tape) => {
    expect(remainder(grainOf(tape), tape)?.word).toBe('strong');
    expect(remainder(inches(1n, 1280n), tape)?.word).toBe('on the mark');
  });
});

test('a tape in inches is fractions, in millimetres or thousandths decimals', () => {
  expect(tapes.filter(showsDecimals)).toEqual(['1 mm', '1/2 mm', '0.001']);
  expect(writeDecimals(fromMillimetres(25n, 2n), '1/2 mm')).toBe('12.5 mm');
  expect(writeDecimals(inches(5n, 8n), '0.001')).toBe('0.625');
});

test('a figure is spoken with its unit once', () => {
  expect(spoken(three)).toBe('3 inches');
  expect(spoken(three, undefined, '0.001')).toBe('3.000 inches');
  expect(spoken(fromMillimetres(18n), undefined, '1 mm')).toBe('18 mm');
});
