import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editBoxJoint } from '../../src/job/box-joint';
import { editBank, editColumn, editJob, editStock } from '../../src/job/edits';
import { editHanging } from '../../src/job/hanging';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { add, half, inches, type Length, less, subtract, sum, times, zero } from '../../src/length/length';
import { grainOf, type Tape, tapes } from '../../src/length/tape';
import { partsOfJob } from '../../src/plan/parts-of-job';
import type { Plan } from '../../src/plan/plan';
import type { Operation } from '../../src/trade/setups/operation';
import { operationsOf } from '../../src/trade/setups/operations';
import { l } from '../length/write-figures';
import { runs } from '../runs';
import { at, thousandths } from './assembled';
import { caseDecided } from './carried-cabinet-case';
import { logOf } from './job-of';

const fine = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 128n));

const drawers = fc.record({
  tape: fc.constantFrom(...tapes),
  side: thousandths(440, 640),
  front: thousandths(600, 660),
  runner: thousandths(180, 800),
  opening: at(14, 17),
  hung: fc.constantFrom('runners', 'strips' as const),
  own: fc.boolean(),
  kickers: fc.constantFrom(undefined, 'over' as const),
  joint: fc.constantFrom(undefined, 'rabbeted', 'box-joint', 'butted' as const),
  play: fine(2, 20),
  behind: fine(8, 64),
  high: fine(48, 112),
  room: fine(4, 16),
  up: fine(96, 200),
  stripPlay: fine(1, 8),
  backDado: fine(8, 24),
  low: fc.constantFrom(undefined, l('5 1/2')),
  // a whole case is worked out for every fortieth
  inCase: fc.integer({ min: 0, max: 39 }).map((n) => n === 0),
});
type Drawers = typeof drawers extends fc.Arbitrary<infer T> ? T : never;

/** The sheets of the case without it. */
const sheetsDecided = caseDecided.filter((change) => 'path' in change && change.path.startsWith('stock/'));

function planned(d: Drawers): Pick<Plan, 'banks' | 'stuff' | 'byId'> {
  const stock = (id: string, used: Length) => editStock(id, { name: id, used });
  const changes = [
    ...(d.inCase ? caseDecided : sheetsDecided),
    ...editJob({ name: 'Drawers', tape: d.tape }),
    ...[...stock('s', d.side), ...stock('f', d.front), ...stock('o', l('.235')), ...stock('r', d.runner)],
    ...editBank('bank', {
      name: 'Drawers',
      ...(d.inCase
        ? { of: 'case', bay: 2 }
        : { width: d.opening, height: l('29 11/32'), depth: l('16 1/2') }),
      count: 3,
      frontStock: 'sheeta',
      sideStock: 's',
      boxFrontStock: 'f',
      boxBottomStock: 'o',
      backDado: d.backDado,
    }),
    ...editBoxJoint('bank', { boxJoint: d.joint, frontIs: d.own ? 'box' : undefined }),
    ...editHanging('bank', {
      hung: d.hung,
      kickers: d.kickers,
      sidePlay: d.play,
      backRoom: d.behind,
      runHigh: d.high,
      kickRoom: d.room,
      stripUp: d.up,
      stripPlay: d.stripPlay,
      runnerStock: 'r',
    }),
    ...editColumn('bank', 1, {
      usedFront: d.opening,
      usedBack: d.opening,
      usedLeft: l('29 11/32'),
      usedRight: l('29 11/32'),
    }),
    ...(d.low ? [{ kind: 'edit', path: 'banks/bank/fronts/f2/boxHigh', value: '11/2' } as const] : []),
  ];
  // without the order of the work, which nothing here asks for
  const job = jobOf('j', fold(logOf(changes)).values);
  const made = partsOfJob(job, {});
  const banks = [...made.banks.values()].flatMap(({ work }) => work ?? []);
  const operations = operationsOf(
    { parts: made.parts, cases: job.cases, banks, hand: [], recuts: () => ({}) },
    { shop: {}, tape: job.tape },
  );
  return { ...made, byId: new Map(operations.map((op) => [op.id, op])) };
}

const honoured = (op: Operation): Length =>
  add(op.setup.figure?.value ?? zero, op.setup.figure?.rest ?? zero);

/** One side of a drawer in coordinates: heights over the bottom of the case, distances in from the left wall. */
type Stands = { readonly low: Length; readonly high: Length };

/** By how much two lie in each other up and down; nothing or less where they are clear. */
const into = (a: Stands, b: Stands): Length => {
  const [x, y] = [subtract(a.high, b.low), subtract(b.high, a.low)];
  return less(x, y) ? x : y;
};

