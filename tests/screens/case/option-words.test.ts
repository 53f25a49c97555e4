import { expect, test } from 'vitest';
import * as words from '../../../src/screens/case/option-words';
import { newCase } from '../../../src/trade/carcass/case';
import { l } from '../../length/write-figures';
import { said } from '../said';

const c = newCase('c1');

test('one is a cleat, an end, a cross member; two are more', () => {
  const cleat = { count: '', stock: 'pine', wide: '3', deep: '3/8', across: '3/4', notch: '3/4' };
  expect(said(words.cleats({ ...c, cleats: 1 }, cleat))).toContain(' cleat of pine');
  expect(said(words.cleats({ ...c, cleats: 2 }, cleat))).toContain(' cleats of pine');
  const edge = { stock: 'oak', lip: '1/8', mitres: '' };
  expect(said(words.edging({ ...c, mitres: 1 }, edge))).toMatch(/ end mitred\.$/);
  expect(said(words.edging({ ...c, mitres: 0 }, edge))).toMatch(/ ends mitred\.$/);
});

test('how high a back goes is said where the sides run past the top', () => {
  const low = { ...c, hasBack: true, topJoint: 'dado', sidePast: l('2') } as const;
  const up = ' It goes up to the ends of the sides.';
  expect([said(words.backGoesUp(low)), said(words.backGoesUp({ ...low, backHow: 'applied' }))]).toEqual([
    up,
    up,
  ]);
  expect(said(words.backGoesUp({ ...low, backHow: 'groove' }))).toBe(' It goes up into the top.');
  expect(words.backGoesUp({ ...low, sidePast: undefined })).toBeNull();
});

test('the middle stile is spoken of where there are partitions', () => {
  const down = { how: 'as high as the case', meets: 'butted', clear: '1/8', sill: '1/4', toe: '3' };
  const at = {
    ...down,
    stock: 'oak',
    past: '3/16',
    stile: '1 11/16',
    stilesOff: 'glued',
    top: '2',
    bottom: '1 5/8',
  };
  const middle = { ...at, middle: '1 3/8', middleOff: 'held by screws' };
  expect(said(words.frame({ ...c, partitions: 0 }, middle))).toBe(
    'A face frame of oak as high as the case, butted, 3/16 past the sides. Stiles 1 11/16, glued; rails 2 at the top, 1 5/8 at the bottom.',
  );
  expect(said(words.frame({ ...c, partitions: 1 }, middle))).toContain(
    '; middle 1 3/8, held by screws; rails',
  );
  const floor = { ...middle, how: 'with stiles to the floor' };
  expect(said(words.frame({ ...c, hasFrame: true, frameHow: 'floor' }, floor))).toBe(
    'A face frame of oak with stiles to the floor, butted, 3/16 past the sides. Stiles 1 11/16, 1/8 clear of the floor, glued; rails 2 at the top, at the bottom from 1/4 over the case bottom to 3 off the floor.',
  );
});

test('what is taken out is called by its name', () =>
  expect(words.remove('Face frame')).toBe('Remove the face frame'));
