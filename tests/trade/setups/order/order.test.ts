import { describe, expect, test } from 'vitest';
import { type Order, orderSetups, type Step } from '../../../../src/trade/setups/order/order';

const step = (id: string, build: string, setup: string, ...after: readonly string[]): Step => ({
  id,
  build,
  setup,
  after,
});

/** A step of a build with one setup only, both called the same. */
const plain = (id: string, setup: string, ...after: readonly string[]): Step =>
  step(id, setup, setup, ...after);

function order(steps: readonly Step[], effort?: number): Order {
  const result = orderSetups(steps, effort);
  if (!result.ok) throw new Error(result.error.ring.join());
  return result.value;
}

const setups = (o: Order): readonly string[] => o.runs.map((run) => run.setup);
const laid = (o: Order): readonly string[] => o.runs.flatMap((run) => run.steps);

/** Example 1 of setups: two sides from one rip; bottom, top and partition from another; dadoes, then rabbets. */
const cabinet: readonly Step[] = [
  ...['left', 'right'].flatMap((side) => [
    step(`rip ${side}`, 'saw', 'fence 17 1/2'),
    step(`length ${side}`, 'crosscut', 'stop side', `rip ${side}`),
    step(`dado ${side}`, 'stack', 'stack dado', `length ${side}`),
    step(`rabbet ${side}`, 'sacrificial fence', 'rabbet', `dado ${side}`),
  ]),
  ...['bottom', 'top', 'partition'].flatMap((part) => [
    step(`rip ${part}`, 'saw', 'fence 17 7/32'),
    step(`length ${part}`, 'crosscut', `stop ${part}`, `rip ${part}`),
  ]),
  step('dado bottom', 'stack', 'stack dado', 'length bottom'),
  step('dado top', 'stack', 'stack dado', 'length top'),
];