test('cut and hung as printed, boxes run on what carries them, under nothing that stops them, and do not come out', () => {
  const hung = { runners: 0, strips: 0 };
  fc.assert(
    fc.property(drawers, (d) => {
      const plan = planned(d);
      const found = plan.banks.get('bank');
      const made = found?.drawers;
      if (!made?.ok || !made.value.sticks.ok) return;
      const grain = grainOf(d.tape as Tape);
      const off = new Map<string, Length>();
      const wrong = new Map<string, Length>();
      const clear = (what: string, by: Length) => {
        if (less(by, times(grain, -2n))) wrong.set(what, by);
      };
      const of = (id: string) => {
        const op = plan.byId.get(`cut/${id}`);
        if (!op) throw new Error(`no ${id}`);
        return op;
      };
      const has = (id: string): boolean => plan.byId.has(`cut/${id}`);
      const { fronts } = made.value;
      const deep = fronts.columns[0]?.opening.deep.value ?? zero;
      const sill = fronts.columns[0]?.opening.sill.value ?? zero;
      const as = d.hung === 'runners' ? 'runner' : 'hangstrip';
      const boxes = new Map<number, Stands>();
      for (const { no, plan: own, hung: stops } of made.value.drawers) {
        const id = `bank~c1d${no}`;
        const cut = (role: string, what: string, copy = '1') => honoured(of(`${id}${role}/${what}/${copy}`));
        const [left, right] = ['left', 'right'].map((hand) => of(`bank~bench/${as}/c1d${no}h${hand}`));
        if (!left || !right || !stops) throw new Error('no stick');
        // K5.5: the two hands are set by one figure
        expect([left.setup.key, left.figure.toFraction()]).toEqual([
          right.setup.key,
          right.figure.toFraction(),
        ]);
        // where the box stands on its fronts: printed heights, and what it is over them
        const mark = fronts.marks.find((each) => each.no === no);
        const foot = sum([sill, mark?.bottomUp ?? zero, made.value.slides.boxUp]);
        const high = cut('side', 'rip', 'left');
        const box = { low: foot, high: add(foot, high) };
        boxes.set(no, box);
        const carrier = { low: honoured(left), high: add(honoured(left), cut(as, 'rip')) };
        if (d.hung === 'runners') {
          off.set('stands on its runner', subtract(carrier.high, box.low));
          // it rests on it, and does not drop between two
          clear('rests', subtract(d.runner, d.play));
        } else {
          const groove = of(`${id}side/along~strip/left`);
          const lower = add(foot, honoured(groove));
          off.set('hangs on its strip', subtract(carrier.high, add(lower, groove.setup.cutter ?? zero)));
          clear('strip over the lower wall', subtract(carrier.low, lower));
          // as far in as the strip stands, the groove is: its floor is off the strip by the play of the side
          off.set('floor', subtract(groove.setup.height ?? zero, d.runner));
          clear('side left', subtract(subtract(d.side, groove.setup.height ?? zero), inches(1n, 1000n)));
          // from the back end of the side: the strip ends short of the groove, the groove behind the front
          const stopped = groove.which?.is === 'takes' ? groove.which.stopped?.to : undefined;
          clear('groove before the joint', subtract(subtract(own.depth, own.front), stopped ?? zero));
          clear('strip in its groove', subtract(stopped ?? zero, cut('hangstrip', 'len')));
        }
        // the box and what is free round it are the opening
        const inFront = d.own ? zero : undefined;
        const wide = add(cut('boxback', 'len'), zero);
        clear('back between the walls', subtract(subtract(d.opening, times(d.play, 2n)), wide));
        // front to back: behind its front, and clear of the back of the case
        const face = d.own ? zero : (plan.stuff.find(({ id: s }) => s === 'sheeta')?.thickness ?? zero);
        off.set('behind', subtract(subtract(deep, add(inFront ?? face, own.depth)), d.behind));
        if (d.hung === 'runners')
          off.set(
            'as long as its box',
            subtract(add(cut('runner', 'len'), d.own ? own.lap : zero), own.depth),
          );
        const own2 = has(`${id}kicker/len/1`) ? honoured(of(`bank~bench/kicker/c1d${no}hleft`)) : undefined;
        if (own2) off.set('kicker over its box', subtract(subtract(own2, box.high), d.room));
        // stop blocks: those over the box do not touch it, and those on its back reach past their lower face
        const above = made.value.sticks.value.find((s) => s.drawer === no - 1 && !s.as)?.length;
        const over = own2 ?? (d.hung === 'runners' ? above : undefined);
        const block = over ?? add(box.high, d.room);
        clear('block over the box', subtract(block, box.high));
        clear('blocks meet', subtract(add(box.high, stops.stop.rise), add(block, half(d.room))));
        const past = over ? subtract(times(d.runner, 2n), add(d.play, d.side)) : stops.stop.catches;
        clear('block past the side', subtract(past, inches(1n, 8n)));
        clear('comes out', stops.stop.out);
      }
      // no box, nor what carries it, stands in another
      for (const [no, box] of boxes) {
        const over = boxes.get(no - 1);
        if (over) clear(`${no} under ${no - 1}`, times(into(box, over), -1n));
        const above = made.value.sticks.value.find((s) => s.drawer === no - 1 && !s.as);
        if (above && d.hung === 'runners') clear(`${no} under its runner`, subtract(above.length, box.high));
      }
      const bad = [...off].filter(([, by]) => by.abs().compare(grain) > 0);
      expect([...bad, ...wrong].map(([what, by]) => `${what}: ${by.toFraction(true)}`)).toEqual([]);
      hung[d.hung] += 1;
    }),
    { numRuns: runs(100) },
  );
  expect(Math.min(hung.runners, hung.strips)).toBeGreaterThan(3);
});
