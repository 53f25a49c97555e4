import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, subtract, times } from '../../../src/length/length';
import {
  type CleatPlan,
  cleatFor,
  cleatMismatches,
  type RabbetPlan,
  rabbetFor,
} from '../../../src/trade/joints/rabbets';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

describe('rabbetFor', () => {
  const base: RabbetPlan = { thickness: l('23/32'), lying: l('23/32'), depth: l('11/32'), stack: l('13/16') };
  const rabbet = (more: Partial<RabbetPlan> = {}) => {
    const found = rabbetFor({ ...base, ...more });
    if (!found.ok) throw new Error(found.error.code);
    return found.value;
  };
  const refused = (more: Partial<RabbetPlan>) => {
    const found = rabbetFor({ ...base, ...more });
    if (found.ok) throw new Error('expected a refusal');
    return found.error;
  };

  test('Example 2 of joints: 23/32 in 23/32, 11/32 deep, stack 13/16', () => {
    const { exposed, buried, tongue, warnings } = rabbet();
    expect([exposed, buried, tongue].map(w)).toEqual(['23/32', '3/32', '3/8']);
    expect(warnings).toEqual([]);
  });

  test('a back rabbet is as wide as the back and its scribe room', () => {
    const { width, buried } = rabbet({ lying: l('1/4'), allowance: l('1/32') });
    expect([w(width), w(buried)]).toEqual(['9/32', '17/32']);
  });

  test.each([
    ['25/32', []],
    ['49/64', ['little-buried']],
    ['23/32', ['little-buried']],
  ])('a %s stack: warned %j', (stack, warnings) => {
    expect(rabbet({ stack: l(stack) }).warnings).toEqual(warnings);
  });

  test('a stack narrower than the rabbet is refused, by so much', () => {
    const error = refused({ stack: l('45/64') });
    expect(error.code === 'stack-too-narrow' && w(error.by)).toBe('1/64');
  });

  test('a third of the thickness must stay', () => {
    expect(rabbet({ thickness: l('3/4'), depth: l('1/2') }).warnings).toEqual([]);
    expect(rabbet({ thickness: l('3/4'), depth: l('33/64') }).warnings).toEqual(['thin-tongue']);
  });

  test('a rabbet as deep as the part is refused', () => {
    const error = refused({ depth: l('3/4') });
    expect(error.code === 'depth-through' && w(error.by)).toBe('1/32');
    expect(refused({ depth: l('23/32') }).code).toBe('depth-through');
  });

  test.each([
    ['thickness', { thickness: l('0') }],
    ['lying', { lying: l('0') }],
    ['width', { allowance: l('-23/32') }],
    ['depth', { depth: l('0') }],
    ['stack', { stack: l('0') }],
  ] as const)('refuses a %s of nothing', (what, more) => {
    expect(refused(more)).toEqual({ code: 'not-positive', what });
  });

  test('exposed and buried make the stack, tongue and depth the thickness', () => {
    const size = fc.integer({ min: 1, max: 64 }).map((n) => inches(BigInt(n), 64n));
    fc.assert(
      fc.property(size, size, size, size, (thickness, lying, depth, stack) => {
        const found = rabbetFor({ thickness, lying, depth, stack });
        if (!found.ok) return;
        expect(add(found.value.exposed, found.value.buried).equals(stack)).toBe(true);
        expect(add(found.value.tongue, depth).equals(thickness)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('cleatFor', () => {
  const base: CleatPlan = {
    outside: l('38 3/8'),
    side: l('23/32'),
    rabbetDepth: l('11/32'),
    width: l('2 3/4'),
    thickness: l('23/32'),
    clearance: l('1/16'),
  };
  const cleat = (more: Partial<CleatPlan> = {}) => {
    const found = cleatFor({ ...base, ...more });
    if (!found.ok) throw new Error(found.error.code);
    return found.value;
  };

  test('Example 3 of joints: 38 3/8, cleats 2 3/4 × 23/32, rabbet 11/32: cleat 37 5/8, notch 2 13/16 × 23/32', () => {
    const { length, notch, deepNotch } = cleat();
    expect([length, notch.long, notch.deep].map(w)).toEqual(['37 5/8', '2 13/16', '23/32']);
    expect(deepNotch).toBe(false);
  });

  test('the cleat and what is left of both sides make the case', () => {
    const left = subtract(base.side, base.rabbetDepth);
    expect(add(cleat().length, times(left, 2n)).equals(base.outside)).toBe(true);
  });

  test.each([
    ['17 7/32', false],
    ['1 7/16', false],
    ['1 27/64', true],
  ])('in a partition of %s the notch takes more than half: %s', (partition, want) => {
    expect(cleat({ partition: l(partition) }).deepNotch).toBe(want);
  });

  test.each([
    ['a case of nothing', { outside: l('0') }, 'not-positive'],
    ['a partition of nothing', { partition: l('0') }, 'not-positive'],
    ['a notch tighter than the cleat', { clearance: l('-1/64') }, 'clearance-negative'],
    ['a rabbet through the side', { rabbetDepth: l('23/32') }, 'depth-through'],
    ['sides that fill the case', { outside: l('3/4') }, 'no-length'],
    ['a notch through the partition', { partition: l('23/32') }, 'notch-through'],
  ] as const)('refuses %s', (_, more, code) => {
    const found = cleatFor({ ...base, ...more });
    expect(found.ok ? 'ok' : found.error.code).toBe(code);
  });
});

describe('cleatMismatches', () => {
  const against = (rabbets: readonly string[], notches: readonly string[]) =>
    cleatMismatches({ thickness: l('23/32'), rabbets: rabbets.map(l), notches: notches.map(l) }).map(
      (m) => `${m.where} ${m.at} ${m.stands} ${w(m.by)}`,
    );

  test('rabbet width, cleat and notch depth that agree are not named', () => {
    expect(against(['23/32', '23/32'], ['23/32'])).toEqual([]);
  });

  test('Example 6 of joints: each that differs is named, and whether the cleat stands proud or sunk there', () => {
    expect(against(['23/32', '11/16'], ['3/4', '23/32'])).toEqual([
      'rabbet 1 proud 1/32',
      'notch 0 sunk 1/32',
    ]);
  });

  test('18 mm is not 23/32: a hair sunk is still named', () => {
    const found = cleatMismatches({ thickness: l('18 mm'), rabbets: [l('23/32')], notches: [] });
    expect(found.map((m) => [m.stands, w(m.by)])).toEqual([['sunk', w(subtract(l('23/32'), l('18 mm')))]]);
  });
});
