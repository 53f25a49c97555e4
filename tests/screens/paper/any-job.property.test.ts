import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checklistOf } from '../../../src/plan/checklist';
import { setupCodes } from '../../../src/plan/setup-codes';
import { partPages } from '../../../src/screens/paper/part-list';
import { setupPages } from '../../../src/screens/paper/setup-sheet';
import { anyCase } from '../../plan/any-case';
import { worked } from '../../plan/job-of';
import { runs } from '../../runs';
import { a4, expectNeat, letter, textOf, widthOf } from './on-pages';

const narrow = { ...a4, margin: 30 };

test('of any case, on any sheet a list goes on, nothing lies outside the margins and no text on another', () => {
  fc.assert(
    fc.property(anyCase, fc.constantFrom(a4, letter, narrow), (changes, leaf) => {
      const { plan, folded } = worked(changes);
      const list = checklistOf(plan, folded);
      const at = { list, day: '30 Nov 2026', leaf, widthOf };
      const setups = [...setupPages({ ...at, reach: {} })];
      expectNeat(setups, leaf);
      expectNeat([...partPages(at)], leaf);
      // every setup stands on a page with its number, and a box stands for each of its pieces
      const all = setups.map(textOf).join('\n');
      for (const { no, check } of setupCodes(list)) expect(all).toContain(`${no}\n${check}\n`);
      const letters = setups.flatMap(({ ink }) =>
        ink.filter((one) => one.draw === 'text' && /^[A-Z]{1,2}$/.test(one.text) && one.bold),
      );
      expect(letters.length).toBeGreaterThanOrEqual(plan.operations.length);
    }),
    { numRuns: runs(6) },
  );
});
