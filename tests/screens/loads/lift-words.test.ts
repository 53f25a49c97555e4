import { expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as words from '../../../src/screens/loads/lift-words';
import { liftSays } from '../../../src/trade/loads/lift';
import { l } from '../../length/write-figures';

const hands = (out: string, up: string) => ({ out: l(out), up: l(up), turn: ratio(0n) });
const lifted = {
  start: hands('15', '12'),
  end: hands('15', '42'),
  careful: false,
  grip: 'fair',
  load: ratio(40n),
  most: ratio(50n),
} as const;
const says = liftSays(lifted);

test('the six multipliers stand in words, and by how much it is over', () => {
  if (!says.ok) throw new Error('lift');
  expect(words.limit('start', says.value.start)).toBe(
    'At the start: 51 lb × how far out .67 × how high the hands .87 × how far up or down .88 × how far turned 1.00 × how often 1.00 × grip .95 = 24.9 lb.',
  );
  // 40 / 24.85 = 1.61
  expect(words.verdict(says.value, ratio(40n), ratio(50n))).toBe(
    "40 lb is 15.1 lb over 24.9 lb, by the lifting equation at the start. It is 1.6 times the equation's limit.",
  );
});

test('beside it the plain line: at the limit one person, over it two', () => {
  expect(words.beside(ratio(50n), ratio(50n))).toContain('no second person');
  expect(words.beside(ratio(51n), ratio(50n))).toMatch(/over 50 lb, two people\.$/);
});

test('with things in it that nobody weighed it is within only as far as weighed', () => {
  const light = liftSays({ ...lifted, load: ratio(20n) });
  if (!light.ok) throw new Error('lift');
  expect(words.verdict(light.value, ratio(20n), ratio(50n))).toMatch(/^20 lb is within 24\.9 lb/);
  expect(words.verdict(light.value, ratio(20n), ratio(50n), 3)).toMatch(/^20 lb is as far as weighed within/);
  expect(words.weighsMore(3)).toBe('In it 3 things are not weighed. It weighs more than this.');
});

test('a step of moving in says when it takes two, and by how much', () => {
  expect(
    words.step({ code: 'set', id: 'c', pounds: ratio(60n), people: 2, over: ratio(10n) }, 'the case'),
  ).toBe('Set the case, 60 lb: two people, 10 lb over for one.');
  expect(words.step({ code: 'drawer-in', id: 'd', pounds: ratio(8n), people: 1 }, 'Drawer 2')).toBe(
    'Put back Drawer 2, 8 lb.',
  );
  expect(words.step({ code: 'anchor', id: 'c' }, 'the case')).toBe('Anchor the case.');
  const shelves = words.allOf('Loose shelf', 2);
  expect(words.step({ code: 'loose-out', id: 'l', pounds: ratio(6n), people: 1 }, shelves)).toBe(
    'Take out Loose shelf (each of the 2), 6 lb.',
  );
});

test('one trip or several, one drawer or none', () => {
  expect(words.cure({ code: 'trips', count: 2n })).toMatch(/^In 2 trips/);
  expect(words.outAtMost(0)).toMatch(/^Not even one/);
  expect(words.outAtMost(1)).toContain('1 drawer at most');
});

test('anchoring is said always, and never a promise', () => {
  expect(words.anchorAlways).toMatch(/^Anchor it to the wall before anything goes in/);
  const tip = {
    tipping: ratio(930n),
    holding: ratio(3577n, 4n),
    code: 'falls',
    short: ratio(501n),
    outAtMost: 1,
    anchor: true,
  } as const;
  expect(words.tip('all', tip)).toMatch(/930 inch-pounds tip it, 894 hold it\. It falls\.$/);
  expect(words.tip('one', { ...tip, code: 'near' })).toMatch(
    /501 short of one and a half times\. Too near\.$/,
  );
});

test('what is loose is told as not counted on, and what of the drawers is not weighed', () => {
  expect(words.looseOut(ratio(736n, 10n))).toMatch(/about 73\.6 lb, are not counted on/);
  expect(words.drawersUnweighed(2)).toBe('In the drawers 2 things are not weighed. It tips more than this.');
});

test('a drawer against its pair', () => {
  const at = { full: ratio(20n), things: ratio(12n), unweighed: 0, share: 40, code: 'within' } as const;
  expect(words.drawerSays(at)).toBe('20 lb, things 12 lb; 40 % of the pair');
  expect(words.drawerSays({ ...at, code: 'over', share: 120, unweighed: 1 })).toBe(
    '20 lb, things 12 lb, 1 not weighed; 120 % of the pair, too much',
  );
  expect(words.drawerSays({ ...at, share: undefined, code: 'rating-missing' })).toMatch(
    /enter what a pair of slides carries$/,
  );
});
