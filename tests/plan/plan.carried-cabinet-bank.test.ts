import { describe, expect, test } from 'vitest';
import { editBank, editColumn, editFitted, editFront, editThing } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { subtract } from '../../src/length/length';
import { type Plan, planOf } from '../../src/plan/plan';
import { drawersWarnings } from '../../src/trade/boxes/drawer-warnings';
import { stickWarnings } from '../../src/trade/boxes/sticks';
import { gapWarning } from '../../src/trade/fronts/fitted';
import { skewOf } from '../../src/trade/fronts/skew';
import { trimsFor } from '../../src/trade/fronts/trims';
import { l, w } from '../trade/grooves/sample';
import { caseDecided } from './carried-cabinet-case';

/**
 * Steps 3 to 9 of the carried cabinet (demo-data/README.md): the drawer bank, from a job file to figures. Every
 * figure was worked by hand, not by this code.
 */
const bank: readonly Change[] = editBank('bank', {
  name: 'Drawers',
  of: 'case',
  bay: 2,
  count: 5,
  top: l('5/64'),
  between: l('5/64'),
  bottom: l('5/64'),
  side: l('5/64'),
  share: 'step',
  step: l('11/16'),
  frontStock: 'sheeta',
  sideStock: 'boxply',
  boxFrontStock: 'boxfront',
  boxBottomStock: 'trayply',
  slideLong: l('16'),
  slideHigh: l('1 25/32'),
  clearance: l('1/2'),
  centre: l('1 5/8'),
  boxUp: l('3/8'),
  lap: l('5/32'),
  backDado: l('7/32'),
  behind: l('7/16'),
  grooveDeep: l('3/16'),
  grooveUp: l('13/32'),
  grooveFit: l('0'),
  ease: l('1/16'),
  play: l('1/4'),
});
const measured: readonly Change[] = editColumn('bank', 1, {
  usedFront: l('17 1/32'),
  usedBack: l('16 31/32'),
  usedLeft: l('29 11/32'),
  usedRight: l('29 9/32'),
});

const entry = (change: Change, k: number): Entry => ({
  job: 'cabinet',
  device: 'p1',
  count: k + 1,
  at: '2026-11-02T08:00:00Z',
  act: `p1.${k + 1}`,
  label: 'worked',
  ...change,
});

function plan(...more: readonly Change[]): Plan {
  const changes = [...caseDecided, ...bank, ...more];
  const file = readJobFile(writeJobFile({ job: 'cabinet', entries: changes.map(entry) }));
  if (!file.ok) throw new Error(file.error.code);
  const job = jobOf('cabinet', fold(file.value.entries).values);
  expect(job.unread).toEqual([]);
  return planOf(job, {});
}
const found = (at: Plan) => {
  const of = at.banks.get('bank');
  if (!of?.fronts.ok) throw new Error('the fronts do not work out');
  if (!of.drawers?.ok) throw new Error('the drawers do not work out');
  const [column] = of.fronts.value.columns;
  if (!column) throw new Error('no column');
  return { fronts: of.fronts.value, column, drawers: of.drawers.value };
};

