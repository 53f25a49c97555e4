import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editBoxJoint } from '../../src/job/box-joint';
import { editBank, editColumn, editJob, editStock } from '../../src/job/edits';
import { add, half, inches, type Length, less, subtract, sum, times, zero } from '../../src/length/length';
import { grainOf, type Tape, tapes } from '../../src/length/tape';
import type { Plan } from '../../src/plan/plan';
import type { Operation } from '../../src/trade/setups/operation';
import { l } from '../length/write-figures';
import { runs } from '../runs';
import { at, thousandths } from './assembled';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

const fine = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 128n));

const drawers = fc.record({
  tape: fc.constantFrom(...tapes),
  side: thousandths(440, 500),
  front: thousandths(600, 660),
  back: thousandths(440, 500),
  bottom: thousandths(180, 260),
  opening: at(14, 17),
  deep: at(10, 15),
  clearance: fine(60, 68),
  lap: fine(16, 32),
  backDado: fine(16, 32),
  behind: fine(32, 64),
  grooveDeep: fine(16, 28),
  grooveUp: fine(40, 64),
  grooveFit: fc.constantFrom(zero, inches(1n, 64n), inches(1n, 200n)),
  ease: fine(4, 12),
  captured: fc.boolean(),
  joint: fc.constantFrom(undefined, 'rabbeted', 'box-joint', 'butted' as const),
  ends: fc.constantFrom(undefined, 'any', 'equal' as const),
  frontAt: fc.constantFrom(undefined, 'between' as const),
  rabbet: thousandths(320, 400),
  finger: thousandths(200, 520),
});
type Drawers = typeof drawers extends fc.Arbitrary<infer T> ? T : never;

function planned(d: Drawers): Plan {
  const stock = (id: string, used: Length) => editStock(id, { name: id, used });
  return worked([
    ...caseDecided,
    ...editJob({ name: 'Drawers', tape: d.tape }),
    ...[...stock('s', d.side), ...stock('f', d.front), ...stock('b', d.back), ...stock('o', d.bottom)],
    ...editBank('bank', {
      name: 'Drawers',
      of: 'case',
      bay: 2,
      count: 3,
      frontStock: 'sheeta',
      sideStock: 's',
      boxFrontStock: 'f',
      boxBackStock: 'b',
      boxBottomStock: 'o',
      slideLong: d.deep,
      clearance: d.clearance,
      lap: d.lap,
      backDado: d.backDado,
      behind: d.behind,
      grooveDeep: d.grooveDeep,
      grooveUp: d.grooveUp,
      grooveFit: d.grooveFit,
      ease: d.ease,
      bottomHow: d.captured ? 'captured' : 'slid-in',
    }),
    ...editBoxJoint('bank', {
      boxJoint: d.joint,
      fingers: d.ends,
      frontRabbet: d.rabbet,
      finger: d.finger,
      frontAt: d.frontAt,
    }),
    ...editColumn('bank', 1, {
      usedFront: d.opening,
      usedBack: d.opening,
      usedLeft: l('29 11/32'),
      usedRight: l('29 11/32'),
    }),
  ]).plan;
}

const honoured = (op: Operation): Length =>
  add(op.setup.figure?.value ?? zero, op.setup.figure?.rest ?? zero);

/** The pieces of one drawer as they are printed: what each is cut to, with what its mark leaves. */
function piecesOf(plan: Plan, drawer: string) {
  const of = (role: string, cut: string, copy = '1') => {
    const op = plan.byId.get(`cut/bank~${drawer}${role}/${cut}/${copy}`);
    if (!op) throw new Error(`no ${cut} of ${role}`);
    return op;
  };
  const size = (role: string, cut: 'len' | 'rip', copy = '1') => honoured(of(role, cut, copy));
  return { of, size };
}

type Pieces = ReturnType<typeof piecesOf>;

