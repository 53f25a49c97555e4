import { describe, expect, test } from 'vitest';
import { zero } from '../../../src/length/length';
import type { Part } from '../../../src/trade/carcass/part';
import type { BankWork } from '../../../src/trade/setups/bank-steps';
import { blockedBy } from '../../../src/trade/setups/checklist';
import { installId, isPutUp, lookBackId } from '../../../src/trade/setups/install-steps';
import { type Operation, opId } from '../../../src/trade/setups/operation';
import { operationsOf } from '../../../src/trade/setups/operations';
import { l } from '../grooves/sample';

const mark = (text: string) => ({
  sum: { terms: [], value: l(text) } as never,
  mark: { value: l(text), rest: zero },
  mode: 'floor' as const,
});

const part = (id: string, of: string, stage: Part['stage'], name: Part['name']): Part =>
  ({
    id,
    of,
    stage,
    name,
    stock: 'side',
    stuff: 's',
    length: mark('30'),
    width: mark('10'),
    thick: l('3/4'),
    copies: 1,
    rabbets: [],
    notches: [],
    laps: [],
    alongs: [],
    mates: [],
  }) as unknown as Part;

const bank = (id: string, of?: string): BankWork => ({
  id,
  ...(of === undefined ? {} : { of }),
  framed: false,
  frontsApart: true,
  marks: [],
  drawers: [
    { no: 1, column: 1, place: { no: 1 }, box: [], front: `${id}~c1d1front` },
    { no: 2, column: 1, place: { no: 2 }, box: [], front: `${id}~c1d2front` },
  ],
  sticks: [],
  fitOrder: [1, 2],
  pulls: [
    { column: 1, x: { value: l('8'), rest: zero }, down: { value: l('2'), rest: zero }, bothEnds: false },
  ],
});

const parts = [
  part('c1~left', 'c1', 'carcass', { role: 'left' }),
  part('c1~shelf', 'c1', 'after-dry-fit', { role: 'inside', kind: 'loose' }),
  part('c1~baserail', 'c1', 'any-time', { role: 'baserail' }),
];
const cases = [{ id: 'c1', name: 'Cabinet' }];

const made = (job: Partial<Parameters<typeof operationsOf>[0]>) =>
  operationsOf({ parts: [], cases: [], hand: [], recuts: () => ({}), ...job }, { shop: {}, tape: '1/32' });
const idOf = (ops: readonly Operation[]) => new Map(ops.map((op) => [op.id, op]));
const stepsOf = (ops: readonly Operation[], place: string) =>
  ops.filter((op) => op.part === `${place}~bench`).map((op) => op.what);

/** Everything an operation waits for, however far back. */
function waitedFor(ops: readonly Operation[], id: string): ReadonlySet<string> {
  const byId = idOf(ops);
  const found = new Set<string>();
  const walk = (at: string): void => {
    for (const on of byId.get(at)?.after ?? [])
      if (!found.has(on)) {
        found.add(on);
        walk(on);
      }
  };
  walk(id);
  return found;
}

