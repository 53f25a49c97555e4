import { describe, expect, test } from 'vitest';
import { newBoard } from '../../../src/job/job';
import { machineSentence } from '../../../src/screens/marks/machine-sentence';
import { grooveWords } from '../../../src/screens/shared/machines/groove-words';
import { grooveMachineIds } from '../../../src/trade/machines/groove-machines';

/** The sentence as it is read, each blank as what it asks for. */
const reads = (sentence: string, machine = grooveMachineIds[0] ?? 'stop'): string =>
  machineSentence({ sentence }, { ...newBoard('b'), machine })
    .map((part) => (typeof part === 'string' ? part : `<${part.title}>`))
    .join('');

describe('machineSentence', () => {
  test.each(grooveMachineIds)('of the machine %s ends, and asks only for what a board has', (id) => {
    const { sentence } = grooveWords[id];
    const blanks = [...sentence.matchAll(/\{/g)];
    expect(reads(sentence, id)).toMatch(/\.$/);
    expect([...reads(sentence, id).matchAll(/<[^>]+>/g)]).toHaveLength(blanks.length);
  });

  test('asks for the cutter by what it is called', () => {
    expect(reads(grooveWords.router.sentence, 'router')).toContain('Width of the bit');
    expect(reads(grooveWords.spacers.sentence, 'spacers')).toContain('Width of the stack');
  });

  test('puts the blanks of a machine that is added as data in their places', () => {
    expect(reads(', the {against} in the jig.')).toBe(', the <Which end is on the stop> in the jig.');
  });
});
