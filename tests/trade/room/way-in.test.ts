import { describe, expect, test } from 'vitest';
import type { Doorway } from '../../../src/trade/room/doorway';
import type { Stair } from '../../../src/trade/room/stair';
import { type Passage, wayIn } from '../../../src/trade/room/way-in';
import { l, refusal, spelled, value } from './sample';

const size = { width: l('38 3/8'), height: l('64 1/4'), depth: l('17 1/2') };
const at = { hand: l('1'), grain: l('1/16') };

const doorway = (more: Partial<Doorway> = {}): Passage => ({
  kind: 'doorway',
  door: { width: l('30'), height: l('79 1/2'), ...more },
});
const turn = (a: string, b: string, height?: string): Passage => ({
  kind: 'turn',
  turn: { a: l(a), b: l(b), ...(height ? { height: l(height) } : {}) },
});
const stair = (more: Partial<Stair> = {}): Passage => ({
  kind: 'stair',
  stair: {
    flight: 'straight',
    headroom: l('78'),
    going: l('10 1/2'),
    rise: l('7'),
    between: l('36'),
    ...more,
  },
});

const passes = (...passages: readonly Passage[]) =>
  wayIn(passages, size, at).map((found) => value(found).passes);

describe('wayIn', () => {
  test('Example 15 of room: every passage in its order', () => {
    expect(passes(doorway(), turn('28', '36', '60'), stair())).toEqual([true, false, true]);
    expect(passes(doorway(), turn('28', '36', '65 1/4'), stair())).toEqual([true, true, true]);
    expect(wayIn([], size, at)).toEqual([]);
  });

  test('Example 15 of room: a turn that only upright goes is held by its height', () => {
    const [found] = wayIn([turn('28', '36', '65 1/4')], size, at).map(value);
    if (found?.kind !== 'turn') throw new Error('no turn');
    expect(found.ways.map((way) => spelled([way.lies, way.turn.goes, way.overhead, way.passes]))).toEqual([
      ['upright', 'turning', '0', true],
      // 38 3/8 wide in a corridor of 28
      ['on-back', 'jams', '46 3/4', false],
      ['on-side', 'jams', '25 7/8', false],
    ]);
    expect(passes(turn('28', '36', '65 15/64'), turn('28', '36'))).toEqual([false, true]);
  });

  test('a stair goes where one way of six does', () => {
    // 17 1/2 is the least across
    expect(passes(stair({ between: l('17 1/2') }), stair({ between: l('17') }))).toEqual([true, false]);
  });

  test('what cannot be reckoned is refused by itself, and the others are told', () => {
    const found = wayIn(
      [stair({ flight: 'winders' }), doorway({ width: l('0') }), turn('0', '36'), doorway()],
      size,
      at,
    );
    expect(found.slice(0, 3).map(refusal)).toEqual([
      { code: 'winders' },
      { code: 'not-positive', what: 'clear-width' },
      { code: 'not-positive', what: 'a' },
    ]);
    expect(found[3]?.ok).toBe(true);
    expect(refusal(wayIn([turn('36', '36', '0')], size, at)[0] ?? { ok: true, value: 0 })).toEqual({
      code: 'not-positive',
      what: 'clear-height',
    });
    expect(
      wayIn([doorway(), turn('36', '36'), stair()], { ...size, depth: l('0') }, at).map(refusal),
    ).toEqual(Array.from({ length: 3 }, () => ({ code: 'not-positive', what: 'depth' })));
  });
});
