import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, half, inches, less, subtract } from '../../../src/length/length';
import { grainOf, markAt, type Tape, tapes } from '../../../src/length/tape';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { marksOf } from '../../../src/trade/grooves/marks';
import { runs } from '../../runs';
import { board, l, one, run, w } from './sample';

const first = (near: string, width: string, over: Parameters<typeof board>[0] = {}, tape: Tape = '1/16') => {
  const b = board({ length: l('64 1/4'), runs: [one(near, width)], ...over });
  const [mark] = marksOf(b, layOut(b), tape);
  if (!mark) throw new Error('no mark');
  return mark;
};

describe('marksOf', () => {
  test('Example 5 of length: 21 13/32 of 64 1/4 on a 1/16 tape is 21 7/16, and 42 13/16 from the other end', () => {
    const { near, other } = first('21 13/32', '1/2');
    expect([w(near.value), w(near.rest), w(other.value), w(other.rest)]).toEqual([
      '21 7/16',
      '-1/32',
      '42 13/16',
      '1/32',
    ]);
  });

  test('a far edge off a near edge that is on its mark has its own remainder', () => {
    const { far } = first('19 11/16', '93/128', {}, '1/64');
    expect([w(far.value), w(far.rest)]).toEqual(['20 27/64', '-1/128']);
  });

  test('centre and far edge stand on the rounded near mark, and carry what that left', () => {
    const { near, centre, far } = first('21 13/32', '1/2');
    expect([w(near.value), w(centre.value), w(far.value)]).toEqual(['21 7/16', '21 11/16', '21 15/16']);
    expect([w(near.rest), w(centre.rest), w(far.rest)]).toEqual(['-1/32', '-1/32', '-1/32']);
  });

  test('Example 22 of grooves: the far edge is told from its exact place', () => {
    const { near, far } = first('20 45/128', '.7275', {}, '1/32');
    expect([w(near.value), w(near.rest), w(far.value)]).toEqual(['20 11/32', '1/128', '21 1/16']);
    // 20.3515625 + .7275 = 21.0790625
    expect(w(add(far.value, far.rest))).toBe(w(l('21.0790625')));
  });

  test('gives the mate its own mark, off its own datum', () => {
    const mark = first('2 1/8', '13/32', { datum: l('4 27/32'), mate: l('9/32') }, '1/32');
    expect([w(mark.near.value), w(mark.mate?.value)]).toEqual(['6 31/32', '2 13/32']);
  });

  test('is without a mate when none is given', () => expect(first('3', '1/2').mate).toBeUndefined());

  test('Example 7 of grooves: marks of eleven equal openings each fall within half a 32nd: nothing is added up', () => {
    const eleven = run({
      spacing: 'openings',
      count: 11,
      width: l('13/32'),
      part: l('11/32'),
      span: l('24 5/16'),
    });
    const b = board({ length: l('64 1/4'), datum: l('4 27/32'), runs: [eleven] });
    const marks = marksOf(b, layOut(b), '1/32');
    expect(marks).toHaveLength(11);
    for (const { near } of marks) expect(less(l('1/64'), near.rest.abs() as typeof near.rest)).toBe(false);
  });

  test('marks lie within half a grain of the exact place, and those from both ends meet', () => {
    const property = fc.property(
      fc.bigInt(1n, 5000n),
      fc.bigInt(1n, 997n),
      fc.constantFrom(...tapes),
      (n, d, tape) => {
        const b = board({
          length: l('96 7/64'),
          runs: [run({ spacing: 'given', at: [inches(n, d)], width: l('1/4') })],
        });
        for (const mark of marksOf(b, layOut(b), tape)) {
          expect(less(half(grainOf(tape)), mark.near.rest.abs() as typeof mark.near.rest)).toBe(false);
          expect(add(mark.near.value, mark.near.rest).equals(inches(n, d))).toBe(true);
          expect(add(mark.near.value, mark.other.value).equals(markAt(l('96 7/64'), tape).value)).toBe(true);
          const exact = subtract(l('96 7/64'), inches(n, d));
          expect(add(mark.other.value, mark.other.rest).equals(exact)).toBe(true);
        }
      },
    );
    fc.assert(property, { numRuns: runs(300) });
  });
});
