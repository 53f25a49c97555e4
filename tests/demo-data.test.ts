import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figuresFor } from '../src/app/sample-figures';
import { readJobFile, writeJobFile } from '../src/job/file';
import { type Job, jobOf } from '../src/job/job';
import { fold } from '../src/job/log';
import { readLists } from '../src/job/shop-lists';
import { writeLength } from '../src/length/write';
import { stuffsRound, thingsIn } from '../src/plan/bank-plan';
import { viewOf } from '../src/plan/board-layout';
import { breakdownOf } from '../src/plan/breakdown';
import { cleatAt } from '../src/plan/cleat-plan';
import { planOf } from '../src/plan/plan';
import { anchorOf } from '../src/plan/put-up-plan';
import { anchorScrews, screwPlace, screwsOf } from '../src/plan/screw-plan';
import { closedBy, scribeSides } from '../src/plan/scribe-plan';
import { crossedBy } from '../src/plan/stud-plan';
import { acidText } from '../src/screens/bank/acid-words';
import { acidRound } from '../src/trade/boxes/acid';
import { checkOf } from '../src/trade/carcass/check';
import { warningsOf } from '../src/trade/carcass/warnings';
import { spacerFor } from '../src/trade/grooves/lay-out';
import { trayFor } from '../src/trade/grooves/tray';
import type { Shop } from '../src/trade/machines/shop';
import { l } from './length/write-figures';

const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
if (!file.ok) throw new Error(file.error.code);
const job = jobOf(file.value.job, fold(file.value.entries).values);
const plan = planOf(job, {});
const view = (id: string) => {
  const board = plan.parts.find((p) => p.id === id)?.board;
  if (!board) throw new Error(id);
  return viewOf(board, {}, job.tape);
};
const near = (id: string, groove: string): string => {
  const mark = view(id).marks.find((m) => m.groove.id === groove);
  return mark ? writeLength(mark.near.value) : 'none';
};

describe('the sample job', () => {
  test('nothing in it is unreadable or cannot be cut', () => {
    expect(job.unread).toEqual([]);
    for (const { id, board } of plan.parts) {
      if (!board) continue;
      expect(view(id).layout.problems).toEqual([]);
      expect(view(id).settings.settings.length).toBeGreaterThan(0);
    }
    for (const found of plan.worked.values()) {
      expect(found.ok && checkOf(found.value).every((line) => line.meets)).toBe(true);
    }
    expect(plan.order.ok && plan.order.value.proved).toBe(true);
  });

  test('thirty tray grooves stand on one datum: side and partition carry the same layout', () => {
    expect([near('case~left', 'trays~1'), near('case~left', 'trays~30')]).toEqual(['6 31/32', '59 17/32']);
    expect([near('case~partition1', 'trays~1'), near('case~partition1', 'trays~30')]).toEqual([
      '2 13/32',
      '54 31/32',
    ]);
    expect(view('case~left').marks.find((m) => m.groove.id === 'trays~30')?.mate?.value).toEqual(
      l('54 31/32'),
    );
    const { spacer, at } = spacerFor(l('4 27/32'), l('9/32'));
    expect([writeLength(spacer), at]).toEqual(['4 9/16', 'mate']);
  });

  test('the tray for them is 18 7/16, and sits an eighth in its groove at the worst', () => {
    const tray = trayFor(l('18 7/64'), l('3/16'), { slack: l('3/64'), bow: l('1/64'), tape: job.tape });
    expect(tray.ok && [writeLength(tray.value.cut.value), writeLength(tray.value.bearing)]).toEqual([
      '18 7/16',
      '1/8',
    ]);
  });
});

describe('the drawers of the sample job', () => {
  const bank = plan.banks.get('drawers');

  test('work out with nothing asked for, in the bay under the middle rail', () => {
    expect(bank?.fronts.ok && bank.fronts.value.heights.map((h) => writeLength(h))).toEqual([
      '4 3/8',
      '5 1/16',
      '5 25/32',
      '6 15/32',
      '7 5/32',
    ]);
    expect(bank?.drawers?.ok).toBe(true);
    expect(bank?.parts).toHaveLength(25);
  });

  test('every groove for a bottom runs out inside a tail', () => {
    const drawers = bank?.drawers?.ok ? bank.drawers.value.drawers : [];
    expect(drawers).toHaveLength(5);
    for (const { joint } of drawers)
      expect(joint.kind === 'tails' && joint.tails.ok && joint.tails.value.groove?.inside).toBe(true);
  });

  // the left wall goes 5/32 and 1/16 out from its line where it is 3/8 at the floor, and the gaps with it from 1/8
  test('its left edge is scribed where it can be, and its gaps go as the wall does', () => {
    const sides = scribeSides(job, 'case');
    expect(sides.map(closedBy)).toEqual(['edge', 'strip']);
    expect(sides.map(({ differs }) => differs)).toEqual([undefined, undefined]);
  });

  test('all that goes in goes in: no thing is taller than its drawer takes', () => {
    const first = planOf({ ...job, banks: job.banks.map((b) => ({ ...b, contentsFirst: true })) }, {});
    const found = first.banks.get('drawers')?.fronts;
    expect(found?.ok && found.value.heights.map((h) => writeLength(h))).toEqual(
      bank?.fronts.ok ? bank.fronts.value.heights.map((h) => writeLength(h)) : [],
    );
  });
});

