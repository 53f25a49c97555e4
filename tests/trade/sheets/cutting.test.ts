import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, type Length, less, ratio, subtract } from '../../../src/length/length';
import { writeLength } from '../../../src/length/write';
import { type CutsAt, cutSteps, sameSetting } from '../../../src/trade/sheets/cut-steps';
import { guidePlaces } from '../../../src/trade/sheets/guide';
import type { RoughPiece } from '../../../src/trade/sheets/pieces';
import { refit } from '../../../src/trade/sheets/solve';
import { standingOf } from '../../../src/trade/sheets/standing';
import type { SheetStock } from '../../../src/trade/sheets/stock';
import { stripsOf } from '../../../src/trade/sheets/strips';
import { type Branch, branchAt, type CutBranch, placesOf, withBranch } from '../../../src/trade/sheets/tree';
import {
  afterWrongCut,
  leanPieces,
  stillGood,
  type WrongCut,
  wrongCutError,
  wrongCutProblem,
} from '../../../src/trade/sheets/wrong-cut';
import { runs } from '../../runs';
import { cutApart } from './verify';

const n = (whole: number, num = 0, den = 1): Length =>
  add(inches(BigInt(whole)), inches(BigInt(num), BigInt(den)));
const kerf = n(0, 1, 8);
const w = (x: Length | undefined): string => (x ? writeLength(x) : '');

