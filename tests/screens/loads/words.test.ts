import { describe, expect, test } from 'vitest';
import { ratio, subtract } from '../../../src/length/length';
import * as words from '../../../src/screens/loads/words';
import { l } from '../../length/write-figures';
import { said } from '../said';

test('a shelf says what it spans, of what, and how it is held and loaded', () => {
  const span = {
    grain: 'along',
    shelf: { span: l('18 7/64'), deep: l('17 7/32'), thick: l('23/32') },
  } as const;
  const at = {
    stuff: 'ply',
    strip: 'no strip',
    tall: undefined,
    back: 'stands free',
    years: 'for a while',
  } as const;
  expect(said(words.shelf(span, at))).toBe(
    'Spans 18 7/64, 17 7/32 deep, 0.719 plywood with its grain along the span. On its front edge no strip; its back stands free; loaded for a while.',
  );
  expect(said(words.shelf(span, { ...at, strip: 'a strip of Oak', tall: '2' }))).toContain(
    'a strip of Oak 2 tall;',
  );
});

// 18 1/2 less a nailer of 18 mm is 17.7913: 451.9 mm to the tenth, in a job that is in inches all the same
test('in inches a shelf is said in inches, whatever its sheets were given in', () => {
  const shelf = { span: l('14 1/4'), deep: subtract(l('18 1/2'), l('18 mm')), thick: l('23/32') };
  const at = { stuff: 'ply', strip: '', tall: undefined, back: '', years: '' } as const;
  expect(said(words.shelf({ grain: 'along', shelf }, at))).toContain('Spans 14 1/4, 17.791 deep, 0.719');
});

test('what it is reckoned with says whether somebody entered it', () => {
  expect(said(words.stiffAsked('…'))).toBe('Enter how stiff its stock is: … million pounds a square inch.');
  expect(words.untilThen(ratio(1200000n))).toBe(
    'Until then every figure here goes by 1.2 million pounds a square inch, the least of its kind.',
  );
  expect(said(words.reckonedWith('1.3'))).toMatch(/1\.3 million .*, as entered\.$/);
});

test('one shelf or several with nothing on them', () => {
  expect(words.empty(1, 1)).toBe('Nothing is said to stand on it.');
  expect(words.empty(30, 30)).toBe('Nothing is said to stand on any of the 30.');
  expect(words.empty(29, 30)).toBe('Nothing is said to stand on the others of the 30.');
});

describe('what helps', () => {
  test('each in words, and whether it is enough', () => {
    expect(words.cure({ code: 'edging', sag: l('0.037'), goes: true })).toBe(
      'A hardwood strip 3/4 thick and 1 1/2 tall along its front edge: 0.037.',
    );
    expect(words.cure({ code: 'upright', sag: l('0.09'), goes: false })).toMatch(
      /: 0\.090, still too far\.$/,
    );
    expect(words.cure({ code: 'thicker', thick: l('25/32') })).toBe('25/32 thick of the same stuff.');
    expect(words.cure({ code: 'shorter', span: l('34 1/4') })).toBe('A span of 34 1/4.');
    expect(words.cure({ code: 'lighter', load: ratio(604n, 10n) })).toBe(
      'Not over 60.4 lb, itself among it.',
    );
  });
});

test('what does not go on says by how much', () => {
  expect(words.unfit('Fern', { code: 'too-tall', by: l('1/32') })).toBe(
    'Fern: 1/32 too tall under the tray above.',
  );
  expect(words.unfit('Shell', { code: 'too-high', by: l('12 1/4') })).toBe(
    'Shell: 12 1/4 too tall for what is left over it.',
  );
  expect(words.unfit('Fern', { code: 'beyond', by: l('2') })).toBe('Fern: 2 past its right end.');
});

test('its ends, and that no fixing is promised', () => {
  expect(words.ends({ left: ratio(334n, 10n), right: ratio(166n, 10n) })).toMatch(
    /^Its left end carries about 33\.4 lb, its right 16\.6 lb\. .* is for its maker\.$/,
  );
});

test('how many trays the things fill, of those there are or over them', () => {
  expect(words.fill(1, 30)).toBe(
    'Laid in rows, each kind on trays of its own, what is here fills 1 tray of 30.',
  );
  expect(words.fill(33, 30)).toMatch(/fills 33 trays, 3 more than there are\.$/);
});
