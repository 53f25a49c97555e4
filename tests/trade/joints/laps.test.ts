import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, half, inches, subtract, times } from '../../../src/length/length';
import { flushLaps, type LappedFramePlan, lapPair, lappedFrame } from '../../../src/trade/joints/laps';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const sixtyFourths = (min: number, max: number) =>
  fc.integer({ min, max }).map((n) => inches(BigInt(n), 64n));

const pair = (thickness: string, depth: string) => {
  const found = lapPair(l(thickness), l(depth));
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

describe('lapPair', () => {
  test('Example 1 of joints: 1 17/32 at 3/4 steps 1/32: both 1/64 deeper, or the set still uncut to 25/32', () => {
    const { step, deepenEach, evenDepth, otherDepth, warn } = pair('1 17/32', '3/4');
    expect([step, deepenEach, evenDepth, otherDepth].map(w)).toEqual(['1/32', '1/64', '49/64', '25/32']);
    expect(warn).toBe(true);
  });

  test('laps too deep step the other way: the other set is left shallower', () => {
    const { step, deepenEach, otherDepth } = pair('3/4', '13/32');
    expect([step, deepenEach, otherDepth].map(w)).toEqual(['-1/16', '-1/32', '11/32']);
  });

  test.each([
    ['3/4', '3/8', false],
    ['3/4', '47/128', false],
    ['3/4', '.3671', true],
    ['3/4', '.383', true],
  ])('%s at %s steps by more than 1/64: %s', (thickness, depth, want) => {
    expect(pair(thickness, depth).warn).toBe(want);
  });

  test('refuses a lap that goes through, and figures that are nothing', () => {
    const refused = (thickness: string, depth: string) => {
      const found = lapPair(l(thickness), l(depth));
      return found.ok ? 'ok' : found.error;
    };
    expect(refused('3/4', '3/4')).toMatchObject({ code: 'depth-through', part: 'both' });
    expect(refused('3/4', '0')).toEqual({ code: 'not-positive', what: 'depth' });
    expect(refused('0', '1/4')).toEqual({ code: 'not-positive', what: 'thickness' });
  });

  test('either way of putting it right, the two depths make the thickness', () => {
    fc.assert(
      fc.property(sixtyFourths(2, 200), sixtyFourths(1, 199), (thickness, depth) => {
        const found = lapPair(thickness, depth);
        if (!found.ok) return;
        const { deepenEach, otherDepth, step } = found.value;
        expect(times(add(depth, deepenEach), 2n).equals(thickness)).toBe(true);
        expect(add(depth, otherDepth).equals(thickness)).toBe(true);
        expect(subtract(otherDepth, depth).equals(step)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('flushLaps', () => {
  const member = (thickness: string, width = '2 5/8') => ({ thickness: l(thickness), width: l(width) });

  test('Example 5 of joints: 1 17/32 under 1 1/2 is cut 3/4 in both, and its back steps 1/32', () => {
    const found = flushLaps({ under: member('1 17/32'), over: member('1 1/2', '2 1/2') });
    if (!found.ok) throw new Error(found.error.code);
    const { depthUnder, depthOver, backStep, longUnder, longOver } = found.value;
    expect([depthUnder, depthOver, backStep].map(w)).toEqual(['3/4', '3/4', '1/32']);
    // Each lap is as long as the other member is wide.
    expect([longUnder, longOver].map(w)).toEqual(['2 1/2', '2 5/8']);
  });

  test('with one set cut, the other takes the rest of the thickness over', () => {
    const found = flushLaps({ under: member('1 1/2'), over: member('1 17/32'), depthUnder: l('3/4') });
    expect(found.ok && [w(found.value.depthOver), w(found.value.backStep)]).toEqual(['25/32', '-1/32']);
  });

  test('a thick member over a thin one cuts the thin one through, by so much', () => {
    const found = flushLaps({ under: member('1/2'), over: member('1 1/4') });
    expect(found.ok || found.error).toMatchObject({ code: 'depth-through', part: 'under' });
    expect(!found.ok && found.error.code === 'depth-through' && w(found.error.by)).toBe('1/8');
  });

  test('a lap as deep as the member over leaves that one nothing to cut', () => {
    const found = flushLaps({ under: member('1 1/2'), over: member('3/4'), depthUnder: l('3/4') });
    expect(found.ok || found.error).toMatchObject({ code: 'depth-through', part: 'over' });
  });

  test('refuses members and depths that are nothing', () => {
    const code = (under: string, over: string, width = '2', depth?: string) => {
      const found = flushLaps({
        under: member(under, width),
        over: member(over),
        ...(depth ? { depthUnder: l(depth) } : {}),
      });
      return found.ok || (found.error.code === 'not-positive' && found.error.what);
    };
    expect([code('0', '1'), code('1', '0'), code('1', '1', '0'), code('1', '1', '1', '0')]).toEqual([
      'thickness',
      'thickness',
      'width',
      'depth',
    ]);
  });

  test('the depths always make the thickness over, so the show faces are flush', () => {
    fc.assert(
      fc.property(
        sixtyFourths(1, 200),
        sixtyFourths(1, 200),
        sixtyFourths(1, 200),
        (under, over, depthUnder) => {
          const width = l('2');
          const found = flushLaps({
            under: { thickness: under, width },
            over: { thickness: over, width },
            depthUnder,
          });
          if (!found.ok) return;
          expect(add(found.value.depthUnder, found.value.depthOver).equals(over)).toBe(true);
          // Left of the under member below its lap, less the room cut for it: what stands out at the back.
          const proud = subtract(subtract(under, found.value.depthUnder), found.value.depthOver);
          expect(proud.equals(found.value.backStep)).toBe(true);
        },
      ),
      { numRuns: runs(200) },
    );
  });
});

describe('lappedFrame', () => {
  const base: LappedFramePlan = { long: l('38 3/8'), deep: l('17 1/2'), cross: l('2 5/8'), count: 4 };
  const frame = (more: Partial<LappedFramePlan> = {}) => {
    const found = lappedFrame({ ...base, ...more });
    if (!found.ok) throw new Error(found.error.code);
    return found.value;
  };
  const refused = (more: Partial<LappedFramePlan>) => {
    const found = lappedFrame({ ...base, ...more });
    if (found.ok) throw new Error('expected a refusal');
    return found.error;
  };

  test('Example 4 of joints: 38 3/8 × 17 1/2 with four of 2 5/8', () => {
    const { clear, nears, shoulders, crossLength } = frame();
    expect(w(clear)).toBe('9 7/24');
    expect(nears.map(w)).toEqual(['0', '11 11/12', '23 5/6', '35 3/4']);
    expect([w(shoulders), w(crossLength)]).toEqual(['12 1/4', '17 1/2']);
  });

  test('a set-back shortens the cross member at both ends and leaves the shoulders alone', () => {
    const { shoulders, crossLength } = frame({ setBack: l('1/8') });
    expect([w(shoulders), w(crossLength)]).toEqual(['12 1/4', '17 1/4']);
  });

  test('rails of another width move the shoulders', () => {
    expect(w(frame({ rail: l('3 1/2') }).shoulders)).toBe('10 1/2');
  });

  test('cross members that overlap are refused by how much, and how many fit is said', () => {
    const error = refused({ long: l('10'), count: 4 });
    expect(error.code === 'crosses-overlap' && [w(error.by), error.fit]).toEqual(['1/2', 3]);
  });

  test('cross members side by side do not overlap', () => {
    expect(w(frame({ long: l('10 1/2') }).clear)).toBe('0');
    expect(refused({ long: l('10 31/64') }).code).toBe('crosses-overlap');
  });

  test.each([
    ['one cross member', { count: 1 }, 'count-not-whole'],
    ['two and a half', { count: 2.5 }, 'count-not-whole'],
    ['a rail of nothing', { rail: l('0') }, 'not-positive'],
    ['rails that meet', { deep: l('5 1/4') }, 'rails-meet'],
    ['set back past the rail', { setBack: l('2 5/8') }, 'set-back'],
    ['set forward', { setBack: l('-1/8') }, 'set-back'],
  ] as const)('refuses %s', (_, more, code) => expect(refused(more).code).toBe(code));

  test('adds back to its length, and is the same from either end', () => {
    fc.assert(
      fc.property(
        sixtyFourths(600, 6000),
        sixtyFourths(1, 200),
        fc.integer({ min: 2, max: 12 }),
        (long, cross, count) => {
          const found = lappedFrame({ long, deep: l('20'), cross, count });
          if (!found.ok) return;
          const { clear, nears } = found.value;
          const back = add(times(cross, BigInt(count)), times(clear, BigInt(count - 1)));
          expect(back.equals(long)).toBe(true);
          nears.forEach((near, k) => {
            const mirrored = nears[count - 1 - k];
            expect(mirrored && add(add(near, cross), mirrored).equals(long)).toBe(true);
          });
        },
      ),
      { numRuns: runs(200) },
    );
  });

  test('the middle one of three lies half its width each side of the middle', () => {
    const { nears } = frame({ count: 3 });
    expect(nears[1]?.equals(subtract(half(base.long), half(base.cross)))).toBe(true);
  });
});
