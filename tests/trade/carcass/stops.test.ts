import { describe, expect, test } from 'vitest';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { stopWarnings } from '../../../src/trade/carcass/stops';
import { warningsOf } from '../../../src/trade/carcass/warnings';
import { l, w } from '../grooves/sample';
import { part, plainCase, sheets, work } from './sample-case';

/** The right bay of the case of Example 1: 18 7/64 wide, 58 11/16 high, 17 7/32 deep to the back, of 23/32. */
const stop: Inside = { id: 'stop', kind: 'stop', bay: 2 };
const stopped = (more: Partial<Inside> = {}, c: Case = plainCase): Case => ({
  ...c,
  inside: [{ ...stop, ...more }],
});
const made = (c: Case) => work(c, sheets());
const problems = (c: Case) => {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code));
};

describe('a stop strip', () => {
  // 18 7/64 − 2 × 1/32 = 18 3/64, down to 18 1/32
  test('stands between the walls of its bay, clear of both, and must enter', () => {
    const { length, width, stage, fitted } = part(made(stopped()), 'stop');
    expect([length.sum.value, length.mark.value, width.sum.value].map(w)).toEqual([
      '18 3/64',
      '18 1/32',
      '1 1/2',
    ]);
    expect([stage, fitted]).toEqual(['after-dry-fit', 'length']);
  });

  test('is fitted to its bay as built: 18 1/8 − 1/16', () => {
    const built = { ...stopped(), built: { bay2: { used: l('18 1/8') } } };
    expect(w(part(made(built), 'stop').length.sum.value)).toBe('18 1/16');
  });

  // 58 11/16 − 2
  test('right under the top while no place is said', () => {
    const at = (c: Case) => made(c).sizes.case.inside.map((i) => i.at && w(i.at));
    expect(at(stopped({ wide: l('2') }))).toEqual(['56 11/16']);
    expect(at(stopped({ at: l('10') }))).toEqual(['10']);
  });
});

describe('what cannot be says by how much', () => {
  const shelf: Inside = { id: 'shelf', kind: 'fixed', bay: 2, at: l('30') };
  test.each([
    // 17 7/32 − 23/32 = 16 1/2
    ['past the back', { front: l('16 9/16') }, ['stop-behind 1/16']],
    ['before the front edges', { front: l('-1/4') }, ['stop-before 1/4']],
    // 18 7/64 − 18 1/4
    ['no length', { play: l('9 1/8') }, ['stop-short 9/64']],
    ['no width', { wide: l('0') }, ['stop-narrow']],
    // 57 1/2 + 1 1/2 − 58 11/16
    ['over the top', { at: l('57 1/2') }, ['above-the-top 5/16']],
  ] as const)('%s', (_, wrong, said) => expect(problems(stopped(wrong))).toEqual(said));

  // 30 + 23/32 − 30 1/2
  test('in a fixed shelf of its bay', () => {
    expect(problems({ ...plainCase, inside: [shelf, { ...stop, at: l('30 1/2') }] })).toEqual([
      'overlap 7/32',
    ]);
    expect(
      problems({
        ...plainCase,
        inside: [
          { ...shelf, bay: 1 },
          { ...stop, at: l('30 1/2') },
        ],
      }),
    ).toEqual([]);
  });
});

test('trays do not come out past one, and drawers are told', () => {
  const trays = plainCase.inside.filter(({ kind }) => kind === 'trays');
  const codes = (own: Partial<Inside>, drawers: readonly number[] = []) =>
    stopWarnings(made({ ...plainCase, inside: [...trays, { ...stop, ...own }] }).sizes, new Set(drawers)).map(
      ({ code }) => code,
    );
  // room of 2 1/2 is left over the trays: a strip of 1 1/2 under the top stands clear of them
  expect(codes({ bay: 1 })).toEqual([]);
  expect(codes({ bay: 1, at: l('40') })).toEqual(['stop-on-trays']);
  expect(codes({ bay: 2, at: l('40') })).toEqual([]);
  expect(codes({}, [2])).toEqual(['stop-on-drawers']);
  expect(warningsOf(made(stopped()), new Set([2])).map(({ code }) => code)).toContain('stop-on-drawers');
});
