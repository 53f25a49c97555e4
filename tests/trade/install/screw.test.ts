import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  equals,
  inches,
  type Length,
  less,
  ratio,
  subtract,
  times,
  zero,
} from '../../../src/length/length';
import {
  biteIn,
  type ScrewPlan,
  screwFor,
  usualBites,
  usualTipMargin,
} from '../../../src/trade/install/screw';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const shelf = ['3/4', '1', '1 1/4', '1 1/2', '2', '2 1/2', '3'].map(l);
const plan = (more: Partial<ScrewPlan>): ScrewPlan => ({
  through: l('23/32'),
  into: l('1 1/2'),
  sunk: l('1/16'),
  leastBite: l('3/4'),
  margin: l('1/8'),
  lengths: shelf,
  ...more,
});

test('a metric shop bites 10, 25 and 32 and leaves 3; into a wall it is warned past 40', () => {
  expect((['face', 'edge', 'stud'] as const).map((into) => biteIn('mm', into).leastBite)).toEqual(
    ['10 mm', '25 mm', '32 mm'].map(l),
  );
  // through 18 and 32: 50 at the least; 60 bites 42, 2 deeper than 40
  const wall = { through: l('18 mm'), into: l('89 mm'), sunk: zero, lengths: [l('60 mm')] };
  const found = screwFor({ ...wall, ...biteIn('mm', 'stud'), pick: 'shortest', units: 'mm' });
  expect([found.least, found.clear, found.deep]).toEqual(['50 mm', '58 mm', '2 mm'].map(l));
});

