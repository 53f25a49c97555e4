import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as words from '../../../src/screens/shared/sag-words';
import { evenShelf } from '../../../src/trade/loads/even-shelf';
import { l } from '../../length/write-figures';

const shelf = { span: l('38'), deep: l('16'), thick: l('23/32'), stiff: ratio(950000n) };

describe('a shelf by the standard', () => {
  const said = (at: Partial<typeof shelf>): string => {
    const found = evenShelf({ ...shelf, ...at }, 'other');
    return found.ok ? words.standardSays(found.value, 40) : words.shelfErrorText(found.error);
  };

  test('names the limit that fails, and by how much', () => {
    // .0434028 L⁴ / (E t³): at 38, .0434028 × 2,085,136 / (950,000 × .371307) = .2566; 38/144 = .2639, 38/600 = .0633
    expect(said({})).toBe(
      'By the Architectural Woodwork Standards, 40 pounds a square foot and span/144, it may span 38; it sags 0.193 past .02 a foot.',
    );
    // at 39: .2847 against 39/144 = .2708 and .065
    expect(said({ span: l('39') })).toContain(
      'it sags 0.014 past the standard; it sags 0.220 past .02 a foot',
    );
  });

  test('says so where it keeps both, and by how much it is over 200 pounds', () => {
    expect(said({ span: l('20') })).toMatch(/; under that even load it keeps both limits\.$/);
    // 40 × 38 × 24 / 144 = 253.3; 200 × 144 / 40 / 24 = 30
    expect(said({ deep: l('24') })).toContain(
      'its 253.3 lb are 53.3 lb over the 200 lb a shelf may have: not over 30',
    );
  });
});

test('a shelf that is not reckoned says what would do', () => {
  expect(words.shelfErrorText({ code: 'stiff-missing' })).toMatch(/turn it, or enter how stiff it is/);
  for (const what of ['span', 'deep', 'thick', 'load', 'stiff', 'edging'] as const)
    expect(words.shelfErrorText({ code: 'not-positive', what })).toMatch(/\.$/);
});

test('never over 200 pounds, whatever it sags', () => {
  // 320 of things and 4.9 of itself: 124.9 over
  expect(words.tooHeavy(ratio(3249n, 10n), ratio(1249n, 10n))).toBe(
    '324.9 lb, itself among it, is 124.9 lb over the 200 lb a shelf may carry.',
  );
  const sag = { sag: l('0.01'), allowed: l('0.03'), span: l('30'), spanByFoot: l('26'), rough: false };
  expect(words.couldBe(l('18'), { ...sag, mostLoad: ratio(2495n, 10n) })).toMatch(
    /^Not over 200 lb, as on any shelf;/,
  );
});

test('what is not weighed is not told as within', () => {
  const sag = {
    sag: l('0.01'),
    allowed: l('0.03'),
    mostLoad: ratio(90n),
    span: l('30'),
    spanByFoot: l('26'),
  };
  expect(words.sags({ ...sag, rough: false }, 2)).toMatch(/within it as far as things are weighed/);
});

test('a glued back is told as a bound, and only then', () => {
  const sag = {
    sag: l('0.071'),
    allowed: l('0.062'),
    mostLoad: ratio(604n, 10n),
    span: l('34 1/4'),
    spanByFoot: l('35'),
  };
  expect(words.sags({ ...sag, over: l('0.009'), rough: false })).toBe(
    'Sags about 0.071 in the middle; .02 a foot allows 0.062: 0.009 too far.',
  );
  expect(words.sags({ ...sag, rough: true })).toMatch(
    /within it\. Its back is glued: a rough bound, no more\.$/,
  );
  expect(words.couldBe(l('36 15/16'), { ...sag, rough: false })).toBe(
    'Sags just as far as allowed under 60.4 lb over 36 15/16, or with this load over 34 1/4; the load growing with the span, over 35.',
  );
});
