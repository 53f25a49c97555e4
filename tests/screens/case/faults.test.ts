import { describe, expect, test } from 'vitest';
import { type Job, jobOf } from '../../../src/job/job';
import { problemFaults, saysFor, workedFaults } from '../../../src/screens/case/faults';
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
    workedFaults(work(c), { ...job, banks })
      .map(({ text }) => text)
      .join(' ');

  test('packing and sill are told where drawers stand, and in that bay alone', () => {
    expect(texts(framedCase)).not.toMatch(/packing|drawer heights/);
    const bank = { ...newBank('b'), of: 'c1', bay: 2 };
    expect(texts(framedCase, bank)).toContain('Slides in bay 2 want packing');
    expect(texts(framedCase, bank)).not.toContain('Slides in bay 1');
    expect(texts(framedCase, { ...bank, of: 'another' })).not.toContain('packing');
  });

  test('a stile over the trays is told at the stiles', () => {
    const [left] = workedFaults(work(framedCase), job).filter(({ text }) => text.includes('left stile'));
    expect([left?.at, left?.blanks, left?.stops]).toEqual(['frame', ['How wide the stiles are'], false]);
  });

  test('two sides with the same grooves say it once, by their names', () => {
    // a shelf 1/4 over the bottom leaves a thin land beside the dado of the bottom
    const c = { ...plainCase, partitions: 0, inside: [shelf('a', '1/8')] };
    const said = workedFaults(work(c), job).filter(
      ({ at, text }) => at === 'in a' && !text.startsWith('Spans'),
    );
    expect(said).toHaveLength(1);
    expect(said[0]?.text).toMatch(/^Left side and Right side: /);
  });
});

describe('a shelf that would sag too far says so by itself', () => {
  /** A bay of 28 1/2 and a shelf of 23/32, depth and all else of the plain case. */
  const c = { ...plainCase, partitions: 0, width: l('29 15/16'), inside: [shelf('a', '20')] };
  const said = (bay: Case) => workedFaults(work(bay), job).filter(({ at }) => at === 'in a');

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
