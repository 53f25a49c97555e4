import { describe, expect, test } from 'vitest';
import { add, type Length, less } from '../../../src/length/length';
import { refit } from '../../../src/trade/sheets/solve';
import type { SheetStock } from '../../../src/trade/sheets/stock';
import { type Branch, branchAt, placesOf, withBranch } from '../../../src/trade/sheets/tree';
import {
  afterWrongCut,
  leanPieces,
  stillGood,
  type WrongCut,
  wrongCutError,
  wrongCutProblem,
} from '../../../src/trade/sheets/wrong-cut';
import { cut, kerf, leaf, left, n, piece, sheet, w } from './cutting';
import { cutApart } from './verify';

const waste: Branch = { is: 'waste' };

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
