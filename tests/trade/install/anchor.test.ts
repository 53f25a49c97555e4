import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { anchorCard } from '../../../src/trade/install/anchor';
import { codes, l, w } from '../grooves/sample';

type Plan = Parameters<typeof anchorCard>[0];
const plan: Plan = {
  high: l('60'),
  wall: 'framing',
  fixings: 2,
  cleat: { thick: l('1/2'), wide: l('2 1/2') },
  washers: false,
};
const card = (more: Partial<Plan> = {}) => {
  const found = anchorCard({ ...plan, ...more });
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};
const always = ['before-loading', 'fixings', 'cleat', 'again-in-a-week'];

// Source: Architectural Woodwork Standards, first edition, 2009, p. 281: strips 1/2 × 2 1/2 or more, one between in a
// cabinet over 60 in high.
describe('anchorCard', () => {
  test('a plan that has all of it lacks nothing, and the facts stand all the same', () => {
    expect([codes(card().facts), card().lacks]).toEqual([always, []]);
    expect(card().facts[2]).toMatchObject({ code: 'cleat' });
  });

  test('Example 8 of install: over 60 a strip between as well; at 60 none', () => {
    const facts = (high: string) => card({ high: l(high) }).facts;
    expect(codes(facts('60'))).not.toContain('strip-between');
    expect(codes(facts('60 1/64'))).toContain('strip-between');
    const strip = facts('64 1/4').find((fact) => fact.code === 'strip-between');
    expect(w(strip?.code === 'strip-between' ? strip.past : undefined)).toBe('4 1/4');
  });

  // in round millimetres 1/2 is 12 and 2 1/2 is 65; 60, which is in no list of those, stays: 1524
  test('a metric shop is held to the figures its nailers are held to', () => {
    const metric = {
      units: 'mm',
      cleat: { thick: l('12 mm'), wide: l('65 mm') },
      washers: undefined,
    } as const;
    const found = card({ ...metric, high: l('1525 mm') });
    expect([found.lacks, found.asks]).toEqual([[], []]);
    expect(found.facts[2]).toEqual({ code: 'cleat', thick: l('12 mm'), wide: l('65 mm') });
    expect(found.facts[3]).toMatchObject({ code: 'strip-between', past: l('1 mm'), over: l('60') });
    const short = card({ ...metric, cleat: { thick: l('11 mm'), wide: l('63 mm') } }).lacks;
    expect(short).toEqual([
      { code: 'cleat-thin', by: l('1 mm') },
      { code: 'cleat-narrow', by: l('2 mm') },
    ]);
  });

  test('solid sheathing takes a fixing anywhere, other walls in their framing', () => {
    const where = (wall: 'sheathing' | 'framing') => card({ wall }).facts[1];
    expect(where('sheathing')).toEqual({ code: 'fixings', least: 2, where: 'anywhere' });
    expect(where('framing')).toEqual({ code: 'fixings', least: 2, where: 'framing' });
  });

  test('what is lacking is said by how much', () => {
    const lacks = (more: Partial<Plan>) =>
      card(more).lacks.map((x) => [
        x.code,
        'by' in x ? (typeof x.by === 'number' ? x.by : w(x.by)) : undefined,
      ]);
    expect(lacks({ fixings: 0 })).toEqual([['too-few', 2]]);
    expect(lacks({ cleat: { thick: l('31/64'), wide: l('2 31/64') }, washers: true })).toEqual([
      ['cleat-thin', '1/64'],
      ['cleat-narrow', '1/64'],
    ]);
    expect(lacks({ cleat: { thick: l('31/64'), wide: l('3') } })).toEqual([
      ['cleat-thin', '1/64'],
      ['no-washers', undefined],
    ]);
    expect(codes(card({ cleat: 'back-alone' }).lacks)).toEqual(['back-alone', 'no-washers']);
  });

  test('what nobody said is asked for, and nothing of it is lacking', () => {
    const unsaid = { fixings: undefined, cleat: undefined, washers: undefined };
    expect(card(unsaid)).toMatchObject({ lacks: [], asks: ['fixings', 'cleat'] });
    // washers matter where heads bear on thin stuff alone: under 1/2
    const thick = (x: string) => card({ washers: undefined, cleat: { thick: l(x), wide: l('3') } }).asks;
    expect([thick('1/2'), thick('31/64')]).toEqual([[], ['washers']]);
    expect(card().asks).toEqual([]);
  });

  test('no height, or fixings that are no count, are refused', () => {
    const code = (more: Partial<Plan>) => {
      const found = anchorCard({ ...plan, ...more });
      return found.ok ? 'ok' : found.error.code;
    };
    expect([code({ high: l('0') }), code({ fixings: -1 }), code({ fixings: 1.5 })]).toEqual([
      'high-not-positive',
      'fixings-not-whole',
      'fixings-not-whole',
    ]);
  });

  test('whatever the plan, the card says to anchor before loading and to look again', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 9000n }), fc.nat(9), fc.boolean(), (n, fixings, washers) => {
        expect(codes(card({ high: inches(n, 64n), fixings, washers }).facts)).toEqual(
          expect.arrayContaining(always),
        );
      }),
      { numRuns: 100 },
    );
  });
});