describe('screwFor', () => {
  test('Example 1 of install: through 23/32 into 1 1/2, sunk 1/16: between 1 13/32 and 2 1/32, take 2, bite 1 11/32', () => {
    const found = screwFor(plan({}));
    expect([w(found.least), w(found.most), w(found.pick), w(found.bite)]).toEqual([
      '1 13/32',
      '2 1/32',
      '2',
      '1 11/32',
    ]);
  });

  test.each(['through', 'into', 'leastBite', 'margin'] as const)('%s of nothing has no screw', (what) => {
    expect(screwFor(plan({ [what]: l('0') })).fails).toBe('no-wood');
    expect(screwFor(plan({ [what]: l('-1') })).pick).toBeUndefined();
  });

  test('Example 2 of install: a washer of 1/16 over a 7/32 back into 23/32: 3/4; countersunk instead it reaches 1/8 deeper', () => {
    const thin = plan({ through: l('7/32'), into: l('23/32'), leastBite: l('3/8'), sunk: l('-1/16') });
    expect(w(screwFor(thin).pick)).toBe('3/4');
    const sunk = screwFor({ ...thin, sunk: l('1/16') });
    expect([w(screwFor(thin).bite), w(sunk.bite)]).toEqual(['15/32', '19/32']);
  });

  test('Example 3 of install, step 9 of the carried cabinet: box front 5/8 into a front of 23/32, flush: 1 to 1 7/32, take 1', () => {
    const found = screwFor(plan({ through: l('5/8'), into: l('23/32'), sunk: l('0'), leastBite: l('3/8') }));
    expect([w(found.least), w(found.most), w(found.pick), w(found.bite)]).toEqual([
      '1',
      '1 7/32',
      '1',
      '3/8',
    ]);
  });

  test('Example 2 of install: that screw countersunk stands just at the margin; a 64th deeper and it is too long', () => {
    const thin = { through: l('7/32'), into: l('23/32'), leastBite: l('3/8'), lengths: [l('3/4')] };
    expect(w(screwFor(plan({ ...thin, sunk: l('1/16') })).bite)).toBe('19/32');
    expect(screwFor(plan({ ...thin, sunk: l('5/64') })).fails).toBe('too-long');
  });

  test('Example 4 of install: between parts the longest that goes is taken, into a wall the shortest; the shelf may lie in any order', () => {
    const lengths = ['2', '1 3/4', '3', '1', '1 1/2'].map(l);
    expect(w(screwFor(plan({ lengths })).pick)).toBe('2');
    expect(w(screwFor(plan({ lengths, pick: 'longest' })).pick)).toBe('2');
    expect(w(screwFor(plan({ lengths, pick: 'shortest' })).pick)).toBe('1 1/2');
    expect(lengths.map(w)).toEqual(['2', '1 3/4', '3', '1', '1 1/2']);
  });

  test('a screw at either limit goes, a 64th past it does not', () => {
    const only = (x: string) => screwFor(plan({ lengths: [l(x)] }));
    expect([w(only('1 13/32').pick), w(only('2 1/32').pick)]).toEqual(['1 13/32', '2 1/32']);
    expect([only('1 25/64').fails, only('2 3/64').fails]).toEqual(['too-short', 'too-long']);
  });

  test('where bite and margin want just all of the wood, one length goes', () => {
    const tight = plan({ into: l('7/8'), lengths: [l('1 13/32')] });
    const found = screwFor(tight);
    expect([w(found.least), w(found.most), w(found.pick)]).toEqual(['1 13/32', '1 13/32', '1 13/32']);
  });

  test.each([
    ['too-short', { lengths: [l('1'), l('3/4')] }],
    ['too-long', { lengths: [l('3'), l('2 1/2')] }],
    ['none-between', { lengths: [l('1'), l('3')] }],
    ['no-room', { into: l('55/64') }],
    ['no-list', { lengths: [] }],
  ] as const)('with no screw to take, what fails is said: %s', (want, more) => {
    const { fails, pick, bite } = screwFor(plan(more));
    expect([fails, pick, bite]).toEqual([want, undefined, undefined]);
  });

  test('by how much the nearest on the shelf fails, and how much wood bite and margin lack', () => {
    // between 1 13/32 and 2 1/32: 1 is 13/32 short, 2 1/2 is 15/32 long; of 1 and 3 the 1 is nearer; bite 3/4 and
    // margin 1/8 want 7/8, a 64th more than 55/64
    const by = (more: Partial<ScrewPlan>) => w(screwFor(plan(more)).by);
    expect([
      by({ lengths: [l('3/4'), l('1')] }),
      by({ lengths: [l('3'), l('2 1/2')] }),
      by({ lengths: [l('1'), l('3')] }),
      by({ into: l('55/64') }),
      by({ lengths: [] }),
      by({}),
    ]).toEqual(['13/32', '15/32', '13/32', '1/64', 'none', 'none']);
  });

  test('a washer moves the tip back as much as a head that much less sunk', () => {
    const thin = { through: l('7/32'), into: l('23/32'), leastBite: l('3/8') };
    const said = screwFor(plan({ ...thin, sunk: l('0'), washer: l('1/16') }));
    expect([w(said.least), w(said.most), w(said.pick), w(said.bite)]).toEqual([
      '21/32',
      '7/8',
      '3/4',
      '15/32',
    ]);
    expect(screwFor(plan({ washer: l('-1/64') })).fails).toBe('no-wood');
  });

  // Example 5 of install. 2 1/2 at 45 degrees: 2 1/2 × .71 = 1.775; + 1/4 - 3/4 = 1.275 = 1 11/40.
  // 2 at 20 degrees: 1.88 + 1/4 - 3/4 = 1.38 = 1 19/50, against 1 3/8 of room: .005 too deep.
  test('a slant takes off what a screw reaches, and what is too long square may go at a slant', () => {
    const at = { through: l('3/4'), into: l('1 1/2'), sunk: l('1/4'), leastBite: l('1/2') };
    const of = (slant: 0 | 20 | 30 | 45, long: string) =>
      screwFor(plan({ ...at, slant, lengths: [l(long)] }));
    expect([w(of(30, '2').bite), w(of(45, '2 1/2').bite)]).toEqual(['1 6/25', '1 11/40']);
    expect([of(20, '2').fails, of(0, '2').fails, of(0, '1 3/4').fails]).toEqual([
      'too-long',
      'too-long',
      undefined,
    ]);
    // most at 20 degrees = 1 7/8 ÷ .94 = 1 187/188: 2 is 1/188 over
    expect(w(of(20, '2').by)).toBe('1/188');
  });

  test('into a wall a tip more than 1 1/2 into the stud is said, by how much; between parts it is not', () => {
    // through 1/2 of wallboard and a cleat 3/4 = 1 1/4: 3 bites 1 3/4, 1/4 deeper; 2 3/4 bites just 1 1/2
    const wall = { through: l('1 1/4'), into: l('3 1/2'), sunk: l('0'), leastBite: l('1 1/4') };
    const deep = (long: string, pick: 'longest' | 'shortest') =>
      w(screwFor(plan({ ...wall, pick, lengths: [l(long)] })).deep);
    expect([deep('3', 'shortest'), deep('2 3/4', 'shortest'), deep('3', 'longest')]).toEqual([
      '1/4',
      'none',
      'none',
    ]);
  });

  // Reported: 1 17/32 and a washer of 1/16 into a stud of 3 1/2, bite 1 1/4. Least 1 17/32 + 1 1/4 + 1/16 = 2 27/32,
  // the tip 1 1/2 in at 1 17/32 + 1 1/2 + 1/16 = 3 3/32, within 1/8 of the far face at 4 31/32.
  test('a range into a wall ends where the tip stands 1 1/2 in', () => {
    const wall = {
      through: l('1 17/32'),
      washer: l('1/16'),
      sunk: l('0'),
      into: l('3 1/2'),
      leastBite: l('1 1/4'),
    };
    const at = (more: Partial<ScrewPlan>) => screwFor(plan({ ...wall, pick: 'shortest', ...more }));
    const { least, clear, most, pick } = at({});
    expect([least, clear, most, pick].map(w)).toEqual(['2 27/32', '3 3/32', '4 31/32', '3']);
    // between parts, in a thin thing behind, or where the bite wanted is deeper than that, nothing ends it sooner
    expect(at({ pick: 'longest' }).clear).toBeUndefined();
    expect(at({ into: l('1 5/8') }).clear).toBeUndefined(); // 1 5/8 - 1/8 is 1 1/2 itself
    expect(at({ leastBite: l('1 33/64') }).clear).toBeUndefined();
  });

  test('usual bites and margin (common practice, no source)', () => {
    const { face, edge, solid, stud } = usualBites;
    expect([face, edge, solid, stud, usualTipMargin].map(w)).toEqual(['3/8', '1', '1', '1 1/4', '1/8']);
  });

  const x = fc.bigInt({ min: 1n, max: 160n }).map((n) => inches(n, 64n));
  const small = fc.bigInt({ min: 1n, max: 40n }).map((n) => inches(n, 64n));
  const sunk = fc.bigInt({ min: -16n, max: 16n }).map((n) => inches(n, 64n));
  const plans = fc.record({
    through: x,
    into: x,
    sunk,
    leastBite: small,
    margin: small,
    lengths: fc.array(x, { maxLength: 8 }),
    pick: fc.constantFrom('longest' as const, 'shortest' as const),
    washer: fc.bigInt({ min: 0n, max: 16n }).map((n) => inches(n, 64n)),
    slant: fc.constantFrom(0 as const, 20 as const, 30 as const, 45 as const),
  });
  const reachOf = { 0: ratio(1n), 20: ratio(47n, 50n), 30: ratio(87n, 100n), 45: ratio(71n, 100n) };
  /** Where the tip of a screw stands below the face. */
  const tipOf = (long: Length, at: ScrewPlan): Length =>
    subtract(add(times(long, reachOf[at.slant ?? 0]), at.sunk), at.washer ?? zero);

  test('a chosen screw bites enough and never comes nearer than the margin', () => {
    fc.assert(
      fc.property(plans, (at) => {
        const { pick, bite, fails } = screwFor(at);
        expect(pick === undefined).toBe(fails !== undefined);
        if (!pick || !bite) return;
        const tip = tipOf(pick, at);
        expect(equals(add(at.through, bite), tip)).toBe(true);
        expect(less(bite, at.leastBite)).toBe(false);
        expect(less(subtract(add(at.through, at.into), tip), at.margin)).toBe(false);
      }),
      { numRuns: runs(300) },
    );
  });

  test('no screw on the shelf that goes is passed over for one longer, or shorter', () => {
    fc.assert(
      fc.property(plans, (at) => {
        const goes = at.lengths.filter((length) => {
          const bite = subtract(tipOf(length, at), at.through);
          return !less(bite, at.leastBite) && !less(subtract(at.into, at.margin), bite);
        });
        const { pick } = screwFor(at);
        expect(pick !== undefined).toBe(goes.length > 0);
        for (const other of goes)
          expect(pick && (at.pick === 'longest' ? less(pick, other) : less(other, pick))).toBe(false);
      }),
      { numRuns: runs(300) },
    );
  });
});