describe('installSteps', () => {
  const ops = made({ parts, cases, banks: [bank('b1', 'c1')] });

  test('a case is put up, finished and loaded in the order of the work', () => {
    expect(stepsOf(ops, 'c1')).toEqual([
      ...['dry-fit', 'finish-inside', 'glue-up'],
      ...['carry-in', 'level', 'anchor', 'check-again'],
      ...['finish', 'cure', 'load', 'label'],
    ]);
    expect(stepsOf(ops, '')).toEqual(['look-back']);
  });

  test('its ids never change: ticks of kept jobs stand under them', () => {
    expect(ops.filter((op) => op.part === 'c1~bench').map((op) => op.id)).toEqual(
      [
        'dryfit',
        'finishinside',
        'glueup',
        'carryin',
        'level',
        'anchor',
        'checkagain',
        'finish',
        'cure',
        'load',
        'label',
      ].map((step) => `cut/c1~bench/${step}/1`),
    );
    expect(lookBackId).toBe('cut/~bench/lookback/1');
  });

  test('it is carried in with its boxes hung, its base made and its glue dry', () => {
    const first = waitedFor(ops, installId('c1', 'carry-in'));
    expect(first.has('cut/c1~bench/glueup/1')).toBe(true);
    expect(first.has('cut/b1~bench/hang/c1d2')).toBe(true);
    expect(first.has(opId('c1~baserail', 'len', '1'))).toBe(true);
    expect(first.has(opId('c1~shelf', 'len', '1'))).toBe(false);
  });

  test('fronts wait until it stands anchored and was checked again', () => {
    const first = waitedFor(ops, 'cut/b1~bench/fronton/c1d1');
    for (const what of ['carry-in', 'level', 'anchor', 'check-again'] as const)
      expect(first.has(installId('c1', what))).toBe(true);
  });

  test('it is finished when nothing more is cut or bored', () => {
    const first = waitedFor(ops, installId('c1', 'finish'));
    expect(first.has(opId('c1~shelf', 'len', '1'))).toBe(true);
    expect(first.has('cut/b1~bench/pulls/c1d1')).toBe(true);
    expect(first.has('cut/b1~bench/pulls/c1d2')).toBe(true);
  });

  test('nothing is loaded into a case that is not anchored, though the finish was let go ahead', () => {
    const load = idOf(ops).get(installId('c1', 'load'));
    const anchor = installId('c1', 'anchor');
    const done = (id: string) => id !== anchor;
    const doing = {
      done: (id: string) => done(id) && id !== load?.id,
      let: () => false,
      measured: () => true,
    };
    expect(load && blockedBy(load, idOf(ops), doing)).toMatchObject([
      { by: 'operation', op: { id: anchor } },
    ]);
  });

  test('a case without drawers is put up as well, one that has no carcass yet is not', () => {
    const alone = made({ parts, cases: [...cases, { id: 'c2', name: 'Empty' }] });
    expect(stepsOf(alone, 'c1')).toContain('load');
    expect(stepsOf(alone, 'c2')).toEqual([]);
  });

  test('a bank in a case that is none of the job’s: levelled and loaded, nobody carries it', () => {
    const loose = made({ banks: [bank('b1')] });
    expect(stepsOf(loose, 'b1')).toEqual([
      ...['box-up', 'box-up', 'hang', 'hang', 'level', 'anchor', 'check-again'],
      ...['front-on', 'pulls', 'front-on', 'pulls', 'finish', 'cure', 'load', 'label'],
    ]);
    expect(
      [...waitedFor(loose, installId('b1', 'level'))].filter((id) => id.includes('/hang/')),
    ).toHaveLength(2);
  });

  test('two banks of one case are put up once', () => {
    const two = made({ parts, cases, banks: [bank('b1', 'c1'), bank('b2', 'c1')] });
    expect(two.filter((op) => op.what === 'level')).toHaveLength(1);
    const first = waitedFor(two, installId('c1', 'carry-in'));
    expect(first.has('cut/b1~bench/hang/c1d1') && first.has('cut/b2~bench/hang/c1d1')).toBe(true);
  });

  test('the job is looked back at once, when all is loaded and labelled', () => {
    const two = made({ parts, cases, banks: [bank('b1', 'c1'), bank('b2')] });
    const [back, ...more] = two.filter((op) => op.what === 'look-back');
    expect(more).toEqual([]);
    expect([...(back?.after ?? [])].sort()).toEqual([
      'cut/b2~bench/label/1',
      'cut/b2~bench/load/1',
      'cut/c1~bench/label/1',
      'cut/c1~bench/load/1',
    ]);
  });

  test('where no drawers stand the steps say so, and whether trays do', () => {
    const of = (steps: readonly Operation[]) => [
      ...new Set(
        steps
          .filter((op) => op.part === 'c1~bench' && isPutUp(op.what))
          .map((op) => JSON.stringify(op.which)),
      ),
    ];
    const tray = {
      ...part('c1~tray', 'c1', 'any-time', { role: 'inside', kind: 'loose' }),
      stock: 'tray',
    } as Part;
    expect(of(made({ parts, cases }))).toEqual(['{"is":"no-drawers","trays":false}']);
    expect(of(made({ parts: [...parts, tray], cases }))).toEqual(['{"is":"no-drawers","trays":true}']);
    expect(of(made({ parts, cases, banks: [bank('b1', 'c1')] }))).toEqual([undefined]);
  });

  test('an edge is scribed when the case is level, a strip fitted when that is done, and both before the anchor', () => {
    const closed = (closing: readonly ('scribe' | 'filler')[]) =>
      made({ parts, cases, banks: [bank('b2')], closing: () => closing });
    const both = closed(['scribe', 'filler']);
    expect(stepsOf(both, 'c1').slice(3, 8)).toEqual(['carry-in', 'level', 'scribe', 'filler', 'anchor']);
    const afterOf = (what: Parameters<typeof installId>[1], of = both) =>
      idOf(of).get(installId('c1', what))?.after;
    expect(afterOf('scribe')).toEqual(['cut/c1~bench/level/1']);
    expect(afterOf('filler')).toEqual(['cut/c1~bench/level/1', 'cut/c1~bench/scribe/1']);
    expect(afterOf('anchor')).toEqual([
      'cut/c1~bench/level/1',
      'cut/c1~bench/scribe/1',
      'cut/c1~bench/filler/1',
    ]);
    expect(afterOf('filler', closed(['filler']))).toEqual(['cut/c1~bench/level/1']);
    expect(afterOf('anchor', closed(['scribe']))).toEqual(['cut/c1~bench/level/1', 'cut/c1~bench/scribe/1']);
    const strip = {
      ...part('c1~fillerleft', 'c1', 'any-time', { role: 'fillerleft' }),
      stock: 'filler',
    } as const;
    const cut = made({ parts: [...parts, strip], cases, closing: () => ['filler'] });
    expect(afterOf('filler', cut)).toEqual([
      'cut/c1~bench/level/1',
      'cut/c1~fillerleft/rip/1',
      'cut/c1~fillerleft/len/1',
    ]);
    // nobody reads the walls beside a case that is none of the job's
    expect(stepsOf(both, 'b2')).not.toContain('scribe');
    expect(stepsOf(both, 'b2')).not.toContain('filler');
  });

  describe('a cleat', () => {
    const held = (on: 'case' | 'wall' | undefined) =>
      made({ parts, cases, banks: [bank('b2')], cleat: () => on });
    const afterOf = (ops: readonly Operation[], what: Parameters<typeof installId>[1]) =>
      idOf(ops).get(installId('c1', what))?.after;

    test('on the wall is screwed there before the case is set level before it: two acts, two ticks', () => {
      const ops = held('wall');
      expect(stepsOf(ops, 'c1').slice(3, 8)).toEqual(['carry-in', 'cleat', 'level', 'anchor', 'check-again']);
      // its id never changes: ticks of kept jobs stand under it
      expect(installId('c1', 'cleat')).toBe('cut/c1~bench/cleat/1');
      expect(afterOf(ops, 'cleat')).toEqual(['cut/c1~bench/carryin/1']);
      expect(afterOf(ops, 'level')).toEqual(['cut/c1~bench/carryin/1', 'cut/c1~bench/cleat/1']);
      expect(idOf(ops).get(installId('c1', 'anchor'))?.cleat).toBe('wall');
    });

    test('nothing is loaded while its screws are not driven, whatever else was let go ahead', () => {
      expect(afterOf(held('wall'), 'load')).toContain(installId('c1', 'cleat'));
      expect(afterOf(held('wall'), 'finish')).toContain(installId('c1', 'cleat'));
    });

    test('in the case is screwed by the anchoring itself: one act, under the id it always had', () => {
      const ops = held('case');
      expect(stepsOf(ops, 'c1')).toEqual(stepsOf(held(undefined), 'c1'));
      expect(idOf(ops).get('cut/c1~bench/anchor/1')?.cleat).toBe('case');
      expect(afterOf(ops, 'load')).toEqual(afterOf(held(undefined), 'load'));
      expect(idOf(held(undefined)).get('cut/c1~bench/anchor/1')?.cleat).toBeUndefined();
    });

    test('of a case that is none of the job’s nobody speaks', () => {
      expect(stepsOf(held('wall'), 'b2')).not.toContain('cleat');
      expect(idOf(held('wall')).get(installId('b2', 'anchor'))?.cleat).toBeUndefined();
    });
  });

  test('boards alone are not put up', () => {
    expect(
      made({ parts: [part('p', 'own', 'any-time', { role: 'board', named: 'Shelf' })] }).some(
        (op) => op.what === 'look-back',
      ),
    ).toBe(false);
  });
});
