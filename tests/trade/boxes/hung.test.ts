import { describe, expect, test } from 'vitest';
import { drawersWarnings } from '../../../src/trade/boxes/drawer-warnings';
import type { Bank } from '../../../src/trade/fronts/bank';
import { l, w } from '../grooves/sample';
import { bank, cutsWith, drawersWith } from './joints/corner';

/** Two boxes of 1/2 behind fronts of 3/4, in an opening of 16 9/16 × 24 × 20; a runner is 3/4, a strip 1/4. */
const runners = { hung: 'runners', boxDeep: undefined, clearance: undefined } as const;
const strips = { ...runners, hung: 'strips', backDado: l('1/8') } as const;

function made(more: Partial<Bank>) {
  const found = drawersWith(more);
  if (!found.ok) throw new Error(found.error.map(({ code }) => code).join());
  return found.value;
}

/** What is wrong, with its figures. */
function wrong(more: Partial<Bank>): string {
  const found = drawersWith(more);
  if (found.ok) return 'ok';
  return found.error
    .map((p) =>
      [p.code, ...['by', 'least', 'most'].flatMap((x) => (x in p ? [w(p[x as never])] : []))].join(' '),
    )
    .join();
}

const warned = (more: Partial<Bank>): readonly string[] =>
  drawersWarnings(made(more)).map((x) =>
    [
      x.code,
      ...['on', 'left', 'gap', 'half', 'least'].flatMap((f) => (f in x ? [w(x[f as never])] : [])),
    ].join(' '),
  );

describe('boxes on runners', () => {
  // 20 − 3/4 − 1/4 = 19; a box given shallower is as deep as that, and so is its runner
  test('are as deep as the case leaves them, less the room behind', () => {
    expect(
      [
        made(runners).drawers[0]?.plan.depth,
        made({ ...runners, backRoom: l('1') }).drawers[0]?.plan.depth,
      ].map(w),
    ).toEqual(['19', '18 1/4']);
    expect(w(cutsWith({ ...runners, boxDeep: l('16') }).get('runner len 1')?.figure)).toBe('16');
  });

  // covering fronts stand before the case: 20 − 1/4. A front of its own, lapped 3/16, stands in it: 20 − 3/16 − 1/4
  // behind what is left of it, and that more for the box: 19 3/4 as well, its runners 19 9/16. It is 16 3/8 wide, so
  // the box must be no wider: 1/8 free at each side
  test('behind covering fronts and fronts of their own', () => {
    expect(w(made({ ...runners, fit: 'overlay' }).drawers[0]?.plan.depth)).toBe('19 3/4');
    const own = {
      ...runners,
      frontIs: 'box',
      boxJoint: 'rabbeted',
      frontRabbet: l('9/16'),
      sidePlay: l('1/8'),
    } as const;
    expect(w(made(own).drawers[0]?.plan.depth)).toBe('19 3/4');
    expect(w(cutsWith(own).get('runner len 1')?.figure)).toBe('19 9/16');
  });

  // a stick of 0: the lowest runner stands on the bottom itself, its gap 0 and the box just over it; 1/8 lower it would
  // stand 1/8 in the bottom
  test('the lowest may stand on the bottom, and is refused in it', () => {
    const on = made({ ...runners, bottom: l('0'), boxUp: l('3/4') }).sticks;
    expect(on.ok && w(on.value[1]?.length)).toBe('0');
    const under = made({ ...runners, bottom: l('0'), boxUp: l('5/8') }).sticks;
    expect(under.ok ? 'ok' : [under.error.drawer, w(under.error.by)]).toEqual([2, '1/8']);
  });

  // play 3/4 is as much as the runner: 3/4 + half of 1/2 = 1 would do. Runners 3/4 less 5/8 leave 1/8 of 1/2
  test('a runner that carries nothing is refused, one that carries little is told', () => {
    expect(wrong({ ...runners, sidePlay: l('3/4') })).toBe('runner-thin 1/4 1');
    expect(warned({ ...runners, sidePlay: l('5/8') })).toContain('rests-little 1/8 1/4');
  });

  // 11 7/8 + 3/32 − 3/4 = 11 7/32 to the runner; a box of 10 1/2 leaves 23/32, under the 13/16 of kicker and room
  test('a runner too near for a kicker and too far to be one is told', () => {
    const low = { ...runners, kickers: 'over', fronts: { 2: { boxHigh: l('10 1/2') } } } as const;
    expect(warned(low)).toContain('kicker-loose 23/32');
    expect(made(low).drawers[1]?.hung?.kicker).toBe(undefined);
  });

  // on the runner of 3/4 a block reaches 1 1/2 in: less play of 11/16 and the side of 1/2 it is 5/16 past; a side of
  // 5/8 leaves 3/16, 1/16 short of 1/4
  test('a stop block that does not reach past the side is refused by how much', () => {
    expect(wrong({ ...runners, sidePlay: l('11/16') })).toBe('ok');
    expect(wrong({ ...runners, sidePlay: l('11/16'), stocks: { ...bank.stocks, side: 'thick' } })).toBe(
      'stop-short 1/16',
    );
  });

  // a box 5 deep: inside 5 − 3/4 − 1/2 − 1/2 = 3 1/4, less 1/16 + 3 + 3/4 is 9/16 too little
  test('stop blocks that leave a short box no way out are refused by how much', () => {
    expect(wrong({ ...runners, boxDeep: l('5') })).toBe('stop-shut 9/16');
  });

  test.each([
    [{ runHigh: l('0') }, 'hung-not-positive'],
    [{ sidePlay: l('-1/32') }, 'hung-negative'],
    [{ backRoom: l('-1/8') }, 'hung-negative'],
    [{ kickRoom: l('-1/8') }, 'hung-negative'],
  ])('%o is refused', (more, code) => {
    expect(wrong({ ...runners, ...more })).toContain(code);
  });
});

