import { describe, expect, test } from 'vitest';
import { fromMillimetres, toMillimetres } from '../../src/length/length';
import { tapeError } from '../../src/trade/tolerance/tape-error';

describe('tapeError', () => {
  // Source: The Measuring Instruments Regulations 2016 (UK SI 2016/1153), schedule 1I, inserted 31 December 2020 by
  // SI 2019/696, paragraph 2 (legislation.gov.uk/uksi/2016/1153/schedule/1I/data.html). Seen: "The MPE, positive or
  // negative in mm, between two non-consecutive scale marks is (a + bL)", "L is the value of the length rounded up to
  // the next whole metre"; table 1, a, b and c: I 0.1, 0.1, 0.1; II 0.3, 0.2, 0.2; III 0.6, 0.4, 0.3. The rows are
  // printed in a second text, a supplier's guide to tapes (at.rs-online.com/web/content/discovery-portal/
  // produktratgeber/massbaender-leitfaden; date not read), "3 m" "0,40" "0,90" "1,80" and so on: seen; they agree.
  test.each([
    [2n, 'I', '0.3'],
    [2n, 'II', '0.7'],
    [2n, 'III', '1.4'],
    [3n, 'I', '0.4'],
    [3n, 'II', '0.9'],
    [3n, 'III', '1.8'],
    [5n, 'I', '0.6'],
    [5n, 'II', '1.3'],
    [5n, 'III', '2.6'],
    [8n, 'I', '0.9'],
    [8n, 'II', '1.9'],
    [8n, 'III', '3.8'],
    [10n, 'I', '1.1'],
    [10n, 'II', '2.3'],
    [10n, 'III', '4.6'],
  ] as const)('over %s m a class %s tape may be out by %s mm', (metres, tape, mm) => {
    expect(toMillimetres(tapeError(tape, fromMillimetres(metres * 1000n), false)).toString()).toBe(mm);
  });

  // Same source, paragraph 2: "When a terminal interval is bounded by a surface, the MPE for any distance beginning
  // at this point is increased by the value c given in Table 1." The panel is ours: 2.44 m begins its third metre,
  // 0.3 + 3 · 0.2 = 0.9, and 0.2 from the hook.
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