/** What a joint of its own makes of the corner, from what is cut: how far the front laps, how far fingers stand out. */
function cornerOf(d: Drawers, { of }: Pick<Pieces, 'of'>): { readonly lap: Length; readonly proud: Length } {
  if (!d.joint) return { lap: d.lap, proud: zero };
  if (d.joint === 'rabbeted') {
    const cut = of('boxfront', 'rabbet~left');
    // the side fills its rabbet
    expect(less(subtract(honoured(cut), d.side).abs() as Length, inches(1n, 1000n))).toBe(true);
    return { lap: subtract(d.front, cut.setup.height ?? zero), proud: zero };
  }
  if (d.joint === 'butted') return { lap: d.frontAt ? zero : d.front, proud: zero };
  const [side, front] = [of('side', 'fingers', 'left'), of('boxfront', 'fingers')];
  const over = subtract(side.setup.height ?? zero, d.front);
  // both stand out as far as their mates are deep
  expect(over.equals(subtract(front.setup.height ?? zero, d.side))).toBe(true);
  return { lap: zero, proud: over };
}

test('cut as printed, every drawer box closes: back in its dadoes, bottom with its ease, as deep as its slides', () => {
  let boxes = 0;
  fc.assert(
    fc.property(drawers, (d) => {
      const plan = planned(d);
      const made = plan.banks.get('bank')?.drawers;
      if (!made?.ok) return;
      const bound = half(grainOf(d.tape as Tape));
      for (const { column, no } of made.value.drawers) {
        const { of, size } = piecesOf(plan, `c${column}d${no}`);
        const off = new Map<string, Length>();
        const { lap, proud } = cornerOf(d, { of });
        const [left, right] = [size('side', 'len', 'left'), size('side', 'len', 'right')];
        off.set('left as right', subtract(left, right));
        // tails reach into the front and stop a lap short of its face
        off.set('deep', subtract(add(left, lap), d.deep));
        const between = d.joint === 'butted' && d.frontAt;
        const wide = add(size('boxfront', 'len'), between ? times(d.side, 2n) : zero);
        const room = subtract(d.opening, times(d.clearance, 2n));
        expect([less(room, wide), less(subtract(room, wide), grainOf(d.tape))]).toEqual([false, true]);
        const inside = subtract(wide, times(add(d.side, proud), 2n));
        const groove = of('side', 'along~bottom', 'left');
        const dado = d.joint === 'butted' ? undefined : of('side', 'along~back', 'left');
        const deep = groove.setup.height ?? zero;
        off.set('back', subtract(size('boxback', 'len'), add(inside, times(dado?.setup.height ?? zero, 2n))));
        if (dado) off.set('back upright', subtract(dado.setup.cutter ?? zero, add(d.back, d.grooveFit)));
        const across = add(inside, times(deep, 2n));
        off.set('bottom wide', subtract(subtract(across, d.ease), size('boxbottom', 'len')));
        // from the floor of the front's groove to that of the back, or to the ends of the sides
        const loose = half(d.grooveFit);
        const near = dado ? honoured(dado) : zero;
        const behind = d.joint ? subtract(left, sum([near, d.back, loose])) : near;
        if (dado) off.set('behind', subtract(behind, d.behind));
        const front = subtract(d.front, of('boxfront', 'along~bottom').setup.height ?? zero);
        const whole = subtract(subtract(add(left, lap), proud), front);
        const back = d.captured
          ? subtract(sum([dado ? behind : zero, d.back]), of('boxback', 'along~bottom').setup.height ?? zero)
          : zero;
        off.set('bottom deep', subtract(subtract(subtract(whole, back), d.ease), size('boxbottom', 'rip')));
        off.set('level', subtract(honoured(groove), honoured(of('boxfront', 'along~bottom'))));
        off.set('as high', subtract(size('side', 'rip', 'left'), size('boxfront', 'rip')));
        if (d.captured)
          off.set('level behind', subtract(honoured(groove), honoured(of('boxback', 'along~bottom'))));
        // one slid in goes under the back, which ends on its upper face
        else
          off.set(
            'under the back',
            subtract(
              subtract(size('side', 'rip', 'left'), size('boxback', 'rip')),
              add(honoured(groove), d.bottom),
            ),
          );
        const bad = [...off].filter(([, by]) => by.abs().compare(bound) > 0);
        expect(bad.map(([what, by]) => `${what}: ${by.toFraction(true)}`)).toEqual([]);
        boxes += 1;
      }
    }),
    { numRuns: runs(10) },
  );
  expect(boxes).toBeGreaterThan(9);
});
