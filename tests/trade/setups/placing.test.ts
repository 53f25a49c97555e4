import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newBoard, newRun } from '../../../src/job/board-of';
import { byHand } from '../../../src/trade/carcass/by-hand';
import type { Case } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import type { Board } from '../../../src/trade/grooves/board';
import { type MachineId, machineAt } from '../../../src/trade/machines/machines';
import type { Shop } from '../../../src/trade/machines/shop';
import {
  type GrooveMachineId,
  grooveMachineIds,
  handMachineIds,
} from '../../../src/trade/machines/stored-ids';
import type { Operation } from '../../../src/trade/setups/operation';
import { isStep } from '../../../src/trade/setups/operation';
import { operationsOf } from '../../../src/trade/setups/operations';
import { placingOf, withStopAt } from '../../../src/trade/setups/placing';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';
import { framedCase, plainCase, sheets } from '../carcass/sample-case';

const shop: Shop = {
  kerf: l('1/8'),
  single: l('1/8'),
  bit: l('1/4'),
  routerBase: l('3'),
  shoeKeep: l('5'),
  shoeWaste: l('1 1/2'),
};
type Held = Pick<Board, 'machine' | 'stopSide' | 'against' | 'guide'>;
const usual: Held = { machine: 'stop', stopSide: 'left', against: 'reference', guide: 'reference' };

/** Operations of a case whose boards are all held so. */
function ofCase(c: Case, held: (part: string) => Partial<Held>): readonly Operation[] {
  const worked = partsOf(c, { stuff: sheets(), tape: '1/32', cutting: (id) => ({ ...usual, ...held(id) }) });
  if (!worked.ok) throw new Error('no case');
  const { parts } = worked.value;
  return operationsOf({ parts, cases: [c], hand: [], recuts: () => ({}) }, { shop, tape: '1/32' });
}

const topped: Case = {
  ...plainCase,
  hasTop: true,
  partitions: 1,
  cleats: 1,
  stocks: { ...plainCase.stocks, cleat: 'a', top: 'b' },
};

const held = (machine: GrooveMachineId, stopSide: 'left' | 'right', guide: Held['guide'] = 'reference') => ({
  machine,
  stopSide,
  guide,
});

const inPart = (ops: readonly Operation[], part: string, what = 'groove') =>
  ops.filter((op) => op.part === `c1~${part}` && op.what === what);

/** What tells a piece from its mirror image on a machine. */
const edgeOf = ({ placing = {} }: Operation) => placing.toYou ?? placing.leads ?? placing.onFence;

/**
 * Rows: the part and the face that is cut. Columns: off a rip fence what leads, on a sled what is on its fence, under
 * a guide what is toward you. Worked by hand from the picture of an opened case; the turning itself is held in
 * `turn.test.ts`.
 */