describe('strips of one width', () => {
  const at = { across: n(48, 3, 8), trim: n(0, 3, 16), strip: n(17, 3, 4), kerf };

  test('Example 1 of sheets: usable 48, two strips, offcut 12 1/4', () => {
    const found = stripsOf(at);
    expect(found.ok && [w(found.value.usable), found.value.count, w(found.value.offcut)]).toEqual([
      '48',
      2,
      '12 1/4',
    ]);
  });

  test('Example 1 of sheets: the last strip needs no kerf: three of 15 11/12 from 48, nothing over', () => {
    const found = stripsOf({ across: n(48), trim: n(0), strip: n(15, 11, 12), kerf });
    expect(found.ok && [found.value.count, w(found.value.offcut)]).toEqual([3, '0']);
  });

  test('no kerf, trims that eat the sheet, a strip wider than it: each named', () => {
    const code = (own: Partial<typeof at> & { kerf?: Length }) => {
      const found = stripsOf({ ...at, ...own });
      return found.ok ? '' : found.error.code;
    };
    expect(code({ kerf: n(0) })).toBe('kerf-missing');
    expect(code({ trim: n(25) })).toBe('trim-eats-it');
    expect(code({ strip: n(49) })).toBe('wider-than-sheet');
    expect(code({ strip: n(0) })).toBe('no-width');
  });

  test('a trim below nothing is refused: it would make 50 of 48', () => {
    const trim = subtract(n(0), n(1));
    expect(stripsOf({ ...at, across: n(48), trim })).toEqual({
      ok: false,
      error: { code: 'trim-negative', trim },
    });
  });

  test('as many strips as are said fit with their kerfs, and one more does not', () => {
    const eighths = fc.integer({ min: 1, max: 400 }).map((k) => inches(BigInt(k), 8n));
    fc.assert(
      fc.property(eighths, eighths, (across, strip) => {
        const found = stripsOf({ across, trim: n(0), strip, kerf });
        fc.pre(found.ok);
        const needs = (k: number) =>
          inches(BigInt(k))
            .mul(strip)
            .add(inches(BigInt(k - 1)).mul(kerf)) as Length;
        expect(less(across, needs(found.value.count))).toBe(false);
        expect(less(across, needs(found.value.count + 1))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('the guide of a circular saw', () => {
  test('Example 2 of sheets: a line at 17 3/4, shoe 1 7/16, kerf 5/64: on the waste at 19 17/64; shoe 5 1/32: on what is kept at 12 23/32', () => {
    const shop = { shoeKeep: n(5, 1, 32), shoeWaste: n(1, 7, 16) };
    const found = guidePlaces(n(17, 3, 4), { keep: 'near', kerf: n(0, 5, 64), shop });
    expect([w(found.onKeep), w(found.onWaste)]).toEqual(['12 23/32', '19 17/64']);
  });

  test('a trim keeps what is beyond the line: the kerf and the waste lie on this side of it', () => {
    const shop = { shoeKeep: n(5), shoeWaste: n(1) };
    const found = guidePlaces(n(2), { keep: 'far', kerf, shop });
    expect([w(found.onKeep), w(found.onWaste)]).toEqual(['7', '7/8']);
  });

  test('a shoe not measured gives no place', () => {
    expect(guidePlaces(n(17), { keep: 'near', kerf, shop: {} })).toEqual({});
    expect(guidePlaces(n(17), { keep: 'near', kerf, shop: { shoeKeep: n(0) } })).toEqual({});
  });
});

const leaf = (id: string): Branch => ({ is: 'piece', piece: `${id}/1`, turned: false });
const cut = (way: CutBranch['way'], at: Length, near: Branch, far: Branch): CutBranch => ({
  is: 'cut',
  way,
  at,
  near,
  far,
});
const left: Branch = { is: 'left' };
const waste: Branch = { is: 'waste' };

const cutsAt: CutsAt = {
  kind: 'sheet',
  kerf,
  tape: '1/32',
  shop: { shoeKeep: n(5), shoeWaste: n(1, 1, 2), capacity: n(30) },
  thick: n(0, 23, 32),
  carry: ratio(50n),
  guideOnly: false,
};

/** Two strips 17 3/4 with two shelves each, and what is left beside them. */
const strip = (a: string, b: string) => cut('cross', n(40), leaf(a), cut('cross', n(40), leaf(b), left));
const sheet = {
  size: { long: n(96), wide: n(48) },
  tree: cut('rip', n(17, 3, 4), strip('a', 'b'), cut('rip', n(17, 3, 4), strip('c', 'd'), left)),
};

describe('the order of cuts', () => {
  const steps = cutSteps(sheet, cutsAt);

  test('what must come apart first comes first, and every cut comes once', () => {
    expect(steps.map((s) => s.path).sort()).toEqual(
      placesOf(sheet, kerf)
        .filter((p) => p.branch.is === 'cut')
        .map((p) => p.path)
        .sort(),
    );
    for (const [k, step] of steps.entries())
      if (step.path !== 'r')
        expect(steps.findIndex((s) => s.path === step.path.slice(0, -1))).toBeLessThan(k);
  });

  test('cuts at one setting share a number and stand together: four crosscuts, one setting of the fence', () => {
    const across = steps.filter((s) => s.way === 'cross');
    expect(across.length).toBe(4);
    expect(new Set(across.map((s) => s.no)).size).toBe(1);
    expect(new Set(steps.map((s) => s.no)).size).toBeLessThanOrEqual(3);
  });

  test('a sheet one person cannot lift is cut along the guide; what he can goes to the fence', () => {
    expect([steps[0]?.heavy, steps[0]?.tool]).toEqual([true, 'guide']);
    const light = steps.find((s) => s.path === 'rf');
    expect([light?.heavy, light?.tool, w(light?.figure.value)]).toEqual([false, 'fence', '17 3/4']);
  });

  test('a crosscut wider along the fence than the edge that rides on it is left to the guide', () => {
    expect(steps.filter((s) => s.way === 'cross').every((s) => s.tool === 'guide')).toBe(true);
  });

  test('beyond the reach of the fence, and without a table saw, it is the guide', () => {
    const short = cutSteps(sheet, { ...cutsAt, shop: { ...cutsAt.shop, capacity: n(17) } });
    expect(short.every((s) => s.tool === 'guide')).toBe(true);
    expect(cutSteps(sheet, { ...cutsAt, guideOnly: true }).every((s) => s.tool === 'guide')).toBe(true);
  });

  test('says where the guide goes on either side, and nothing where it would lie off the sheet', () => {
    expect([w(steps[0]?.onKeep?.value), w(steps[0]?.onWaste?.value)]).toEqual(['12 3/4', '19 3/8']);
    const trim = cutSteps({ ...sheet, tree: cut('rip', n(0, 1, 16), { is: 'waste' }, leaf('a')) }, cutsAt)[0];
    expect([trim?.keep, w(trim?.figure.value), w(trim?.onKeep?.value), trim?.onWaste]).toEqual([
      'far',
      '3/16',
      '5 3/16',
      undefined,
    ]);
  });

  test('sizes after a cut and its kerf add up to what was cut', () => {
    for (const { size, near, far, way } of steps) {
      const [whole, a, b] =
        way === 'rip' ? [size.wide, near.wide, far.wide] : [size.long, near.long, far.long];
      expect(w(add(add(a, kerf), b))).toBe(w(whole));
    }
  });

  test('no setting is left and come back to while another order of free cuts would not', () => {
    for (const [k, step] of steps.entries())
      for (const later of steps.slice(k + 1)) if (sameSetting(step, later)) expect(later.no).toBe(step.no);
  });

  test('over several pieces the figure goes up to the next mark: the last is not short by the rounding', () => {
    const fine = { ...cutsAt, tape: '1/16' as const, kerf: n(0, 5, 64) };
    const tree = cut('rip', n(20, 5, 64), cut('rip', n(10), leaf('a'), leaf('b')), left);
    expect(w(cutSteps({ ...sheet, tree }, fine)[0]?.figure.value)).toBe('20 1/8');
  });

  test('the guide goes by the kerf of the saw that follows it, whatever the layout reckoned with', () => {
    const two = { ...cutsAt, shop: { ...cutsAt.shop, kerf: n(0, 5, 64), shoeWaste: n(1, 7, 16) } };
    expect(w(cutSteps(sheet, two)[0]?.onWaste?.value)).toBe('19 9/32');
  });

  test('an end of a stick that is not square yet is cut at a line, not at a stop', () => {
    const stick = {
      size: { long: n(96), wide: n(4) },
      tree: cut('cross', n(0, 3, 8), { is: 'waste' }, leaf('s')),
    };
    expect(
      cutSteps(stick, { ...cutsAt, kind: 'stick' }).map((s) => [s.tool, s.keep, w(s.figure.value)]),
    ).toEqual([['guide', 'far', '1/2']]);
  });

  test('a stick is cut at a stop', () => {
    const stick = { size: { long: n(96), wide: n(4) }, tree: cut('cross', n(60, 1, 8), leaf('s'), left) };
    expect(cutSteps(stick, { ...cutsAt, kind: 'stick' }).map((s) => [s.tool, w(s.figure.value)])).toEqual([
      ['stop', '60 1/8'],
    ]);
  });
});

const piece = (id: string, long: Length, wide: Length): RoughPiece => ({
  id: `${id}/1`,
  part: id,
  copy: '1',
  name: id,
  stuff: 'a',
  thickness: undefined,
  finished: { long: subtract(long, n(0, 1, 4)), wide: subtract(wide, n(0, 1, 4)) },
  long,
  wide,
  lies: 'along',
});

describe('a wrong cut', () => {
  const stock: SheetStock = {
    id: 'a',
    name: 'A',
    kind: 'sheet',
    long: n(96),
    wide: n(48),
    trim: n(0),
    grain: 'long',
    have: 0,
    noMore: false,
    bad: [],
  };
  const wanted = new Map(['a', 'b', 'c', 'd'].map((id) => [`${id}/1`, piece(id, n(40), n(17, 3, 4))]));
  const whereabouts = { stock, whole: sheet.size, kerf, wanted, offcut: false };
  const corner = { long: n(0), wide: n(0) };
  const whole = branchAt(sheet.tree, 'r');
  if (whole?.is !== 'cut') throw new Error('no cut');
  const replanned = (at: Length) => {
    const wrong = { cut: whole, size: sheet.size, from: corner, at };
    const problem = wrongCutProblem(wrong, whereabouts);
    const search = refit(problem.two, { seed: 1, effort: 20 });
    for (;;) {
      const { value, done } = search.next();
      if (done)
        return {
          tree: afterWrongCut(wrong, { problem, sheets: value.laid?.sheets }, whereabouts),
          dropped: value.dropped,
        };
    }
  };
  const mended = (wrong: WrongCut, at: Parameters<typeof wrongCutProblem>[1]): Branch => {
    const good = stillGood(wrong, at);
    if (good) return good;
    const problem = wrongCutProblem(wrong, at);
    const search = refit(problem.two, { seed: 1, effort: 20 });
    let end = search.next();
    while (!end.done) end = search.next();
    return afterWrongCut(wrong, { problem, sheets: end.value?.laid?.sheets }, at);
  };
  const pieces = (tree: Branch) =>
    cutApart({ size: sheet.size, tree }, kerf)
      .map((f) => f.piece)
      .sort();

  test('too narrow, but with room beside it: every piece still lies on the sheet', () => {
    const { tree, dropped } = replanned(n(12));
    expect(w(tree.at)).toBe('12');
    expect(pieces(tree)).toEqual(['a/1', 'b/1', 'c/1', 'd/1']);
    expect(dropped.every((k) => k === 0)).toBe(true);
  });

  test('in the middle of what was needed: as many as go, the rest is handed back', () => {
    const { tree, dropped } = replanned(n(31));
    expect(pieces(tree).length).toBe(2);
    expect(dropped.reduce((a, b) => a + b, 0)).toBe(2);
  });

  test('each piece keeps its full rough size', () => {
    for (const f of cutApart({ size: sheet.size, tree: replanned(n(12)).tree }, kerf))
      expect([w(f.size.long), w(f.size.wide)]).toEqual(['40', '17 3/4']);
  });

  test('1/32 out either way does no harm while a final cut’s worth is over: nothing is laid anew', () => {
    const at = (x: Length) => stillGood({ cut: whole, size: sheet.size, from: corner, at: x }, whereabouts);
    expect(w(at(n(17, 23, 32))?.at)).toBe('17 23/32');
    expect(at(n(17, 23, 32))?.near).toEqual(whole.near);
    expect(at(n(17, 25, 32))).toBeDefined();
    // 1/4 was over: 1/16 must stay
    expect(at(n(17, 9, 16))).toBeDefined();
    expect(at(n(17, 17, 32))).toBeUndefined();
    expect(at(n(31))).toBeUndefined();
  });

  test('lean pieces keep their finished size and a final cut’s worth', () => {
    const [a] = [...leanPieces(wanted).values()];
    expect([w(a?.long), w(a?.wide)]).toEqual(['39 13/16', '17 9/16']);
  });

  test('an offcut of a stock whose grain runs across keeps its own grain', () => {
    const across = { ...whereabouts, stock: { ...stock, grain: 'wide' as const }, offcut: true };
    const wrong = { cut: whole, size: sheet.size, from: corner, at: n(12) };
    const problem = wrongCutProblem(wrong, across);
    const search = refit(problem.two, { seed: 1, effort: 20 });
    let end = search.next();
    while (!end.done) end = search.next();
    const tree = afterWrongCut(wrong, { problem, sheets: end.value?.laid?.sheets }, across);
    const found = cutApart({ size: sheet.size, tree }, kerf);
    expect(found.map((f) => f.turned)).toEqual([false, false, false, false]);
  });

  test('a stick with bad places gives no wood but the halves on the bench', () => {
    const bad = { ...whereabouts, stock: { ...stock, kind: 'stick' as const, bad: [n(40), n(44)] } };
    const problem = wrongCutProblem({ cut: whole, size: sheet.size, from: corner, at: n(12) }, bad);
    expect(problem.grounds.filter((g) => g.left === undefined && (g.stock.have > 0 || g.run))).toEqual([]);
  });

  test('never lays a piece over a bad place of a stick, wherever the cut came out', () => {
    const bad = [n(40), n(43)];
    const stick: SheetStock = { ...stock, kind: 'stick', wide: n(2), have: 1, noMore: true, bad };
    const long = piece('y', n(40), n(2));
    const short = piece('x', n(30), n(2));
    const own = new Map([long, short].map((p) => [p.id, { ...p, finished: { ...p.finished, wide: n(2) } }]));
    const size = { long: n(96), wide: n(2) };
    // 40 of wood, the bad 3, then the shorter one
    const tree = cut(
      'cross',
      n(40),
      leaf('y'),
      cut('cross', n(2, 7, 8), waste, cut('cross', n(30), leaf('x'), left)),
    );
    const at = { stock: stick, whole: size, kerf, wanted: own, offcut: false };
    for (const came of [n(25), n(37), n(39, 3, 4), n(39, 13, 16), n(39, 29, 32), n(45), n(72), n(90)]) {
      const after = mended({ cut: tree, size, from: corner, at: came }, at);
      for (const found of cutApart({ size, tree: after }, kerf)) {
        const end = add(found.from.long, found.size.long);
        expect([w(came), less(found.from.long, n(43)) && less(n(40), end)]).toEqual([w(came), false]);
        expect(less(found.size.long, found.piece === 'y/1' ? n(39, 13, 16) : n(29, 13, 16))).toBe(false);
      }
    }
    const pieces = (came: Length) =>
      cutApart({ size, tree: mended({ cut: tree, size, from: corner, at: came }, at) }, kerf).map(
        (f) => f.piece,
      );
    // 3/16 short: 39 13/16 are still enough, and the cut after it that frees the bad place is still past it
    expect(pieces(n(39, 13, 16)).sort()).toEqual(['x/1', 'y/1']);
    expect(pieces(n(25))).toEqual(['y/1']);
    expect(pieces(n(37)).sort()).toEqual(['x/1', 'y/1']);
  });

  test('keeps the trims of a sheet: no piece ends on a raw edge, wherever the cut came out', () => {
    const trimmed = { ...stock, trim: n(1) };
    const own = new Map([piece('x', n(60), n(45)), piece('y', n(33), n(20))].map((p) => [p.id, p]));
    const whole = { long: n(96), wide: n(48) };
    const at = { stock: trimmed, whole, kerf, wanted: own, offcut: false };
    const inner = cut('cross', n(60), cut('rip', n(45), leaf('x'), left), cut('rip', n(20), leaf('y'), left));
    const tree = cut('rip', n(0, 7, 8), waste, cut('cross', n(0, 7, 8), waste, inner));
    for (const [path, came] of [
      ['r', n(1, 7, 8)],
      ['r', n(0, 13, 16)],
      ['r', n(0, 1, 4)],
      ['r', n(3)],
      ['rf', n(3)],
      ['rff', n(58)],
      ['rff', n(62)],
    ] as const) {
      const place = placesOf({ size: whole, tree }, kerf).find((p) => p.path === path);
      if (place?.branch.is !== 'cut') throw new Error('no cut');
      const branch = mended({ cut: place.branch, size: place.size, from: place.from, at: came }, at);
      const found = cutApart({ size: whole, tree: withBranch(tree, path, branch) }, kerf);
      expect(found.length).toBeGreaterThan(0);
      for (const { from, size } of found)
        for (const way of ['long', 'wide'] as const) {
          // a trim 1/16 short of what was asked is a trim
          expect(less(from[way], n(0, 15, 16))).toBe(false);
          expect(less(n(95, 1, 16), add(from.long, size.long))).toBe(false);
          expect(less(n(47, 1, 16), add(from.wide, size.wide))).toBe(false);
        }
    }
  });

  test('at nothing, and beyond the sheet by how much', () => {
    const wrong = { cut: whole, size: sheet.size, from: corner };
    expect(wrongCutError({ ...wrong, at: n(0) })?.code).toBe('not-a-cut');
    const off = wrongCutError({ ...wrong, at: n(50) });
    expect(off?.code === 'off-the-sheet' && [w(off.by), w(off.most)]).toEqual(['2', '48']);
    expect(wrongCutError({ ...wrong, at: n(48) })).toBeUndefined();
    // a trim may be no more than its kerf
    expect(wrongCutError({ ...wrong, cut: cut('rip', n(0), waste, left), at: n(0) })).toBeUndefined();
  });

  test('the rest of the tree keeps its paths, so ticks keep their cuts', () => {
    const tree = withBranch(sheet.tree, 'rf', left);
    expect(branchAt(tree, 'rn')).toBe(sheet.tree.near);
    expect(branchAt(tree, 'rf')).toEqual(left);
    expect(branchAt(tree, 'rnn')).toEqual(leaf('a'));
  });
});

describe('a plan against what is wanted now', () => {
  const planned = { id: 's', kerf, ...sheet };
  const all = ['a', 'b', 'c', 'd'].map((id) => piece(id, n(40), n(17, 3, 4)));

  test('holds while nothing has changed', () => {
    expect(standingOf({ pieces: all, sheets: [planned], cut: () => false })).toEqual({
      missing: [],
      stale: [],
      misfits: [],
      twice: [],
    });
  });

  test('names what two plans that met lay twice', () => {
    const other = { ...planned, id: 't', tree: cut('rip', n(17, 3, 4), strip('a', 'x'), left) };
    expect(
      standingOf({ pieces: all, sheets: [planned, other], cut: () => false }).twice.map((p) => p.id),
    ).toEqual(['a/1']);
  });

  test('names a piece on no sheet unless it is cut, one nobody wants, and one that has grown', () => {
    const more = [...all.slice(1), piece('e', n(10), n(10))];
    const found = standingOf({ pieces: more, sheets: [planned], cut: () => false });
    expect([found.missing.map((p) => p.id), found.stale.map((s) => s.piece)]).toEqual([['e/1'], ['a/1']]);
    expect(standingOf({ pieces: more, sheets: [planned], cut: (id) => id === 'e/1' }).missing).toEqual([]);
    // laid with 1/4 over: 1/8 more leaves it 1/8, 7/32 more only 1/32, less than a final cut takes
    const misfits = (more: Length) => {
      const grown = [piece('a', add(n(40), more), n(17, 3, 4)), ...all.slice(1)];
      return standingOf({ pieces: grown, sheets: [planned], cut: () => false }).misfits;
    };
    expect(misfits(n(0, 1, 8))).toEqual([]);
    expect(misfits(n(0, 3, 16))).toEqual([]);
    const [misfit] = misfits(n(0, 7, 32));
    expect([misfit?.piece.id, misfit?.short]).toEqual(['a/1', false]);
    const far = [piece('a', n(41), n(17, 3, 4)), ...all.slice(1)];
    expect(standingOf({ pieces: far, sheets: [planned], cut: () => false }).misfits[0]?.short).toBe(true);
  });
});