describe('the sample job is one a woodworker would believe', () => {
  const folded = fold(file.value.entries);
  const own = figuresFor({}, { shelf: {} });
  const shop: Shop = Object.fromEntries(own.figures);
  const made = planOf(job, shop);

  test('the trays come out: each frame piece in their way comes off', () => {
    const locked = [...made.worked.values()].flatMap((w) => (w.ok ? warningsOf(w.value) : []));
    const pieces = locked.flatMap((x) => (x.code === 'trays-locked' ? [[x.stile, x.comesOff]] : []));
    expect(pieces).toEqual([
      ['left', true],
      ['middle', true],
    ]);
    expect(locked.map(({ code }) => code)).not.toContain('trays-wider');
    const off = made.parts.filter((part) => part.comesOff).map((part) => part.id);
    expect(off).toEqual(expect.arrayContaining(['case~stile', 'case~middle']));
  });

  test('every piece is of a stuff, and every plan was made with the shop’s kerf', () => {
    expect(made.parts.filter((part) => part.stuff === undefined).map((part) => part.name)).toEqual([]);
    expect(job.sheets.map((sheet) => writeLength(sheet.kerf))).toEqual(job.sheets.map(() => '1/8'));
    expect(writeLength(shop.kerf ?? l('1'))).toBe('1/8');
    const { pools } = breakdownOf(made, shop, folded);
    expect(
      pools.filter(({ pool, changed }) => changed && job.proofs[pool.id]).map(({ pool }) => pool.id),
    ).toEqual([]);
  });

  test('the shop’s figures leave nothing to measure for its settings', () => {
    for (const { board } of made.parts) {
      if (!board) continue;
      for (const machine of ['stop', 'fence', 'router', 'saw', 'spacers', 'index'] as const) {
        const { settings } = viewOf({ ...board, machine }, shop, job.tape);
        expect(settings.problems.filter(({ code }) => code === 'shop-figure-missing')).toEqual([]);
      }
    }
  });

  test('its figures come only where a phone has none, and its lists only where it has none', () => {
    const mine = figuresFor({ kerf: l('3/32') }, { lists: { screws: [] }, shelf: {} });
    expect(mine.figures.some(([field]) => field === 'kerf')).toBe(false);
    expect(mine.figures.length).toBe(own.figures.length - 1);
    expect(mine.lists).toBeUndefined();
    expect(figuresFor({}, { shelf: { 'shelf/screw/3~4': 1 } }).lists).toBeUndefined();
    expect(readLists(own.lists).stack.pieces.length).toBeGreaterThan(0);
  });

  test('its anchors and screws hold with what lies on the shelf, and are counted', () => {
    const { screws } = readLists(own.lists);
    const places = [anchorScrews(made, 'case'), ...screwsOf(job, 'case')].map((at) =>
      screwPlace(made, at, screws),
    );
    // strip 3/4, back 7/32 and board 5/8, bite 1 1/4: 2 27/32 at least, so 3, into the studs at 11 and 27; the same at
    // half height; side 23/32 into 1 1/2 with an inch of bite: 1 23/32 to 2 3/32, so 2, at (64 1/4 - 4 1/4) / 12 + 1
    expect(places.map(({ screw, count }) => [screw?.pick && writeLength(screw.pick), count])).toEqual([
      ['3', 2],
      ['3', 2],
      ['2', 6],
    ]);
    // 1 13/32 into the stud: no deeper than pipes are looked for
    expect(places.flatMap(({ screw }) => screw?.deep ?? [])).toEqual([]);
    expect(anchorOf(made, 'case')?.lacks).toEqual([]);
    // 64 1/4 less the top of 23/32 and the strip of 2 3/4 is 60 25/32: at 60 3/4 it stands 1/32 under the top; the
    // level line is 35 7/8 over the high point
    const { height, wrong } = cleatAt(made, 'case');
    expect([
      height && writeLength(height.low),
      height?.fromLine && writeLength(height.fromLine),
      wrong,
    ]).toEqual([...['60 3/4', '24 7/8', undefined]]);
    expect(crossedBy(made, 'case')).toBeUndefined();
    expect(job.nextTime).toHaveLength(2);
  });

  test('no oak stands round its shells; oak would be named, with why', () => {
    const [bank] = job.banks;
    if (!bank) throw new Error('no bank');
    const things = thingsIn(job, bank.id).map(({ name }) => name);
    const round = (at: Job) => acidRound(stuffsRound(at, bank), things).map(acidText);
    expect(round(job)).toEqual([]);
    const oak = {
      ...job,
      stock: job.stock.map((s) => (s.id === 'maple' ? { ...s, name: 'Oak, for the frame' } : s)),
    };
    expect(round(oak)[0]).toContain(
      'oak, like fresh glue and oil finishes, gives off acid that attacks Whelk shells',
    );
  });

  test('its file is kept to the letter', () => {
    const text = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
    const read = readJobFile(text);
    expect(read.ok && writeJobFile(read.value)).toBe(text);
  });
});
