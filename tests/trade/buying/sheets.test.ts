import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutLines, toBuy, wantsTestSheet } from '../../../src/trade/buying/sheets';
import { runs } from '../../runs';
import { l } from '../grooves/sample';
import { n, need, stick } from './sample';

const lines = (...needs: Parameters<typeof layoutLines>[0]) =>
  layoutLines(needs, () => undefined).map((x) => [x.id, n(x.amount)]);
const spare = { long: l('12'), wide: l('8') };

describe('layoutLines', () => {
  test('what the layout takes, less what is at hand', () => {
    expect(lines(need({ count: 3, have: 1, spare }))).toEqual([['sheets/a', '2']]);
    expect(lines(stick({ count: 3 }))).toEqual([['sticks/oak', '3']]);
  });

  test('one more is offered, apart, where nothing left holds a test piece', () => {
    expect(lines(need({ count: 2 }))).toEqual([
      ['sheets/a', '2'],
      ['sheets/a~tests', '1'],
    ]);
    expect(lines(need({ count: 2, spare }))).toEqual([['sheets/a', '2']]);
  });

  test('all of them at hand: nothing to buy, but one for tests still', () => {
    expect(lines(need({ count: 2, have: 2, spare }))).toEqual([]);
    expect(lines(need({ count: 2, have: 2 }))).toEqual([['sheets/a~tests', '1']]);
  });

  test('more at hand than it takes: nothing to buy, and the whole one left does for tests', () => {
    expect(lines(need({ count: 2, have: 3 }))).toEqual([]);
  });

  test('nothing asked of a stock buys nothing', () => {
    expect(lines(need({ count: 0, pieces: 0 }))).toEqual([]);
  });

  test('not laid out yet: nobody knows what is left, so no sheet is offered', () => {
    expect(lines(need({ how: 'least' }))).toEqual([['sheets/a', '2']]);
  });

  test('sticks have no line for tests', () => expect(lines(stick())).toEqual([['sticks/oak', '2']]));

  test('a stock in two sizes has two lines, told apart by size', () => {
    const both = lines(stick({ count: 1 }), stick({ count: 2, long: l('120 1/2') }));
    expect(both).toEqual([
      ['sticks/oak~96', '1'],
      ['sticks/oak~241~2', '2'],
    ]);
  });

  const whole = fc.integer({ min: 0, max: 40 });
  const some = fc.record({
    count: whole,
    have: whole,
    how: fc.constantFrom('proved', 'laid', 'least' as const),
    held: fc.boolean(),
  });
  const made = ({
    count,
    have,
    how,
    held,
  }: {
    count: number;
    have: number;
    how: 'proved' | 'laid' | 'least';
    held: boolean;
  }) => need({ count, have, how, ...(held ? { spare } : {}) });

  test('bought and at hand are never less than needed', () => {
    fc.assert(
      fc.property(some, (x) => {
        expect(toBuy(x) + x.have).toBeGreaterThanOrEqual(x.count);
      }),
      { numRuns: runs(200) },
    );
  });

  test('more at hand never buys more', () => {
    const bought = (x: Parameters<typeof made>[0]) =>
      layoutLines([made(x)], () => undefined).reduce((so, line) => so + Number(line.amount.n), 0);
    fc.assert(
      fc.property(some, (x) => {
        expect(bought({ ...x, have: x.have + 1 })).toBeLessThanOrEqual(bought(x));
      }),
      { numRuns: runs(200) },
    );
  });

  test('a test piece is never wanting: it is in what is left, in a whole sheet over, or offered, once laid out', () => {
    fc.assert(
      fc.property(some, (x) => {
        const one = made(x);
        if (one.how === 'least' || one.count === 0) return;
        expect(wantsTestSheet(one) || one.spare !== undefined || one.have > one.count).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
