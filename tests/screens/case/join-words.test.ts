import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/case/join-words';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { l } from '../../length/write-figures';
import { said } from '../said';

const c = newCase('c1');
const joins = {
  bottom: '[bottom]',
  top: '[top]',
  partition: '[partition]',
  shelf: '[shelf]',
  bottomPast: '1/8',
  topPast: '1/2',
  sidePast: '2',
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

test('how far the sides run past it is asked for where a top is let in or butted, and there is one', () => {
  for (const topJoint of ['dado', 'butt', 'tongue'] as const)
    expect(meets({ topJoint })).toBe('The bottom [bottom], the top [top], the sides 2 past its upper face. ');
  expect(meets({ topJoint: 'dado', hasTop: false })).toBe('The bottom [bottom]. ');
});

test('sides that cannot run past the top: by how much, and what would do', () => {
  const said = (problem: Parameters<typeof words.joinProblemText>[0]) => words.joinProblemText(problem);
  expect(said({ joined: true, code: 'top-low', by: l('2') })).toBe(
    'The right end of the top lies in a rabbet at the end of its side, so the sides cannot run 2 past it. Make that 0, or join both ends of the top alike.',
  );
  expect(said({ joined: true, code: 'no-top-under', on: 'loose', by: l('2') })).toContain(
    '2 over the top of',
  );
  expect(said({ joined: true, code: 'no-top-under', on: 'edging', by: l('2') })).toContain('lies 2 lower');
  expect(words.joinWarningText({ joined: true, code: 'thin-over', over: l('1/4'), least: l('3/8') })).toBe(
    'Only 1/4 of the sides is left over the dadoes for the top: it may break out. Keep 3/8.',
  );
});

test('the right ends are asked for where they are joined otherwise, a top only where there is one', () => {
  const at = { ...joins, bottomRight: '[bottom right]', topRight: '[top right]' };
  expect(said(words.meets(c, at))).toBe(
    'The bottom [bottom], its right end [bottom right], the top [top], its right end [top right]. ',
  );
  expect(said(words.meets({ ...c, hasTop: false }, at))).toBe(
    'The bottom [bottom], its right end [bottom right]. ',
  );
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
  for (const joint of ['over', 'rabbet', 'mitre'] as const)
    expect(words.joinProblemText({ joined: true, code: 'bottom-low', joint, by: l('4 1/8') })).toContain(
      'the case cannot stand 4 1/8 off the floor. Make that 0, or',
    );
});

describe('tongues', () => {
  const at = { thick: '1/4', room: '1/32', bottom: '[b]', partition: '[p]', shelf: '[s]' };
  const tongues = (over: Partial<Case>) => said(words.tongues({ ...c, ...over }, at)).trim();

  test('are asked for where a part ends in them, and where they lie; a top has one way alone', () => {
    expect(tongues({})).toBe('');
    // said of shelves, and there is none
    expect(tongues({ shelfJoint: 'tongue' })).toBe('');
    expect(tongues({ bottomJoint: 'tongue', topJoint: 'tongue' })).toBe(
      'Tongues 1/4 thick, 1/32 room under them; of the bottom [b]; of the top at the under face.',
    );
    expect(tongues({ shelfJoint: 'tongue', partitionJoint: 'tongue', partitions: 1, inside: [shelf] })).toBe(
      'Tongues 1/4 thick, 1/32 room under them; of partitions [p]; of fixed shelves [s].',
    );
  });

  test('their grooves are wider than what goes in, not than its sheet', () => {
    expect(deep({ bottomJoint: 'tongue', topJoint: 'butt' })).toBe(
      'Dadoes 9/32 deep in the sides, each 0 wider than what goes in.',
    );
  });

  test('as thick as their part leave no shoulder: half of 23/32 would do', () => {
    const thick = { code: 'tongue-thick', part: 'shelf', tongue: l('3/4'), thickness: l('23/32') } as const;
    expect(words.joinProblemText({ joined: true, ...thick })).toBe(
      'Tongues 3/4 thick leave no shoulder: the shelves are 23/32 thick. Half of that would do, 23/64.',
    );
    expect(words.joinProblemText({ joined: true, code: 'tongue-low' })).toContain('lie at the upper face');
    expect(words.joinWarningText({ joined: true, code: 'tongue-room', room: l('0'), least: l('1/64') })).toBe(
      'Only 0 is left under the tongues: glue has nowhere to go. Keep 1/64.',
    );
  });
});

test('a mitre of two thicknesses says by how much they differ', () => {
  const off = { own: l('11/16'), side: l('23/32'), by: l('1/32') };
  expect(words.joinProblemText({ joined: true, code: 'mitre-unlike', part: 'top', ...off })).toBe(
    'A mitre of 45° meets where both are one thickness: the top is 11/16 thick, the sides are 23/32, 1/32 off. Take both out of one sheet, or join them otherwise.',
  );
});
