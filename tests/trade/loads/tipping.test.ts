import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { pulledOut, tipOver } from '../../../src/trade/loads/tipping';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

type Plan = Parameters<typeof tipOver>[0];
const weight = (id: string, pounds: bigint, from: string) => ({ id, pounds: ratio(pounds), from: l(from) });
const drawers = ['1', '2', '3'].map((id) => weight(id, 40n, '7 3/4'));
const cabinet: Plan = { ahead: drawers, behind: [weight('case', 98n, '9 1/8')] };
const found = (more: Partial<Plan> = {}) => {
  const result = tipOver({ ...cabinet, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<Plan>) => {
  const result = tipOver({ ...cabinet, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('tipOver', () => {
  // 3 × 40 × 7.75 = 930; 98 × 9.125 = 894.25; 1.5 × 930 - 894.25 = 500.75. One out: 465 <= 894.25; two: 930 > 894.25
  test('Example 8 of loads: three drawers of 40 lb out: 930 against 894 1/4, it falls; one may be out', () => {
    const { tipping, holding, code, short, outAtMost } = found();
    expect([tipping, holding, short].map(String)).toEqual(['930', '894.25', '500.75']);
    expect([code, outAtMost]).toEqual(['falls', 1]);
  });

  // 40 × 7.75 = 310: 1.5 times is 465
  test('just one and a half times is enough, a hair less is said', () => {
    const one = { ahead: drawers.slice(0, 1) };
    const behind = (n: bigint) => ({ behind: [{ id: 'case', pounds: ratio(n, 100n), from: l('9') }] });
    // 51.67 × 9 = 465.03; 51.66 × 9 = 464.94; 34.45 × 9 = 310.05; 34.44 × 9 = 309.96
    const codes = [5167n, 5166n, 3445n, 3444n].map((n) => found({ ...one, ...behind(n) }).code);
    expect(codes).toEqual(['past-margin', 'near', 'near', 'falls']);
  });

  test('just balanced it falls', () => {
    const even = { ahead: [weight('d', 10n, '9')], behind: [weight('case', 10n, '9')] };
    expect(found(even).code).toBe('falls');
  });

  test('a base set back takes from holding and adds to tipping, and what stands ahead of it tips', () => {
    // set back 3: 120 × 10.75 = 1290; 98 × 6.125 = 600.25
    expect([found({ setBack: l('3') }).tipping, found({ setBack: l('3') }).holding].map(String)).toEqual([
      '1290',
      '600.25',
    ]);
    // a frame 10 lb, 3/8 behind the front: 10 × 2.625 = 26.25 more tipping
    const frame = { setBack: l('3'), behind: [...cabinet.behind, weight('frame', 10n, '3/8')] };
    expect([found(frame).tipping, found(frame).holding].map(String)).toEqual(['1316.25', '600.25']);
  });

  test('with nothing out it stands, and is anchored all the same', () => {
    const { tipping, code, anchor, outAtMost } = found({ ahead: [] });
    expect([tipping.toString(), code, anchor, outAtMost]).toEqual(['0', 'past-margin', true, 0]);
  });

  test('bad input is refused', () => {
    expect(refused({ behind: [] })).toEqual({ code: 'nothing-behind' });
    expect(refused({ ahead: [weight('d', 0n, '4')] })).toEqual({ code: 'pounds-not-positive', id: 'd' });
    expect(refused({ behind: [weight('c', 5n, '0')] })).toEqual({ code: 'from-not-positive', id: 'c' });
    expect(refused({ setBack: l('-1/4') })).toEqual({ code: 'set-back-negative' });
  });

  test('anchored whatever the sum; heavier or further out never helps, nor does a base further back', () => {
    const some = fc.record({
      id: fc.constant('x'),
      pounds: fc.bigInt({ min: 1n, max: 99n }).map((n) => ratio(n)),
      from: fc.bigInt({ min: 1n, max: 999n }).map((n) => inches(n, 32n)),
    });
    const rank = { 'past-margin': 0, near: 1, falls: 2 };
    fc.assert(
      fc.property(
        fc.array(some, { minLength: 1, maxLength: 5 }),
        fc.array(some, { minLength: 1, maxLength: 5 }),
        fc.bigInt({ min: 0n, max: 99n }).map((n) => inches(n, 32n)),
        (ahead, behind, setBack) => {
          const now = found({ ahead, behind, setBack });
          expect(now.anchor).toBe(true);
          expect(now.code === 'past-margin').toBe(now.short === undefined);
          expect(now.outAtMost === ahead.length || now.short !== undefined).toBe(true);
          const worse = [
            found({
              ahead: ahead.map((x) => ({ ...x, pounds: x.pounds.add(1n) as typeof x.pounds })),
              behind,
              setBack,
            }),
            found({
              ahead: ahead.map((x) => ({ ...x, from: x.from.add(1n) as typeof x.from })),
              behind,
              setBack,
            }),
            found({ ahead, behind, setBack: setBack.add(1n) as typeof setBack }),
          ];
          for (const then of worse) expect(rank[then.code]).toBeGreaterThanOrEqual(rank[now.code]);
        },
      ),
      { numRuns: runs(100) },
    );
  });
});

describe('pulledOut', () => {
  const drawer = (id: string, pulled: string, deep = '15 1/2') => ({
    id,
    pounds: ratio(40n),
    deep: l(deep),
    pulled: l(pulled),
  });
  const places = (...drawers: readonly ReturnType<typeof drawer>[]) => {
    const placed = pulledOut(drawers);
    if (!placed.ok) throw new Error(placed.error.code);
    return placed.value;
  };

  test('Example 10 of loads: all the way out 7 3/4 ahead, 5 out still 2 3/4 behind, half out in neither', () => {
    const { ahead, behind } = places(
      drawer('a', '15 1/2'),
      drawer('b', '5'),
      drawer('c', '7 3/4'),
      drawer('d', '0'),
    );
    expect(ahead.map((x) => [x.id, x.from.toString()])).toEqual([['a', '7.75']]);
    expect(behind.map((x) => [x.id, x.from.toString()])).toEqual([
      ['b', '2.75'],
      ['d', '7.75'],
    ]);
  });

  test('Example 8 of loads again, its drawers placed by their depth', () => {
    const { ahead, behind } = places(...['1', '2', '3'].map((id) => drawer(id, '15 1/2')));
    expect(found({ ahead, behind: [...cabinet.behind, ...behind] }).tipping.toString()).toBe('930');
  });

  test('bad input is refused, and how far past its depth it is pulled is said', () => {
    const refused = (x: ReturnType<typeof drawer>) => {
      const placed = pulledOut([x]);
      return placed.ok ? 'ok' : placed.error;
    };
    expect(refused(drawer('a', '0', '0'))).toEqual({ code: 'deep-not-positive', id: 'a' });
    expect(refused(drawer('a', '-1'))).toEqual({ code: 'pulled-negative', id: 'a' });
    expect(refused(drawer('a', '16'))).toMatchObject({ code: 'pulled-past', id: 'a', by: l('1/2') });
  });
});
