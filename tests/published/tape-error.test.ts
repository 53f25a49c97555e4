import { describe, expect, test } from 'vitest';
import { fromMillimetres, toMillimetres } from '../../src/length/length';
import { tapeError } from '../../src/trade/tolerance/tape-error';

describe('tapeError', () => {
  // Source: The Measuring Instruments Regulations 2016 (UK SI 2016/1153), schedule 1I, paragraph 2: a + b L mm, L rounded
  // up to the next whole metre, a and b as I 0.1 and 0.1, II 0.3 and 0.2, III 0.6 and 0.4. The values for 3, 5 and
  // 8 m are printed so in a second text and agree with the rule.
  test.each([
    [3n, 'I', '0.4'],
    [3n, 'II', '0.9'],
    [3n, 'III', '1.8'],
    [5n, 'I', '0.6'],
    [5n, 'II', '1.3'],
    [5n, 'III', '2.6'],
    [8n, 'I', '0.9'],
    [8n, 'II', '1.9'],
    [8n, 'III', '3.8'],
  ] as const)('over %s m a class %s tape may be out by %s mm', (metres, tape, mm) => {
    expect(toMillimetres(tapeError(tape, fromMillimetres(metres * 1000n), false)).toString()).toBe(mm);
  });

  // Same source, paragraph 2: 0.1, 0.2, 0.3 mm more where the interval is bounded by an end surface. The panel is ours:
  // 2.44 m begins its third metre, 0.3 + 3 · 0.2 = 0.9, and 0.2 from the hook.
  test.each([
    ['I', false, '0.4'],
    ['I', true, '0.5'],
    ['II', false, '0.9'],
    ['II', true, '1.1'],
    ['III', false, '1.8'],
    ['III', true, '2.1'],
  ] as const)('a sheet 2.44 m long, class %s, from the hook %s: %s mm', (tape, hook, mm) => {
    expect(toMillimetres(tapeError(tape, fromMillimetres(2440n), hook)).toString()).toBe(mm);
  });
});