describe('placingOf: grooves of a case', () => {
  test.each([
    ['left', 'inside', 'front', 'back', 'front'],
    ['right', 'inside', 'back', 'front', 'back'],
    ['bottom', 'upper', 'back', 'front', 'back'],
    ['top', 'under', 'front', 'back', 'front'],
  ])('%s, %s face down', (part, face, leadsAtFence, onFenceStopRight, onFenceStopLeft) => {
    const at = (machine: GrooveMachineId, side: 'left' | 'right') =>
      placingOf(
        inPart(
          ofCase(topped, () => held(machine, side)),
          part,
        )[0] ?? {},
      );
    expect(at('fence', 'left')).toMatchObject({
      face: { named: face, lies: 'down' },
      leads: { at: 'edge', named: leadsAtFence },
      stop: 'right',
    });
    expect(at('stop', 'right')).toMatchObject({
      face: { named: face, lies: 'down' },
      onFence: { at: 'edge', named: onFenceStopRight },
      stop: 'right',
      fence: 'near',
    });
    expect(at('stop', 'left').onFence?.named).toBe(onFenceStopLeft);
    expect(at('index', 'left').onFence?.named).toBe(onFenceStopLeft);
    expect(at('router', 'left').face?.lies).toBe('up');
    // turned over, and its fence at the far side: the same edge as on a sled
    for (const [side, named] of [
      ['left', onFenceStopLeft],
      ['right', onFenceStopRight],
    ] as const)
      expect(at('sliding', side)).toMatchObject({
        face: { named: face, lies: 'up' },
        onFence: { at: 'edge', named },
        fence: 'far',
      });
  });

  // guide at the left, so that the bit draws into it as the router is pushed away
  test.each([
    ['reference', 'left', 'left', 'back'],
    ['reference', 'right', 'left', 'front'],
    ['far', 'left', 'right', 'front'],
    ['far', 'right', 'right', 'back'],
  ] as const)(
    'router, guide on the %s side, %s side of the case: bottom end on your %s, %s edge toward you',
    (guide, part, at, edge) => {
      const [op] = inPart(
        ofCase(plainCase, () => held('router', 'left', guide)),
        part,
      );
      expect(placingOf(op ?? {})).toMatchObject({
        measured: { at: 'end', named: 'bottom' },
        stop: at,
        toYou: { at: 'edge', named: edge },
      });
    },
  );

  test('both faces of a partition want opposite edges', () => {
    const ops = inPart(
      ofCase(plainCase, () => ({})),
      'partition1',
    );
    const edges = (face: string) =>
      new Set(ops.filter((op) => op.copy === face).map((op) => op.placing?.onFence?.named));
    expect([edges('A'), edges('B')]).toEqual([new Set(['back']), new Set(['front'])]);
  });

  test('with the other end on the stop that end is named, and the edges change places', () => {
    const ops = ofCase(plainCase, () => ({ against: 'other' }) as const);
    expect(placingOf(inPart(ops, 'left')[0] ?? {})).toMatchObject({
      toStop: { at: 'end', named: 'top' },
      onFence: { at: 'edge', named: 'back' },
      leads: { at: 'edge', named: 'front' },
    });
  });
});

describe('placingOf: other cuts', () => {
  const ops = ofCase({ ...topped, partitions: 2 }, () => ({}));
  const first = (part: string, what: string) => placingOf(inPart(ops, part, what)[0] ?? {});

  test('a rip has its true edge on the fence, a crosscut its squared end on the stop; the good face is up', () => {
    expect(first('left', 'rip')).toMatchObject({
      onFence: { at: 'edge', named: 'true' },
      face: { lies: 'up' },
    });
    expect(first('left', 'length')).toMatchObject({
      onFence: { at: 'edge', named: 'true' },
      toStop: { at: 'end', named: 'squared' },
    });
  });

  test('rabbets lie inside face down off the edge or end they run along', () => {
    const of = (part: string) =>
      inPart(ops, part, 'rabbet').map(({ placing }) => [placing?.onFence, placing?.leads]);
    expect(of('left')).toContainEqual([
      { at: 'end', named: 'top' },
      { at: 'edge', named: 'back' },
    ]);
    expect(of('right')).toContainEqual([
      { at: 'end', named: 'top' },
      { at: 'edge', named: 'front' },
    ]);
    expect(of('left').filter(([on]) => on?.named === 'back')).not.toEqual([]);
  });

  test('partitions are notched stood on the back edge', () =>
    expect(first('partition1', 'notch')).toMatchObject({
      stands: { at: 'edge', named: 'back' },
      toStop: { at: 'end', named: 'bottom' },
    }));

  test('every cut of a piece says which face or edge is down and what it lies against', () => {
    for (const op of [...ops, ...ofCase(framedCase, () => ({}))]) {
      if (isStep(op) || op.what === 'test') continue;
      const { face, stands, onFence, toStop } = placingOf(op);
      expect(face ?? stands, op.id).toBeDefined();
      expect(onFence ?? toStop, op.id).toBeDefined();
    }
  });
});

