import { expect, test } from 'vitest';
import * as said from '../../../src/screens/room/said';
import { refusedText, studErrorText } from '../../../src/screens/room/wall-words';
import { cornerTold, onTape } from '../../../src/screens/room/words';
import { l } from '../../trade/grooves/sample';

const spot = { at: l('40'), plane: 'front' } as const;

test('a width that cannot be is said at its spot, by how much', () => {
  expect(said.rowErrorText({ code: 'less-than-burned', spot, by: l('1/4') }, said.spotAcross)).toBe(
    '40 over the floor in front reads 1/4 less than the tape was started at: read it again, or the burned mark is not lit.',
  );
  expect(said.plumbErrorText({ code: 'spots-differ', missing: 'right', spot })).toBe(
    '40 over the floor in front: read the right line there too.',
  );
});

test('three legs that make no corner say between what the third must lie', () => {
  expect(said.cornerErrorText({ code: 'cannot-be', least: l('10'), most: l('70'), by: l('2') })).toBe(
    'These three make no corner: across must lie between 10 and 70, and is 2 outside. Read them again.',
  );
  expect(cornerTold(l('0'), l('30'))).toBe('The corner is square.');
  expect(cornerTold(l('-1/4'), l('30'))).toMatch(/^The corner opens: over 30 .* 1\/4\.$/);
  expect(cornerTold(l('1/4'), l('30'))).toMatch(/^The corner closes: over 30 .* 1\/4\.$/);
});

test('a misread drop says by how much, and how far a floor may fall', () => {
  const ends = { least: { ...spot, value: l('30') }, greatest: { ...spot, value: l('34') } };
  expect(said.levelErrorText({ code: 'misread', ...ends, by: l('1'), most: l('3') })).toBe(
    '30 and 34 down to the floor differ by 1 more than the 3 a floor may fall: one of them is misread.',
  );
});

test('a stud left out says why and by how much; studs that would touch, what the spacing lacks', () => {
  const mark = { value: l('44'), rest: l('0') };
  const zone = { from: l('45'), to: l('47') };
  expect(refusedText({ why: 'near-zone', at: mark, zone, by: l('1') })).toBe(
    'At 44 not: 1 too near to the place from 45 to 47.',
  );
  expect(studErrorText({ code: 'spacing', by: l('1/2') })).toMatch(/1\/2/);
});

test('what a corner is out by is said as a hand reads it off the tape', () => {
  // Example 6 of room: 4809/20480 of 30 is .2348, nearer 1/4 than 7/32; over 16 .1252 is just over 1/8
  expect(onTape(l('-4809/20480'))).toBe('1/4 scant');
  expect(onTape(l('4809/38400'))).toBe('1/8 strong');
  expect(onTape(l('1/8'))).toBe('1/8');
  expect(onTape(l('1/100'))).toMatch(/^less than 1\/\d+$/);
});
