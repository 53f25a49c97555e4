import { describe, expect, test } from 'vitest';
import { type Job, jobOf } from '../../../src/job/job';
import { bankPlanOf } from '../../../src/plan/bank-plan';
import { problemFaults, saysFor, workedFaults } from '../../../src/screens/case/faults';
import { stopField, stopWarningText } from '../../../src/screens/case/stop-words';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { newBank } from '../../../src/trade/fronts/bank';
import { l } from '../../length/write-figures';
import { framedCase, plainCase, sheets, work } from '../../trade/carcass/sample-case';

const job = jobOf('j', new Map());

function faults(c: Case) {
  const found = partsOf(c, { stuff: sheets(), tape: '1/32' });
  return found.ok ? [] : problemFaults(found.error, c);
}

const shelf = (id: string, at: string): Inside => ({ id, kind: 'fixed', bay: 1, at: l(at) });

describe('a problem is said at the blank that makes it', () => {
  test('a case too narrow at its width, too low at its height', () => {
    const [narrow] = faults({ ...plainCase, width: l('2') });
    expect([narrow?.at, narrow?.blanks]).toEqual(['sizes', ['Outside width']]);
    const [low] = faults({ ...plainCase, height: l('5') });
    expect([low?.at, low?.blanks]).toEqual(['sizes', ['Outside height']]);
  });

  test('a joint that goes through at its depth', () => {
    const [through] = faults({ ...plainCase, backDeep: l('23/32') });
    expect([through?.at, through?.blanks]).toEqual(['back', ['Depth of the rabbet for the back']]);
  });

  test('two shelves in each other under the sentence of the one said last, at both blanks', () => {
    const [over] = faults({ ...plainCase, inside: [shelf('a', '10'), shelf('b', '10 1/4')] });
    expect([over?.at, over?.blanks]).toEqual([
      'in b',
      ['Case bottom to the shelf, no. 2 of the list', 'Case bottom to the shelf, no. 1 of the list'],
    ]);
  });

  test('what is not said yet is asked for, not told as wrong', () => {
    expect(faults({ ...plainCase, width: undefined })).toEqual([]);
  });
});

describe('what is worth a look', () => {
  const texts = (c: Case, ...banks: Job['banks']) =>
    workedFaults(work(c), { job: { ...job, banks }, banks: new Map() })
      .map(({ text }) => text)
      .join(' ');

  test('packing and sill are told where drawers stand, and in that bay alone', () => {
    expect(texts(framedCase)).not.toMatch(/packing|drawer heights/);
    const bank = { ...newBank('b'), of: 'c1', bay: 2 };
    expect(texts(framedCase, bank)).toContain('Slides or runners in bay 2 want packing');
    expect(texts(framedCase, bank)).not.toContain('Slides or runners in bay 1');
    expect(texts(framedCase, { ...bank, of: 'another' })).not.toContain('packing');
  });

  test('a stop strip that a box runs into is told at its place, by how much and what would fit', () => {
    const strikes = { stop: 'a', code: 'stop-strikes', drawer: { no: 2 }, by: l('3/8') } as const;
    expect(stopWarningText({ ...strikes, at: l('23 1/4'), most: l('5') })).toBe(
      'The box of drawer 2 runs 3/8 into the stop strip. With its lower edge 23 1/4 over the bottom it just clears the boxes.',
    );
    expect(stopWarningText({ ...strikes, at: undefined, most: l('1/2') })).toContain(
      'at most 1/2 wide would fit',
    );
    expect(stopWarningText({ ...strikes, at: undefined, most: l('0') })).toContain('No room is left');
    expect(stopField({ ...strikes, at: undefined, most: l('0') })).toBe('at');
  });

  test('a stile over the trays is told at the stiles', () => {
    const [left] = workedFaults(work(framedCase), { job, banks: new Map() }).filter(({ text }) =>
      text.includes('left stile'),
    );
    expect([left?.at, left?.blanks, left?.stops]).toEqual(['frame', ['How wide the stiles are'], false]);
  });

  test('two sides with the same grooves say it once, by their names', () => {
    // a shelf 1/4 over the bottom leaves a thin land beside the dado of the bottom
    const c = { ...plainCase, partitions: 0, inside: [shelf('a', '1/8')] };
    const said = workedFaults(work(c), { job, banks: new Map() }).filter(
      ({ at, text }) => at === 'in a' && !text.startsWith('Spans'),
    );
    expect(said).toHaveLength(1);
    expect(said[0]?.text).toMatch(/^Left side and Right side: /);
  });
});