describe('the carried cabinet, the drawer bank', () => {
  test('step 3 of the carried cabinet: five fronts planned, 16 27/32 wide, standing on the sill', () => {
    const { fronts, column } = found(plan());
    expect(fronts.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 25/32', '6 15/32', '7 5/32']);
    expect(w(column.width.sum.value)).toBe('16 27/32');
    expect(w(column.opening.sill.value)).toBe('29/32');
  });

  const at = found(plan(...measured));

  test('step 4 of the carried cabinet: measured, the box passes the lesser width, the fronts fill the front; pack the slides first', () => {
    expect([w(at.column.opening.narrow.value), w(at.column.opening.wide.value)]).toEqual([
      '16 31/32',
      '17 1/32',
    ]);
    expect(w(at.column.opening.high.value)).toBe('29 9/32');
    const pack = drawersWarnings(at.drawers).find((x) => x.code === 'pack-slides');
    expect(pack?.code === 'pack-slides' && w(pack.off)).toBe('1/16');
  });

  test('step 5 of the carried cabinet: fronts again from 29 9/32, 16 7/8 wide, nothing left over, 1/96 a gap of skew', () => {
    expect(w(at.fronts.total.value)).toBe('28 13/16');
    expect(at.fronts.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32']);
    expect(w(at.fronts.left)).toBe('0');
    expect(w(at.column.width.mark.value)).toBe('16 7/8');
    const { left, right } = at.column.opening;
    expect(w(skewOf({ left, right, heights: at.fronts.heights })?.taper)).toBe('1/96');
  });

  test('step 6 of the carried cabinet: boxes 15 31/32 wide, backs 15 15/32, bottoms 15 11/32 × 14 25/32; the top box 3 53/64 at most', () => {
    const [top] = at.drawers.drawers;
    if (!top) throw new Error('no drawer');
    const { box } = top;
    expect(w(box.width.mark.value)).toBe('15 31/32');
    expect([box.back, box.bottomWide, box.bottomDeep].map((s) => w(s.value))).toEqual([
      '15 15/32',
      '15 11/32',
      '14 25/32',
    ]);
    expect([w(top.most), w(top.high)]).toEqual(['3 53/64', '3 13/16']);
    const high = found(plan(...measured, ...editBank('bank', { play: l('0') })));
    expect(w(subtract(l('4 1/8'), high.drawers.drawers[0]?.most ?? l('0')))).toBe('3/64');
  });

  test('step 7 of the carried cabinet: sticks from the new front bottoms, the last under 3', () => {
    expect(at.fronts.marks.map((m) => w(m.bottomUp))).toEqual([
      '24 53/64',
      '19 11/16',
      '13 55/64',
      '7 5/16',
      '5/64',
    ]);
    const sticks = at.drawers.sticks;
    if (!sticks.ok) throw new Error('no sticks');
    expect(sticks.value.map((s) => w(s.length))).toEqual([
      '26 27/32',
      '21 45/64',
      '15 7/8',
      '9 21/64',
      '2 3/32',
    ]);
    expect(stickWarnings(sticks.value).map((x) => x.drawer)).toEqual([5]);
  });

  test('step 8 of the carried cabinet: three up, the third’s lower edge at 15 1/2: 5/96 a gap, tight; to hold 5/64 the two give 1/32 and 3/64', () => {
    // the opening of 29 9/32 at both sides, as step 8 of the carried cabinet reckons it
    const square = editColumn('bank', 1, { usedLeft: l('29 9/32'), usedRight: l('29 9/32') });
    const on = [
      [1, '4 29/64'],
      [2, '9 19/32'],
      [3, '15 1/2'],
    ] as const;
    const fitted = on.flatMap(([no, y]) =>
      editFitted({ bank: 'bank', column: 1, front: no }, { usedLeft: l(y), usedRight: l(y) }),
    );
    const { column } = found(plan(...measured, ...square, ...fitted));
    expect(column.fitted).toBe(3);
    const gaps = column.ahead?.left;
    expect([w(gaps?.space), w(gaps?.each), gaps && gapWarning(gaps.each)?.code]).toEqual([
      '13 25/32',
      '5/96',
      'tight',
    ]);
    expect(w(column.ahead?.trim)).toBe('5/64');
    const open = [4, 5].map((no) => ({ no, height: column.heights[no - 1] ?? l('0'), cut: true }));
    expect([...trimsFor(column.ahead?.trim ?? l('0'), open).off.values()].map((x) => w(x))).toEqual([
      '1/32',
      '3/64',
    ]);
  });

  test('a fitted front does not move when the opening is measured again', () => {
    const on = editFitted({ bank: 'bank', column: 1, front: 1 }, { usedLeft: l('4 7/16'), held: l('4 3/8') });
    const before = found(plan(...measured, ...on)).column;
    const again = editColumn('bank', 1, { usedLeft: l('29'), usedRight: l('29') });
    const after = found(plan(...measured, ...on, ...again)).column;
    expect([after.left[0], after.heights[0]].map((x) => JSON.stringify(x, text))).toEqual(
      [before.left[0], before.heights[0]].map((x) => JSON.stringify(x, text)),
    );
    expect(w(after.left[1]?.top)).not.toBe(w(before.left[1]?.top));
  });

  test('fitted bottom up, what is left over comes at the top', () => {
    const up = editBank('bank', { order: 'up', goes: 'last' });
    const low = editFitted({ bank: 'bank', column: 1, front: 5 }, { usedLeft: l('7 1/4') });
    const { column } = found(plan(...measured, ...up, ...low));
    expect(w(subtract(column.opening.left, column.left[4]?.top ?? l('0')))).toBe('7 1/4');
    expect(w(subtract(column.left[4]?.top ?? l('0'), column.left[3]?.bottom ?? l('0')))).toBe('5/64');
  });

  test('contents first: the crystal of Example 6 of boxes lifts its own front and the others share the rest', () => {
    const crystal = editThing('crystal', {
      name: 'Crystal',
      tall: l('4 3/16'),
      count: 1,
      bank: 'bank',
      front: 2,
    });
    const first = editBank('bank', { contentsFirst: true, play: l('1/2'), share: 'equal', count: 6 });
    const { fronts } = found(plan(...first, ...crystal));
    expect(w(fronts.exact[1])).toBe('5 23/64');
    expect(w(fronts.heights[1])).toBe('5 3/8');
    const without = found(plan(...first));
    expect(without.fronts.exact[1]?.lt(fronts.exact[1] ?? 0n)).toBe(true);
  });
});

describe('a bank once it is being made', () => {
  test('banded fronts come off their blank at their cores', () => {
    const banded = editBank('bank', { fromBlank: true, band: l('1/16') });
    const front = plan(...banded).parts.find((p) => p.id === 'bank~c1d1front');
    expect([w(front?.width.mark.value), w(front?.length.sum.value)]).toEqual(['4 1/4', '16 23/32']);
  });

  test('a front planed after the boxes are hung leaves the boxes as they are', () => {
    const held = editFitted({ bank: 'bank', column: 1, front: 4 }, { held: l('6 15/32'), trim: l('1/32') });
    const high = (at: Plan) => w(at.parts.find((p) => p.id === 'bank~c1d4side')?.width.mark.value);
    expect(high(plan(...measured, ...held))).toBe(high(plan(...measured)));
  });

  test('covering fronts keep their lowest box clear of the bottom, and one set too low is said', () => {
    const over = { fit: 'overlay', top: undefined, bottom: undefined, side: undefined } as const;
    const codes = (more: Parameters<typeof editBank>[1]) =>
      drawersWarnings(found(plan(...editBank('bank', { ...over, ...more }))).drawers).map((x) => x.code);
    expect(codes({ boxUp: undefined })).not.toContain('box-low');
    expect(codes({ boxUp: l('3/8') })).toContain('box-low');
    expect(codes({ boxUp: undefined, boxDeep: l('18') })).toContain('box-too-deep');
  });
});

describe('drawers that do not work out', () => {
  const problems = (more: Parameters<typeof editBank>[1]) => {
    const of = plan(...editBank('bank', more)).banks.get('bank');
    return of?.drawers && !of.drawers.ok ? of.drawers.error.map((e) => e.code) : [];
  };

  test('are asked for, and the fronts stay', () => {
    expect(problems({ slideLong: undefined })).toEqual(['missing-depth']);
    expect(problems({ sideStock: undefined })).toEqual(['missing-stock']);
    expect(problems({ tailsHow: 'template', pitch: l('0') })).toEqual(['pitch-not-positive']);
    expect(problems({ boxDeep: l('1') })).toEqual(['inside-depth-gone']);
    expect(problems({ count: 5, share: 'equal', play: l('6') })).toEqual(['no-box']);
  });
});

describe('a bank in Cuts', () => {
  const at = plan();
  const op = (id: string) => {
    const one = at.byId.get(id);
    if (!one) throw new Error(id);
    return one;
  };
  const index = new Map(
    at.order.ok ? at.order.value.runs.flatMap((run) => run.steps).map((id, k) => [id, k] as const) : [],
  );
  const comesFirst = (a: string, b: string) => {
    expect((index.get(a) ?? Number.NaN) < (index.get(b) ?? Number.NaN), `${a} before ${b}`).toBe(true);
  };

  test('frame on, then boxes; grooves before tails, tails before pins; glued, hung, level, fronts, pulls', () => {
    comesFirst('cut/case~bench/frameon/1', 'cut/bank~c1d1side/rip/left');
    comesFirst('cut/bank~c1d1side/along~bottom/left', 'cut/bank~c1d1side/tails/left');
    comesFirst('cut/bank~c1d1side/tails/right', 'cut/bank~c1d1boxfront/pins/1');
    comesFirst('cut/bank~c1d1boxfront/pins/1', 'cut/bank~bench/boxup/c1d1');
    comesFirst('cut/bank~bench/slide/c1d1hleft', 'cut/bank~bench/slide/c1d2hleft');
    comesFirst('cut/bank~bench/slide/c1d1hright', 'cut/bank~bench/hang/c1d1');
    comesFirst('cut/bank~bench/hang/c1d5', 'cut/case~bench/level/1');
    comesFirst('cut/case~bench/level/1', 'cut/bank~bench/fronton/c1d1');
    comesFirst('cut/bank~bench/fronton/c1d1', 'cut/bank~bench/fronton/c1d2');
  });

  test('bottom and back of one thickness share a stack and a height; only the fence moves', () => {
    const same = plan(...editBank('bank', { boxBottomStock: 'boxply', backDado: l('3/16') }));
    const groove = same.byId.get('cut/bank~c1d1side/along~bottom/left');
    const dado = same.byId.get('cut/bank~c1d1side/along~back/left');
    expect(groove?.setup.build).toBe(dado?.setup.build);
    expect(groove?.setup.key).not.toBe(dado?.setup.key);
  });

  test('boxes of one length are cut at one setup, whichever drawer they are of', () => {
    const lengths = [1, 2, 3, 4, 5].map((no) => op(`cut/bank~c1d${no}side/len/left`).setup.key);
    expect(new Set(lengths).size).toBe(1);
  });

  test('a longer stick comes before a shorter one, and each wants every slide at its length', () => {
    const third = at.operations.filter((o) => o.what === 'slide' && o.id.includes('c1d3'));
    expect(third.map((o) => o.copy)).toEqual(['c1d3hleft', 'c1d3hright']);
    expect(new Set(third.map((o) => o.setup.key)).size).toBe(1);
  });

  test('a rip waits for the opening only where its width is shared out of it: not a box or a front of given height', () => {
    const given = plan(...editFront('bank', 2, { high: l('5'), boxHigh: l('4') }));
    const waits = (part: string, cut: string, copy = '1') =>
      given.byId.get(`cut/bank~c1${part}/${cut}/${copy}`)?.opening !== undefined;
    expect([waits('d1side', 'rip', 'left'), waits('d1boxfront', 'rip'), waits('d1front', 'rip')]).toEqual(
      Array(3).fill(true),
    );
    expect([waits('d2side', 'rip', 'left'), waits('d2boxback', 'rip'), waits('d2front', 'rip')]).toEqual(
      Array(3).fill(false),
    );
    expect([waits('d2side', 'len', 'left'), waits('d2boxback', 'len'), waits('d2front', 'len')]).toEqual(
      Array(3).fill(true),
    );
    expect([waits('d1boxbottom', 'rip'), waits('d1boxbottom', 'len')]).toEqual([false, true]);
  });

  test('out of one blank the fronts come off it one after another, from the top', () => {
    const run = planOf(
      { ...at.job, banks: at.job.banks.map((b) => ({ ...b, fromBlank: true })) },
      { kerf: l('3/32') },
    );
    expect(run.byId.get('cut/bank~c1d1front/rip/1')?.after).toContain('cut/bank~c1blank/len/1');
    expect(run.byId.get('cut/bank~c1d2front/rip/1')?.after).toContain('cut/bank~c1d1front/rip/1');
  });
});

const text = (_: string, x: unknown) => (typeof x === 'bigint' ? `${x}` : x);
