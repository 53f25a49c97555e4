import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/case/join-words';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { said } from '../said';

const c = newCase('c1');
const joins = {
  bottom: '[bottom]',
  top: '[top]',
  partition: '[partition]',
  shelf: '[shelf]',
  bottomPast: '1/8',
  topPast: '1/2',
};
const depths = { dado: '9/32', partition: '1/4', fit: '0', bottom: '3/8', top: '11/32' };
const meets = (over: Partial<Case>) => said(words.meets({ ...c, ...over }, joins));
const deep = (over: Partial<Case>) => said(words.deep({ ...c, ...over }, depths)).trim();
const shelf = { id: 's', kind: 'fixed', bay: 1 } as const;

describe('how a case is joined', () => {
  test('only what it has is asked for', () => {
    expect(meets({ hasTop: false, partitions: 0 })).toBe('The bottom [bottom]. ');
    expect(meets({ partitions: 1, inside: [shelf] })).toBe(
      'The bottom [bottom], the top [top], partitions [partition], fixed shelves [shelf]. ',
    );
  });

  test('how far past the sides is asked for where it lies over them', () => {
    expect(meets({ topJoint: 'over' })).toBe('The bottom [bottom], the top [top], 1/2 past each. ');
    expect(meets({ bottomJoint: 'over', hasTop: false })).toBe('The bottom [bottom], 1/8 past each. ');
    expect(meets({ topJoint: 'over', hasTop: false })).toBe('The bottom [bottom]. ');
  });
});

describe('how deep', () => {
  test('a case without a top has no word of its rabbet', () => {
    expect(deep({ hasTop: false, partitions: 0 })).toBe(
      'Dadoes 9/32 deep in the sides, each 0 wider than its sheet.',
    );
    expect(deep({ hasTop: true, partitions: 1 })).toBe(
      'Dadoes 9/32 deep in the sides, 1/4 for partitions, each 0 wider than its sheet. The rabbet for the top 11/32 deep.',
    );
  });

  test('where nothing is cut nothing is asked', () => {
    expect(deep({ bottomJoint: 'butt', topJoint: 'butt' })).toBe('');
    expect(deep({ bottomJoint: 'rabbet', topJoint: 'over' })).toBe('The rabbet for the bottom 3/8 deep.');
    expect(deep({ bottomJoint: 'butt', topJoint: 'over', partitions: 1 })).toBe(
      'Dadoes 1/4 deep for partitions, each 0 wider than its sheet.',
    );
  });
});

test('a bottom at the lower ends cannot stand off the floor, and what would do is said', () => {
  expect(words.bottomLow.over('4 1/8')).toContain(
    'the case cannot stand 4 1/8 off the floor. Make that 0, or',
  );
  expect(words.bottomLow.rabbet('4 1/8')).toContain(
    'the case cannot stand 4 1/8 off the floor. Make that 0, or',
  );
});
