import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, ratio } from '../../../src/length/length';
import { type Lift, liftSays } from '../../../src/trade/loads/lift';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

const hands = (out: string, up: string, turn = 0n) => ({ out: l(out), up: l(up), turn: ratio(turn) });
const drawer: Lift = {
  start: hands('15', '12'),
  end: hands('15', '42'),
  careful: false,
  grip: 'fair',
  load: ratio(40n),
  most: ratio(50n),
};
const said = (more: Partial<Lift> = {}) => {
  const found = liftSays({ ...drawer, ...more });
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};
const refused = (more: Partial<Lift>) => {
  const found = liftSays({ ...drawer, ...more });
  return found.ok ? 'ok' : found.error;
};

describe('liftSays', () => {
  // 51 × .67 (15 out) × .87 (1 - .0075 × 18 = .865, half up) × .88 (.82 + 1.8/30) × 1 × 1 × .95 = 24.853; 40 / 24.853
  // = 1.609; 40 - 24.853 = 15.147
  test('Example 4 of loads: 24.85 lb; a 40 lb drawer is 1.61 times it, 15.1 over', () => {
    const { start, limit, index, over, rules } = said();
    expect([start.out, start.up, start.travel, start.turn, start.often, start.grip].map(String)).toEqual([
      '0.67',
      '0.87',
      '0.88',
      '1',
      '1',
      '0.95',
    ]);
    expect(limit.valueOf().toFixed(2)).toBe('24.85');
    expect([index?.valueOf().toFixed(2), over?.valueOf().toFixed(1), rules]).toEqual([
      '1.61',
      '15.1',
      'start',
    ]);
  });

  test('the end counts when the load is set down with care, and the lesser rules', () => {
    // end 25 out, 70 up: .40 × .70 (1 - .3) × .85 (.82 + 1.8/58 = .851) × 1.00: 51 × .238 = 12.138
    const far = { end: hands('25', '70'), careful: true };
    expect([said(far).limit.valueOf().toFixed(2), said(far).rules]).toEqual(['12.14', 'end']);
    expect(said({ ...far, careful: false }).end).toBeUndefined();
    expect(said({ ...far, careful: false }).rules).toBe('start');
  });

  test("the shop's own figure speaks where it is lower", () => {
    // a good grip at 30, 10 out, no travel to speak of: 51 × 1 × 1 × 1 × 1 × 1 = 51, over the shop's 50
    const best = { start: hands('10', '30'), end: hands('10', '30'), grip: 'good' as const };
    expect([said(best).limit, said(best).most].map(String)).toEqual(['51', '50']);
    expect([said(best).rules, said(best).over, said({ ...best, load: ratio(50n) }).over]).toEqual([
      'shop',
      undefined,
      undefined,
    ]);
    expect(said({ ...best, load: ratio(501n, 10n) }).over?.toString()).toBe('0.1');
  });

  test('just within counts, just past is nothing to lift', () => {
    const start = (more: Partial<Lift['start']>) => said({ start: { ...drawer.start, ...more } }).start;
    expect([start({ out: l('25') }).out, start({ out: l('25 1/64') }).out].map(String)).toEqual(['0.4', '0']);
    expect([start({ turn: ratio(135n) }).turn, start({ turn: ratio(136n) }).turn].map(String)).toEqual([
      '0.57',
      '0',
    ]);
    const high = (up: string) => said({ start: hands('15', up), end: hands('15', '60') }).start.up.toString();
    expect([high('70'), high('70 1/64')]).toEqual(['0.7', '0']);
    const travel = (up: string) =>
      said({ start: hands('15', '0'), end: hands('15', up) }).start.travel.toString();
    expect([travel('70'), travel('70 1/64')]).toEqual(['0.85', '0']);
  });

  test('nothing may be lifted: no index, all of it over', () => {
    const { limit, index, over } = said({ start: hands('26', '12') });
    expect([limit.toString(), index, over?.toString()]).toEqual(['0', undefined, '40']);
  });

  test('out goes up to the next whole inch, under 10 counts as 10', () => {
    const out = (x: string) => said({ start: hands(x, '12') }).start.out.toString();
    expect([out('0'), out('9 1/2'), out('10'), out('10 1/64'), out('11')]).toEqual([
      '1',
      '1',
      '1',
      '0.91',
      '0.91',
    ]);
  });

  test('a fair grip is as good as a good one from 30 up', () => {
    const grip = (up: string, g: 'good' | 'fair' | 'poor') =>
      said({ start: hands('15', up), grip: g }).start.grip.toString();
    expect([grip('29 63/64', 'fair'), grip('30', 'fair'), grip('30', 'poor'), grip('12', 'good')]).toEqual([
      '0.95',
      '1',
      '0.9',
      '1',
    ]);
  });

  test('bad input is refused, and a grip nobody said is asked for', () => {
    expect([refused({ load: ratio(0n) }), refused({ most: ratio(-1n) })]).toEqual([
      { code: 'load-not-positive' },
      { code: 'most-not-positive' },
    ]);
    const { grip: _, ...bare } = drawer;
    const asked = liftSays(bare);
    expect(asked.ok ? 'ok' : asked.error).toEqual({ code: 'grip-missing' });
    const below = l('-1/64');
    expect(refused({ start: { ...drawer.start, out: below } })).toEqual({
      code: 'negative',
      at: 'start',
      what: 'out',
    });
    expect(refused({ end: { ...drawer.end, up: below } })).toEqual({
      code: 'negative',
      at: 'end',
      what: 'up',
    });
    expect(refused({ end: { ...drawer.end, turn: ratio(-1n) } })).toEqual({
      code: 'negative',
      at: 'end',
      what: 'turn',
    });
  });

  const inch = (max: number) => fc.integer({ min: 0, max: max * 8 }).map((n) => inches(BigInt(n), 8n));
  const someHands = fc.record({
    out: inch(27),
    up: inch(72),
    turn: fc.integer({ min: 0, max: 140 }).map((n) => ratio(BigInt(n))),
  });
  const lifts = fc.record({
    start: someHands,
    end: someHands,
    careful: fc.boolean(),
    grip: fc.constantFrom('good' as const, 'fair' as const, 'poor' as const),
    load: fc.constant(ratio(40n)),
    most: fc.integer({ min: 1, max: 60 }).map((n) => ratio(BigInt(n))),
  });
  const falls = (from: Lift, to: Lift) => {
    const [a, b] = [said(from), said(to)];
    expect(b.limit.lte(a.limit) && b.most.lte(a.most)).toBe(true);
  };

  test('the limit never rises as any input worsens', () => {
    fc.assert(
      fc.property(lifts, fc.constantFrom('start' as const, 'end' as const), inch(10), (lift, which, more) => {
        const at = lift[which];
        falls(lift, { ...lift, [which]: { ...at, out: add(at.out, more) } });
        falls(lift, { ...lift, [which]: { ...at, turn: at.turn.add(5n) as typeof at.turn } });
        falls(lift, { ...lift, careful: true });
        falls(lift, { ...lift, grip: 'poor' });
        if (lift.grip === 'good') falls(lift, { ...lift, grip: 'fair' });
        falls(lift, { ...lift, most: lift.most.div(2n) as typeof lift.most });
        // the upper end higher still from 30 up, or the lower one lower still below 30: away from the knuckles,
        // further
        const [low, high] = lift.start.up.lt(lift.end.up)
          ? (['start', 'end'] as const)
          : (['end', 'start'] as const);
        if (lift[high].up.gte(30n))
          falls(lift, { ...lift, [high]: { ...lift[high], up: add(lift[high].up, more) } });
        if (lift[low].up.lte(29n) && more.lte(lift[low].up))
          falls(lift, { ...lift, [low]: { ...lift[low], up: lift[low].up.sub(more) as typeof more } });
      }),
      { numRuns: runs(300) },
    );
  });
});