describe('placingOf: work added by hand', () => {
  const all = handMachineIds.filter((id) => machineAt(id).cuts !== 'none');
  const ops = handOn(all);

  test.each(all)('on %s every piece says which face is down or up', (id) => {
    const own = ops.filter((op) => op.setup.machine === id);
    expect(own.length).toBeGreaterThan(0);
    for (const op of own) expect(placingOf(op).face?.lies).toMatch(/^(up|down)$/);
  });

  // what turns in a table cuts from below, what is held or pulled over the work from above: how they are built
  test.each([
    ['fence', 'down'],
    ['stop', 'down'],
    ['sliding', 'up'],
    ['router', 'up'],
    ['saw', 'up'],
    ['hand', 'up'],
  ] as const)('on %s the face to be cut lies %s', (id, lies) =>
    expect(placingOf(ops.find((op) => op.setup.machine === id) ?? {}).face).toEqual({ named: 'cut', lies }),
  );

  test('at the bench nothing is cut, and nothing is said', () =>
    expect(placingOf(handOn(['bench'])[0] ?? {})).toEqual({}));
});

/** Work by hand on the left side, one for each machine. */
function handOn(machines: readonly MachineId[]): readonly Operation[] {
  const worked = partsOf(plainCase, { stuff: sheets(), tape: '1/32' });
  if (!worked.ok) throw new Error('no case');
  const hand = machines.map((machine) => ({
    id: machine,
    part: 'c1~left',
    name: 'Slot',
    machine,
    figure: l('2'),
  }));
  return operationsOf(
    { parts: worked.value.parts, cases: [plainCase], hand, recuts: () => ({}) },
    { shop, tape: '1/32' },
  ).filter((op) => op.what === 'hand');
}

// a saw along a guide sets grooves like a router, its guide under the wide side of its shoe, at your left
describe('placingOf: grooves along the guide of a circular saw', () => {
  // worked by hand from an opened case, as for the router
  test.each([
    ['reference', 'left', 'left', 'back'],
    ['reference', 'right', 'left', 'front'],
    ['far', 'left', 'right', 'front'],
    ['far', 'right', 'right', 'back'],
  ] as const)(
    'guide on the %s side, %s side of the case: bottom end on your %s, %s edge toward you',
    (guide, part, at, edge) => {
      const [op] = inPart(
        ofCase(plainCase, () => held('saw', 'left', guide)),
        part,
      );
      expect(placingOf(op ?? {})).toMatchObject({
        face: { lies: 'up' },
        measured: { at: 'end', named: 'bottom' },
        stop: at,
        toYou: { at: 'edge', named: edge },
      });
    },
  );
});

type Vector = readonly [number, number, number];

const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * The same by coordinates: x to the right, y away from you, z up; work is fed away from you. A board is only ever
 * turned, never mirrored, so inside, end and front keep their handedness.
 */
function turnedOnTable(side: 'left' | 'right', end: 'bottom' | 'top', stop: 'left' | 'right') {
  const standing = {
    inside: [side === 'left' ? 1 : -1, 0, 0],
    end: [0, 0, end === 'bottom' ? -1 : 1],
    front: [0, -1, 0],
  } satisfies Record<string, Vector>;
  const hand = dot(cross(standing.inside, standing.end), standing.front);
  const front = cross([0, 0, -1], [stop === 'left' ? -1 : 1, 0, 0]);
  return front[1] * hand > 0 ? 'front' : 'back';
}

