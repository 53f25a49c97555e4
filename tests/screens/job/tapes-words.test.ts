import { afterEach, describe, expect, test } from 'vitest';
import { fromMillimetres, inches, type Length } from '../../../src/length/length';
import { tapesText, tapesWrong } from '../../../src/screens/job/tapes-words';
import { twoTapes } from '../../../src/trade/tolerance/two-tapes';
import { tapeInHand } from '../../../src/ui/unit-in-hand';

const before = tapeInHand.peek();
afterEach(() => {
  tapeInHand.value = before;
});

const mm = (tenths: number): Length => fromMillimetres(BigInt(tenths), 10n);

describe('two tapes, in words', () => {
  // 200 reads 200.5, 1500 reads 1501: 1.0508 apart at 1632, .4231 at the hook (Example 4 of tolerance)
  test('in a job in millimetres the parting is said with the limit', () => {
    tapeInHand.value = '1/2 mm';
    const readings = { short: mm(2000), shortOther: mm(2005), long: mm(15000), longOther: mm(15010) };
    const told = twoTapes(readings, { reach: mm(16320), tape: '1/2 mm' });
    expect(told.ok && tapesText(told.value, { reach: mm(16320), ofJob: true })).toBe(
      'The tapes part by 1.05 mm at 1632 mm, the longest piece of this job, and by 0.42 mm at the hook: more than 0.8 mm. One tape for all.',
    );
  });

  // the same on both, by 1/16: good to 1/16 at 64, and 1/16 × 72 ÷ 56 = .080 at the hook: over 1/32
  test('readings too coarse to tell are no clean bill, and no quarrel', () => {
    tapeInHand.value = '1/16';
    const readings = {
      short: inches(8n),
      shortOther: inches(8n),
      long: inches(64n),
      longOther: inches(64n),
    };
    const told = twoTapes(readings, { reach: inches(64n), tape: '1/16' });
    expect(told.ok && tapesText(told.value, { reach: inches(64n), ofJob: false })).toMatch(
      /^The tapes read alike at 64.000, .* good to 0.063: it may be more than 1\/32\. Read longer boards/,
    );
  });

  test('boards that say nothing are sent back by how much, with what would do', () => {
    tapeInHand.value = '1 mm';
    const at = { short: mm(2000), long: mm(2000), reach: mm(16320) };
    expect(tapesWrong({ code: 'boards-alike' }, at)).toBe(
      'Both boards are 200 mm by your tape. Take a long one of about 1632 mm.',
    );
    expect(tapesWrong({ code: 'boards-alike' }, { ...at, long: mm(1990) })).toContain('1 mm shorter');
    expect(tapesWrong({ code: 'misread', by: mm(390) }, at)).toContain('part by 39 mm more');
  });
});
