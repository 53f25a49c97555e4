import { describe, expect, test } from 'vitest';
import * as asks from '../../../src/screens/marks/asks';
import * as words from '../../../src/screens/marks/change-words';
import { filled } from '../../../src/screens/shared/filled';
import { grooveWords } from '../../../src/screens/shared/machines/groove-words';
import type { Run } from '../../../src/trade/grooves/board';
import { grooveMachineIds } from '../../../src/trade/machines/stored-ids';
import { board } from './sample';

/** A sentence as it is read, each blank as what it asks for; a blank that nothing is asked by stays a name. */
const reads = (sentence: string, of: asks.Asks): string =>
  filled(sentence, (name) => (of[name] ? `<${of[name].title}>` : `{${name}}`)).join('');

const runOf = (run: Partial<Run>, over: Parameters<typeof board>[0] = {}) => {
  const b = board(over, run);
  const [first] = b.runs;
  if (!first) throw new Error('a run is wanted');
  return { board: b, run: first };
};

const runReads = (run: Partial<Run>, over: Parameters<typeof board>[0] = {}) => {
  const of = runOf(run, over);
  return reads(words.runSlip(of.board, of.run), asks.runAsks(of));
};

describe('the sentence of a board', () => {
  test('asks how many only where the boards are alike', () => {
    const slip = (made: 'alike' | 'pair') => {
      const b = board({ made });
      return reads(words.boardSlip(b), asks.boardAsks(b, []));
    };
    expect(slip('alike')).toContain('<What is cut from this layout>, <How many boards alike> alike.');
    expect(slip('pair')).toContain('<What is cut from this layout>. It is <Length of the board> long');
    expect(slip('pair')).not.toMatch(/[{}]/);
  });

  test('a sheet of the job without a name can be chosen all the same', () => {
    const { stock } = asks.boardAsks(board(), [{ id: 's', name: '' }]);
    expect(stock?.as === 'choice' && stock.choices.map((c) => c.label)).toEqual([
      'a sheet without a name',
      'no sheet',
    ]);
  });
});

describe('the sentence of a run', () => {
  test.each([
    ['pitch', 'then every <How far apart, centre to centre>.'],
    ['fill', 'leaving <Room left clear at the far end> clear at the far end'],
    [
      'openings',
      'over <Length shared out; blank takes the rest of the board> from <Where that length starts>',
    ],
    ['given', 'the <Which point of the groove is given> at {places}.'],
  ] as const)('spaced by %s asks for what that needs', (spacing, says) =>
    expect(runReads({ spacing })).toContain(says),
  );

  test.each(['pitch', 'fill', 'openings'] as const)(
    'spaced by %s leaves no blank without a question',
    (spacing) => expect(runReads({ spacing })).not.toMatch(/[{}]/),
  );

  test('counts one groove or several, and none where their places tell', () => {
    expect(runReads({ count: 1 })).toMatch(/^Cut <How many grooves> groove </);
    expect(runReads({ count: 2 })).toMatch(/^Cut <How many grooves> grooves </);
    expect(runReads({ count: undefined })).toMatch(/^Cut <How many grooves> grooves </);
    expect(runReads({ spacing: 'fill' })).toMatch(/^Cut grooves </);
  });

  test('names the face of a partition alone, and where stopped grooves stop', () => {
    expect(runReads({}, { made: 'partition' })).toContain('deep on <Which face>,');
    expect(runReads({})).not.toContain('face');
    expect(runReads({ spacing: 'given' })).not.toContain('They stop');
    const stopped = board().length;
    expect(runReads({ stopped })).toMatch(
      /They stop <Stopped how far short of the front> short of the front\.$/,
    );
  });

  test('says which of several runs it asks about', () => {
    const { board: b, run } = runOf({});
    const two = { ...b, runs: [{ ...run, id: 'other' }, run] };
    expect(asks.runAsks({ board: two, run }).pitch?.title).toBe('How far apart, centre to centre, run 2');
    expect(asks.runAsks({ board: b, run }).pitch?.title).toBe('How far apart, centre to centre');
  });
});

describe('the sentence of a machine', () => {
  test.each(grooveMachineIds)('of the machine %s ends, and asks only for what a board has', (machine) => {
    const b = board({ machine });
    const says = reads(words.machineSlip(grooveWords[machine].sentence), asks.machineAsks(b));
    expect(says).toMatch(/^Cut them on the <What they are cut on>.*\.$/);
    expect(says).not.toMatch(/[{}]/);
  });

  test('asks for the cutter by what it is called', () => {
    const cutter = (machine: 'router' | 'spacers') => asks.machineAsks(board({ machine })).cutter?.title;
    expect(cutter('router')).toContain('Width of the bit');
    expect(cutter('spacers')).toContain('Width of the stack');
  });

  test('puts the blanks of a machine that is added as data in their places', () => {
    expect(reads(words.machineSlip(', the {against} in the jig.'), asks.machineAsks(board()))).toContain(
      ', the <Which end is on the stop> in the jig.',
    );
  });
});

test('a wide groove says which it is, and its face on a partition alone', () => {
  const wide = { id: 'w', face: 'A' } as const;
  const says = (made: 'alike' | 'partition') => {
    const b = board({ made, wides: [wide] });
    return reads(words.wideSlip(b), asks.wideAsks(b, wide));
  };
  expect(says('alike')).toBe(
    'A wide one, <How wide is wide groove 1?> by <How deep is wide groove 1?> deep, near edge at <Where does wide groove 1 go?>.',
  );
  expect(says('partition')).toContain(' on <Which face is wide groove 1 on?>.');
});

test('what the spacing comes to is counted, one or several', () => {
  expect([words.groovesFit(1), words.groovesFit(5)]).toEqual(['1 groove fits', '5 grooves fit']);
  expect(words.boardRemoved('')).toBe('Board removed');
});
