import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { inches, ratio } from '../../src/length/length';
import { spokenNumber } from '../../src/length/write';
import { Said } from '../../src/screens/double/value';
import { type Ask, AskBlank } from '../../src/screens/shared/ask';
import { said } from './said';

const blank = (ask: Ask) => said(<AskBlank ask={ask} open={undefined} onOpen={() => undefined} />);

describe('a number without a unit is not spoken as inches', () => {
  test.each([
    [ratio(75n), '75'],
    [ratio(5n, 4n), '1 and 1/4'],
    [ratio(1n, 2n), '1/2'],
    [ratio(-3n, 2n), 'minus 1 and 1/2'],
    [ratio(0n), '0'],
  ])('%s is %s', (x, words) => expect(spokenNumber(x)).toBe(words));

  const pounds = { as: 'amount', title: 'Pounds one carries', save: () => [] } as const;

  test('in a blank, given or usual', () => {
    expect(blank({ ...pounds, now: ratio(75n) })).toBe('Pounds one carries: 75');
    expect(blank({ ...pounds, now: undefined, usual: ratio(50n) })).toBe('Pounds one carries: 50 usual');
  });

  test('a length in a blank says its inches', () => {
    expect(blank({ as: 'length', title: 'Length', now: inches(49n, 2n), save: () => [] })).toBe(
      'Length: 24 and 1/2 inches',
    );
  });

  test('where two phones wrote different pounds, a slope, a share', () => {
    const stamp = { job: 'j', device: 'p', count: 1, at: '2026-11-02T08:30:00.000Z', act: 'p.1', label: '' };
    const of = (path: string, value: string) => {
      const entry: Entry = { ...stamp, kind: 'edit', path, value };
      return said(<Said entry={entry} job={jobOf('j', new Map())} />);
    };
    expect(
      ['banks/b/rating', 'banks/b/slope', 'banks/b/fronts/f1/weight', 'things/t/heavy', 'carry'].map((p) =>
        of(p, '75/1'),
      ),
    ).toEqual(Array.from({ length: 5 }, () => '75'));
    expect(of('banks/b/lap', '3/16')).toBe('3/16 inches');
  });
});
