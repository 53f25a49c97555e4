import { describe, expect, test } from 'vitest';
import { caseProblemText, caseWarningText } from '../../../src/screens/case/problem-words';
import { l } from '../../length/write-figures';
import { framedCase } from '../../trade/carcass/sample-case';

const problem = (p: Parameters<typeof caseProblemText>[0]) => caseProblemText(p, framedCase);
const warning = (x: Parameters<typeof caseWarningText>[0]) => caseWarningText(x, framedCase);

describe('what keeps a case from being cut says by how much and what would fit', () => {
  test('asks for what is missing by the name of its blank', () => {
    expect(problem({ code: 'missing', field: 'width' })).toBe('Say: outside width.');
    expect(problem({ code: 'missing-stock', stock: 'side' })).toBe(
      'Say what the sides are of, and how thick.',
    );
    expect(problem({ code: 'missing-inside', field: 'at', in: 'fixed1' })).toBe(
      'Say where it stands for the fixed shelf in bay 2.',
    );
  });

  test('a joint that goes through', () =>
    expect(problem({ code: 'through', field: 'dado', depth: l('3/4'), thickness: l('23/32') })).toBe(
      'Depth of the dadoes in the sides: 3/4 goes through stuff 23/32 thick. Leave a third of it.',
    ));

  test('two shelves in each other: by how much, and where the one said last clears the other', () => {
    const shelf = (id: string, at: string) => ({ id, kind: 'fixed', bay: 1, at: l(at) }) as const;
    const c = { ...framedCase, partitions: 0, inside: [shelf('a', '10'), shelf('b', '10 1/4')] };
    const overlap = { code: 'overlap', in: 'b', with: 'a', by: l('15/32') } as const;
    const at = { under: l('9 9/32'), over: l('10 23/32') };
    expect(caseProblemText({ ...overlap, ...at }, c)).toBe(
      'Fixed shelf 2 stands 15/32 in fixed shelf 1. It clears it at 9 9/32 or lower, or at 10 23/32 or higher.',
    );
    expect(caseProblemText({ ...overlap, over: at.over }, c)).toContain(
      '1. It clears it at 10 23/32 or higher.',
    );
  });

  test('no height left: what the sides run past the top counts with feet, bottom and top', () => {
    const shut = { code: 'no-opening', across: false, by: l('1 5/16') } as const;
    expect(problem(shut)).toBe(
      'Feet, bottom and top alone are 1 5/16 over the height. Go higher by more than that.',
    );
    expect(caseProblemText(shut, { ...framedCase, topJoint: 'dado', sidePast: l('60') })).toBe(
      'Feet, bottom, top and what the sides run past it alone are 1 5/16 over the height. Go higher by more than that.',
    );
  });

  test('a top rail that ends over the top, and one under which the top hangs', () => {
    const ends = { round: 'front', code: 'rail-over-top', by: l('1/4'), least: l('2 1/4') } as const;
    expect(problem(ends)).toBe(
      'The top rail ends 1/4 over the top of the case: the frame stands open there. At least 2 1/4 wide.',
    );
    expect(warning({ code: 'top-in-opening', by: l('23/32'), least: l('2 23/32') })).toBe(
      'The top of the case hangs 23/32 into the frame opening: boxes of drawers pass under it. A top rail 2 23/32 wide covers it.',
    );
  });

  test('bays short and over', () => {
    expect(problem({ code: 'bays-off', by: l('-1/8') })).toContain('1/8 short of the clear width');
    expect(problem({ code: 'bays-off', by: l('1/8') })).toContain('1/8 over the clear width');
  });
});

describe('what is worth a look', () => {
  const locked = { code: 'trays-locked', bay: 1, widest: l('23/32'), wide: l('1 11/16') } as const;
  test('a stile over the trays: it comes off, or it must', () => {
    expect(warning({ ...locked, stile: 'left', comesOff: true })).toBe(
      'The left stile stands over the trays of bay 1: it is held by screws and comes off for them.',
    );
    expect(warning({ ...locked, stile: 'middle', comesOff: false, free: l('17/32') })).toBe(
      'Trays in bay 1 are locked in by the middle stile: it must come off, held by screws, or be no wider than 23/32, 17/32 if it is set off centre (it is 1 11/16).',
    );
  });

  test('a cleat sunk or proud', () => {
    expect(warning({ code: 'cleat-proud', by: l('-1/32'), where: 'side' })).toContain(
      'lies sunk by 1/32 in the sides',
    );
    expect(warning({ code: 'cleat-proud', by: l('1/32'), where: 'partition' })).toContain(
      'stands proud by 1/32 in the partitions',
    );
  });
});
