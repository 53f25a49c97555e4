import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches } from '../../src/length/length';
import { readLength } from '../../src/length/read';
import { writeLength, writeMillimetres } from '../../src/length/write';
import { runs } from '../runs';
import { w } from './write-figures';

describe('readLength', () => {
  test.each([
    ['23/32', '23/32', '23/32'],
    ['18 7/64', '18 7/64', '18 7/64'],
    ['18-7/64', '18 7/64', '18 7/64'],
    ['51/2', '25 1/2', '51/2 = 25 1/2'],
    ['1 17/16', '2 1/16', '1 17/16 = 2 1/16'],
    ['3\' 2 3/8"', '38 3/8', '3 ft 2 3/8'],
    ['3\'-2 3/8"', '38 3/8', '3 ft 2 3/8'],
    ["3'2", '38', '3 ft 2'],
    ["5'", '60', '5 ft'],
    ['3 ft 2 3/8 in', '38 3/8', '3 ft 2 3/8'],
    ['3 feet 2 inches', '38', '3 ft 2'],
    ['38.375', '38 3/8', '38.375'],
    ['.7085', '1417/2000', '0.7085'],
    ['0,7085', '1417/2000', '0.7085'],
    ['5.', '5', '5'],
    ['18 mm', '90/127', '18 mm'],
    ['18mm', '90/127', '18 mm'],
    ['1.8 cm', '90/127', '1.8 cm'],
    ['18,5 mm', '185/254', '18.5 mm'],
    ['½', '1/2', '1/2'],
    ['13⅞', '13 7/8', '13 7/8'],
    ['13 ⅜', '13 3/8', '13 3/8'],
    ['3⁄4', '3/4', '3/4'],
    ['3′ 2″', '38', '3 ft 2'],
    ['3’ 2”', '38', '3 ft 2'],
    ['6"', '6', '6'],
    ['-3/4', '-3/4', '-3/4'],
    ['−2', '-2', '-2'],
    ['  7  ', '7', '7'],
    ['007', '7', '007'],
    ['1-½', '1 1/2', '1 1/2'],
    ["3'-½", '36 1/2', '3 ft 1/2'],
    ["3'2-3/8", '38 3/8', '3 ft 2 3/8'],
    ['3 ft. 2 in.', '38', '3 ft 2'],
    ['18-7∕64', '18 7/64', '18 7/64'],
    ['2.5 ft', '30', '2.5 ft'],
    ["3''", '3', '3'],
    ['1 1/2 mm', '15/254', '1 1/2 mm'],
  ])('%s reads %s', (text, value, echo) => {
    const read = readLength(text);
    expect(read.ok && [w(read.value.value), read.value.echo]).toEqual([value, echo]);
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['1/0', 'zero-denominator'],
    ['5 3/0', 'zero-denominator'],
    ['1/2 3/4', 'two-fractions'],
    ['5 1/2 3/4', 'two-fractions'],
    ['2" 3\'', 'feet-after-inches'],
    ['1.2.3', 'two-points'],
    ['1,2.3', 'two-points'],
    ['abc', 'not-a-length'],
    ['12 apples', 'not-a-length'],
    ['1e5', 'not-a-length'],
    ['NaN', 'not-a-length'],
    ['3/', 'no-denominator'],
    ['1.5 1/2', 'fraction-of-a-decimal'],
    ['5 6', 'not-a-length'],
    ['5 - 6', 'not-a-length'],
    ['--5', 'not-a-length'],
    ['3 mm 4', 'not-a-length'],
    ["3' 4 mm", 'not-a-length'],
    ["3' 4' 5", 'not-a-length'],
    ['.', 'not-a-length'],
    ['"', 'not-a-length'],
    ['18 -7/64', 'not-a-length'], // a hyphen with a space is a minus
    ['18- 7/64', 'not-a-length'],
    ["3' - 2", 'not-a-length'],
    ["3'- 2", 'not-a-length'],
    ['18-7', 'not-a-length'],
    ['1–3/4', 'not-a-length'], // a dash is never "and"
    ['1.5-1/2', 'not-a-length'],
    ['¾-1/8', 'not-a-length'],
    ['1 / 2', 'not-a-length'], // a slash with a space divides
    ['1/2/3', 'not-a-length'],
    ['1//2', 'no-denominator'],
    ['5" 3/4', 'not-a-length'],
    ['18 m', 'not-a-length'],
    ['+5', 'not-a-length'],
    ['½½', 'two-fractions'],
    ['9'.repeat(13), 'too-long'],
    [`1/${'9'.repeat(13)}`, 'too-long'],
    ['0.1234567890123', 'too-long'],
    ['1'.repeat(200), 'too-long'],
  ])('“%s” is refused: %s', (text, code) => {
    const read = readLength(text);
    expect(read.ok ? 'read' : read.error.code).toBe(code);
  });

  test.each([
    ['12 apples', 3],
    ['  12 apples', 5],
    ['1½ ½', 3],
    ['- 5 x', 4],
    ['5 1/2 3/0', 6],
    ['2" 3\'', 4],
  ])('“%s” is refused at place %d', (text, at) => {
    const read = readLength(text);
    expect(!read.ok && read.error.at).toBe(at);
  });

  test('a bare number has the unit of the job, never one guessed from its size', () => {
    const read = readLength('18', { unit: 'mm' });
    expect(read.ok && w(read.value.value)).toBe('90/127');
  });

  test.each([
    ['5 1/3', 'odd-denominator'],
    ['-1/4', 'negative'],
    ['121', 'over-120-inches'],
  ])('%s is taken, with a look: %s', (text, code) => {
    const read = readLength(text);
    expect(read.ok && read.value.notes.map((n) => n.code)).toEqual([code]);
  });

  test.each([
    ['1,234', true],
    ['12,345', true],
    ['123,456 mm', true],
    ['-1,234', true],
    ["3' 1,234", true],
    ['0,734', false],
    ['1,5', false],
    ['1,23', false],
    ['1,2345', false],
    ['1234,567', false],
    ['1.234', false],
    ['01,234', false],
    [',234', false],
  ])('%s may be a thousand: %s', (text, may) => {
    const read = readLength(text);
    expect(read.ok && read.value.notes.some((n) => n.code === 'comma-of-thousands')).toBe(may);
  });

  test('1,234 is read as a decimal all the same', () => {
    const read = readLength('1,234');
    expect(read.ok && w(read.value.value)).toBe('1 117/500');
  });

  test('what is written reads back, in inches and in millimetres', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -99999n, max: 99999n }),
        fc.constantFrom(1n, 2n, 3n, 64n, 127n, 1016n),
        (n, d) => {
          const x = inches(n, d);
          const back = readLength(writeLength(x));
          expect(back.ok && back.value.value.equals(x)).toBe(true);
          const mm = fromMillimetres(n, 2n);
          const metric = readLength(writeMillimetres(mm));
          expect(metric.ok && metric.value.value.equals(mm)).toBe(true);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test('no text makes it throw, and what it takes is a length', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789 /.,-\'"mcftin½⅛()x'), maxLength: 24 }),
        (text) => {
          const read = readLength(text);
          if (read.ok) expect(read.value.value.d > 0n).toBe(true);
          else expect(read.error.at).toBeLessThanOrEqual(Math.max(60, text.length));
        },
      ),
      { numRuns: runs(2000) },
    );
  });
});