describe('placingOf: boards laid out by hand', () => {
  const board = (own: Partial<Board>): Board => ({
    ...newBoard('b1'),
    length: l('30'),
    across: l('12'),
    thickness: l('3/4'),
    runs: [
      {
        ...newRun('r1'),
        count: 2,
        first: l('5'),
        pitch: l('6'),
        width: l('3/8'),
        depth: l('1/4'),
        stopped: l('3/4'),
      },
    ],
    ...own,
  });
  const grooves = (own: Partial<Board>) =>
    operationsOf(
      { parts: [byHand(board(own), { tape: '1/32' })], cases: [], hand: [], recuts: () => ({}) },
      { shop, tape: '1/32' },
    ).filter((op) => op.what === 'groove');

  const pair = (own: Partial<Board>) => {
    const ops = grooves({ made: 'pair', ...own });
    return ['left', 'right'].map((hand) => ops.find((op) => op.copy === hand));
  };

  test('a stopped groove begins behind the front edge on one of a pair and ends before it on the other', () => {
    const [left, right] = pair({});
    expect([left?.placing?.leads?.named, right?.placing?.leads?.named]).toEqual(['back', 'front']);
    expect(left?.placing?.stopped).toEqual(l('3/4'));
  });

  test.each(['bottom', 'top', 'left', 'right', 'front', 'back'])(
    'the two of a pair with its %s end on the stop lie on opposite edges',
    (end) => {
      const [left, right] = pair({ end });
      expect(left?.placing?.onFence).toBeDefined();
      expect(right?.placing?.onFence).toEqual(left?.placing?.leads);
      expect(right?.placing?.leads).toEqual(left?.placing?.onFence);
    },
  );

  test('what leads is what is away from you once the side is turned inside down with that end on the stop', () => {
    for (const stopSide of ['left', 'right'] as const)
      for (const end of ['bottom', 'top'] as const)
        for (const against of ['reference', 'other'] as const) {
          const onStop = (end === 'bottom') === (against === 'reference') ? 'bottom' : 'top';
          const leads = pair({ stopSide, end, against }).map((op) => op?.placing?.leads?.named);
          expect(leads).toEqual([
            turnedOnTable('left', onStop, stopSide),
            turnedOnTable('right', onStop, stopSide),
          ]);
        }
  });

  test('boards all alike say the face and the end; no edge is named where it is not known which is the front', () => {
    const [one] = grooves({ copies: 2 });
    expect(one?.placing).toMatchObject({
      face: { named: 'grooved', lies: 'down' },
      toStop: { at: 'end', named: 'bottom' },
    });
    expect(one?.placing?.onFence).toBeUndefined();
  });

  test('an end somebody called otherwise is said as it was, with no edge made up for it', () =>
    expect(grooves({ made: 'pair', end: 'stamped' })[0]?.placing).toMatchObject({
      toStop: { at: 'end', named: 'stamped' },
    }));
});

/** By setup the operations in it that are the same cut on left and on right. */
function mirrored(ops: readonly Operation[]): readonly (readonly [Operation, Operation])[] {
  const key = (op: Operation) => `${op.setup.key} ${op.id.split('/')[2]}`;
  return inAny(ops, 'left').flatMap((left) =>
    inAny(ops, 'right')
      .filter((right) => key(right) === key(left))
      .map((right) => [left, right] as const),
  );
}
const inAny = (ops: readonly Operation[], part: string) =>
  ops.filter((op) => op.part === `c1~${part}` && (op.what === 'groove' || op.what === 'rabbet'));

test('left and right at one setup: same face, same end, the other edge, whatever the machine and its stop', () => {
  const anyHeld = fc.record({
    machine: fc.constantFrom(...grooveMachineIds),
    stopSide: fc.constantFrom('left' as const, 'right' as const),
    against: fc.constantFrom('reference' as const, 'other' as const),
    guide: fc.constantFrom('reference' as const, 'far' as const),
  });
  fc.assert(
    fc.property(anyHeld, anyHeld, fc.boolean(), (one, other, alike) => {
      const ops = ofCase(plainCase, (id) => (alike || id.endsWith('left') ? one : other));
      const pairs = mirrored(ops);
      if (alike) expect(pairs.length).toBeGreaterThan(1);
      for (const [left, right] of pairs) {
        const [a, b] = [placingOf(left), placingOf(right)];
        expect([b.face, b.toStop, b.stop, b.measured]).toEqual([a.face, a.toStop, a.stop, a.measured]);
        expect(edgeOf(left)).toBeDefined();
        expect(edgeOf(right)).not.toEqual(edgeOf(left));
        if (a.toStop && a.leads) expect([b.onFence, b.leads]).toEqual([a.leads, a.onFence]);
        else if (a.toStop) expect(b.onFence).not.toEqual(a.onFence);
        else expect(b.onFence).toEqual(a.onFence);
      }
    }),
    { numRuns: runs(60) },
  );
});

test('withStopAt turns a piece half round, and back again', () => {
  const [op] = inPart(
    ofCase(plainCase, () => ({})),
    'left',
  );
  const placing = placingOf(op ?? {});
  const turned = withStopAt(placing, 'right');
  expect([turned.onFence, turned.leads]).toEqual([placing.leads, placing.onFence]);
  expect(withStopAt(turned, 'left')).toEqual(placing);
});