describe('boxes on strips', () => {
  test('the groove is one cut of both sides, let down on a bit, in the outside face', () => {
    const cuts = cutsWith(strips);
    const [left, right] = ['left', 'right'].map((copy) => cuts.get(`side along~strip ${copy}`));
    expect([left, right].map((op) => [w(op?.figure), w(op?.setup.height), w(op?.width)])).toEqual([
      ['1 1/4', '1/4', '17/32'],
      ['1 1/4', '1/4', '17/32'],
    ]);
    expect(left?.setup.key).toBe(right?.setup.key);
    expect(left?.setup.machine).toBe('routertable');
    expect([left, right].map((op) => op?.placing?.face)).toEqual([
      { named: 'outside', lies: 'down' },
      { named: 'outside', lies: 'down' },
    ]);
    // bottom edge on the fence at your right, the outside down: of the left side, which looks left, away is −left ×
    // bottom = right × bottom = back, which leads; of the right one the front
    expect([left, right].map((op) => op?.placing?.leads)).toEqual([
      { at: 'end', named: 'back' },
      { at: 'end', named: 'front' },
    ]);
  });

  // 19 − 3/4 − 3/8 − 1/16
  test('a strip ends a little short of its groove', () => {
    expect(w(cutsWith(strips).get('hangstrip len 1')?.figure)).toBe('17 13/16');
  });

  test.each([
    // a dado of 1/4 in a side of 1/2 leaves 1/4: a strip of that runs right to it
    [{ backDado: l('1/4') }, 'strip-in-dado 0 1/4'],
    // abreast of the bottom's groove, 3/8 to 41/64 up: at 41/64 it is clear, 41/64 − 1/2 higher
    [{ stripUp: l('1/2'), grooveDeep: l('1/4') }, 'strip-meets-bottom 9/64 41/64'],
    // 11 1/4 + 17/32 over a top edge of 11 1/4
    [{ stripUp: l('11 1/4') }, 'strip-off 17/32 10 23/32'],
    [{ stripUp: l('0') }, 'hung-not-positive'],
    [{ stripPlay: l('-1/32') }, 'hung-negative'],
  ])('%o is refused', (more, says) => {
    expect(wrong({ ...strips, ...more })).toContain(says);
  });

  // 1/2 − 1/4 − 3/16 = 1/16; with the dado of 1/8 just the 1/8 that is left
  test('what is left of a side between its grooves is told', () => {
    expect(warned({ ...strips, backDado: l('3/16') })).toContain('strip-web 1/16 1/8');
    expect(warned(strips)).toEqual([]);
  });
});