describe('a shelf that would sag too far says so by itself', () => {
  /** A bay of 28 1/2 and a shelf of 23/32, depth and all else of the plain case. */
  const c = { ...plainCase, partitions: 0, width: l('29 15/16'), inside: [shelf('a', '20')] };
  const said = (bay: Case) =>
    workedFaults(work(bay), { job, banks: new Map() }).filter(({ at }) => at === 'in a');

  test('at 40 pounds a square foot where nobody said what stands on it', () => {
    // sag = 5 P L³ / (384 E I) with P = 40 L d / 144, I = d t³ / 12: .0434028 L⁴ / (E t³); E 1.2 million, t³ .371307:
    // .0434028 × 659,750 / 445,568 = .0643; 28.5 / 600 = .0475; L³ = 445,568 / (600 × .0434028) = 17,110: 25.77
    expect(said(c)).toEqual([
      {
        at: 'in a',
        blanks: [],
        stops: false,
        text: 'Spans 28 1/2: at 40 pounds a square foot it sags 0.064, 0.017 more than .02 a foot, which it would keep over 25 3/4. Loads says what helps.',
      },
    ]);
  });

  test('one no longer than that says nothing', () => {
    expect(said({ ...c, width: l('27 3/16') })).toEqual([]);
    expect(said({ ...c, width: l('27 7/32') })).toEqual([expect.objectContaining({ stops: false })]);
  });
});

describe('beside the keys of a blank', () => {
  const at = (title: string, text: string, stops = true) => ({
    at: 'sizes' as const,
    blanks: [title],
    text,
    stops,
  });

  test('what is wrong with it is said, and what its figure makes wrong elsewhere', () => {
    const now = [at('A', 'A is off'), at('B', 'B is off'), at('A', 'worth a look', false)];
    expect(saysFor({ title: 'A' }, now, [])).toEqual(['A is off', 'B is off']);
  });

  test('what was wrong elsewhere before it was opened is not said again', () => {
    const now = [at('B', 'B is off')];
    expect(saysFor({ title: 'A' }, now, now)).toEqual([]);
    expect(saysFor({ title: 'B' }, now, now)).toEqual(['B is off']);
  });
});

test('boxes that are worked out are told apart from those that are not yet', () => {
  const c: Case = { ...plainCase, inside: [{ id: 'a', kind: 'stop', bay: 2, at: l('10') }] };
  const bank = { ...newBank('b'), of: 'c1', bay: 2, count: 1, boxDeep: l('14'), boxUp: l('1/2') };
  const said = (own: Job['banks'][number]) => {
    const at = { ...job, cases: [c], banks: [own] };
    const worked = work(c, sheets());
    const plan = bankPlanOf(at, own, { stuff: sheets(), worked, shop: {} });
    return workedFaults(worked, { job: at, banks: new Map([['b', plan]]) })
      .filter((x) => x.at === 'in a')
      .map(({ text }) => text);
  };
  expect(said(bank)).toEqual([expect.stringContaining('their boxes must pass under it or over it')]);
  // reveal 3/32 and 1/2 up, the box stands from 19/32 to 10 19/32
  const stocks = { front: 'a', side: 'a', boxBottom: 'a' };
  const boxed = { ...bank, stocks, fronts: { 1: { boxHigh: l('10') } } };
  expect(said(boxed)).toEqual([
    expect.stringContaining('The box of drawer 1 runs 19/32 into the stop strip'),
  ]);
});