describe('orderSetups', () => {
  test('Example 1 of setups: 2 rips, 4 lengths, 1 stack and 1 fence are 8 setups', () => {
    const found = order(cabinet);
    expect(found.runs).toHaveLength(8);
    expect([found.leastRuns, found.leastBuilds, found.builds, found.proved]).toEqual([8, 4, 4, true]);
    expect(setups(found)).toEqual([
      'fence 17 1/2',
      'fence 17 7/32',
      'stop side',
      'stop bottom',
      'stop top',
      'stop partition',
      'stack dado',
      'rabbet',
    ]);
  });

  test('Example 2 of setups: A, B, A is 3 when a later A part waits on B for a measure as built', () => {
    const found = order([plain('a1', 'A'), plain('b', 'B', 'a1'), plain('a2', 'A', 'b')]);
    expect(setups(found)).toEqual(['A', 'B', 'A']);
    expect([found.builds, found.leastRuns, found.leastBuilds, found.proved]).toEqual([3, 3, 3, true]);
  });

  test('A waits for the later A part when nothing waits on the first', () => {
    const found = order([plain('a1', 'A'), plain('b', 'B'), plain('a2', 'A', 'b')]);
    expect(setups(found)).toEqual(['B', 'A']);
  });

  test('a ring of setups that no chain shows costs one run more, and is proved', () => {
    const found = order([plain('a1', 'A'), plain('b1', 'B', 'a1'), plain('b2', 'B'), plain('a2', 'A', 'b2')]);
    expect([found.runs.length, found.leastRuns, found.proved]).toEqual([3, 3, true]);
  });

  // By hand. p, r, q, t in turn is the only way with 4 runs, and has 4 builds. 2 builds cannot be: r waits on build 1,
  // q late on build 2. 3 builds: p, q | r, t | q late, or r early | p, q | r, t: 5 runs each.
  test('a build is not set up again to save a cheap setup', () => {
    const found = order([
      step('p', '1', 'p'),
      step('q', '1', 'q'),
      step('q late', '1', 'q', 'r early'),
      step('r', '2', 'r', 'p'),
      step('r early', '2', 'r'),
      step('t', '2', 't', 'q'),
    ]);
    expect([found.builds, found.runs.length, found.proved]).toEqual([3, 5, true]);
    expect([found.leastBuilds, found.leastRuns]).toEqual([3, 4]);
  });

  test('an order as good as any is kept as given', () => {
    const wideFirst = ['20', '17 1/2', '12', '5'].map((w) => step(`rip ${w}`, 'saw', `fence ${w}`));
    const narrowFirst = [...wideFirst].reverse();
    expect(laid(order(wideFirst))).toEqual(wideFirst.map((s) => s.id));
    expect(laid(order(narrowFirst))).toEqual(narrowFirst.map((s) => s.id));
  });

  test('a step stands before those listed earlier only when they wait on it', () => {
    const found = order([plain('late', 'A', 'early'), plain('other', 'B'), plain('early', 'C')]);
    expect(laid(found)).toEqual(['other', 'early', 'late']);
  });

  test('an after that is not in the list counts as done', () => {
    const found = order([plain('a', 'A', 'cut last week'), plain('b', 'B', 'a', 'cut last week')]);
    expect(laid(found)).toEqual(['a', 'b']);
  });

  test('an after named twice counts once', () => {
    expect(laid(order([plain('a', 'A'), plain('b', 'B', 'a', 'a')]))).toEqual(['a', 'b']);
  });

  test('nothing to do is no run, and proved', () => {
    expect(order([])).toEqual({ runs: [], builds: 0, proved: true, leastRuns: 0, leastBuilds: 0 });
  });

  test('one step is one run', () => {
    const found = order([plain('a', 'A')]);
    expect(found.runs).toEqual([{ setup: 'A', build: 'A', steps: ['a'] }]);
  });

  test('a run of one setup keeps the after within it', () => {
    expect(laid(order([plain('2', 'A', '1'), plain('3', 'A', '2'), plain('1', 'A')]))).toEqual([
      '1',
      '2',
      '3',
    ]);
  });

  /**
   * Parts ripped, cut to length and grooved four times, by a few fences and stops; each kind of setup feeds only the
   * next.
   */
  const parts = (count: number, name: string, ...after: readonly string[]): readonly Step[] =>
    Array.from({ length: count }, (_, k) => [
      step(`${name}${k} rip`, 'saw', `fence ${(k * 7) % 23}`, ...after),
      step(`${name}${k} length`, 'crosscut', `stop ${(k * 5) % 31}`, `${name}${k} rip`),
      ...[1, 2, 3, 4].map((g) =>
        step(`${name}${k} groove ${g}`, 'stack', `groove stop ${(k * g) % 41}`, `${name}${k} length`),
      ),
    ]).flat();
  const setupsOf = (steps: readonly Step[]): number => new Set(steps.map((s) => s.setup)).size;

  test('a job where each kind of setup feeds only the next takes each setup once, and is proved', () => {
    const steps = parts(300, 'part ');
    const found = order(steps);
    expect([found.builds, found.runs.length, found.proved]).toEqual([3, setupsOf(steps), true]);
  });

  test('parts that all wait on a dry fit of all others take their setups again', () => {
    const early = parts(200, 'early ');
    const late = parts(80, 'late ', 'dry fit');
    const fit = step('dry fit', 'bench', 'dry fit', ...early.map((s) => s.id));
    const found = order([...late, fit, ...early]);
    expect([found.builds, found.proved]).toEqual([7, true]);
    expect(found.runs).toHaveLength(setupsOf(early) + 1 + setupsOf(late));
  });

  test('parts the dry fit does not need are done with those that wait on it, when that saves a setup', () => {
    const fit = step('dry fit', 'bench', 'dry fit', 'needed length');
    const found = order([
      step('needed rip', 'saw', 'fence 5'),
      step('needed length', 'crosscut', 'stop 5', 'needed rip'),
      step('free rip', 'saw', 'fence 7'),
      fit,
      step('late rip', 'saw', 'fence 7', 'dry fit'),
    ]);
    expect(setups(found)).toEqual(['fence 5', 'stop 5', 'dry fit', 'fence 7']);
    expect(found.proved).toBe(true);
  });

  test('with no effort an order is still given', () => {
    const found = order(cabinet, 0);
    expect([...laid(found)].sort()).toEqual(cabinet.map((s) => s.id).sort());
  });

  test('two steps with one id, or a setup of two builds, are mistakes in the program', () => {
    expect(() => orderSetups([plain('a', 'A'), plain('a', 'B')])).toThrow(RangeError);
    expect(() => orderSetups([step('a', '1', 'A'), step('b', '2', 'A')])).toThrow(RangeError);
  });
});

describe('orderSetups refuses a ring', () => {
  const ringOf = (steps: readonly Step[]) => {
    const result = orderSetups(steps);
    return result.ok ? undefined : result.error;
  };

  test('and names it in the order its steps would have to be done', () => {
    expect(ringOf([plain('a', 'A', 'c'), plain('b', 'B', 'a'), plain('c', 'C', 'b')])).toEqual({
      code: 'ring',
      ring: ['a', 'b', 'c'],
    });
  });

  test('of one step that waits on itself', () => {
    expect(ringOf([plain('a', 'A'), plain('b', 'B', 'b')])?.ring).toEqual(['b']);
  });

  test('within one setup', () => {
    expect(ringOf([plain('a', 'A', 'b'), plain('b', 'A', 'a')])?.ring).toEqual(['a', 'b']);
  });

  test('and names the shortest, without what waits on it or what it waits on', () => {
    const steps = [
      plain('first', 'A'),
      plain('a', 'A', 'first', 'd'),
      plain('b', 'B', 'a'),
      plain('c', 'C', 'b', 'd'),
      plain('d', 'D', 'c'),
      plain('last', 'A', 'd'),
    ];
    expect(ringOf(steps)?.ring).toEqual(['c', 'd']);
  });

  test('but not two ways round to the same step', () => {
    const steps = [plain('a', 'A'), plain('b', 'B', 'a'), plain('c', 'C', 'a'), plain('d', 'D', 'b', 'c')];
    expect(ringOf(steps)).toBeUndefined();
  });
});
