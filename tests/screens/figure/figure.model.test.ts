import { describe, expect, test } from 'vitest';
import type { Key } from '../../../src/length/keypad';
import { inches } from '../../../src/length/length';
import {
  type FigureRows,
  figureChanges,
  figureWhole,
  readFigure,
} from '../../../src/screens/figure/figure.kept';
import {
  addTheLot,
  changeLine,
  dropLine,
  fillBlank,
  fromLength,
  lookAt,
  measureBack,
  nameLine,
  newStrip,
  pressKey,
  takeTyped,
  undoFigure,
  useFigure,
} from '../../../src/screens/figure/figure.model';
import {
  emptyFigure,
  type FigureState,
  mostLines,
  undoDepth,
} from '../../../src/screens/figure/figure.state';
import { builtOn, callIt, lineValue } from '../../../src/screens/figure/lines';

const press = (state: FigureState, ...keys: readonly Key[]): FigureState =>
  keys.reduce((at, key) => pressKey(at, key, '1/64').state, state);
const d = (digit: number): Key => ({ key: 'digit', digit });
const op = (sign: '+' | '−' | '×' | '÷'): Key => ({ key: 'op', op: sign });
const fraction = (sixteenths: number): Key => ({ key: 'fraction', sixteenths });
const line = (id: string): Key => ({ key: 'line', id });
const equals: Key = { key: 'equals' };
const typed = (state: FigureState, text: string): FigureState =>
  takeTyped({ ...state, typed: text }, 'in').state;
const idOf = (state: FigureState, k: number): string => state.lines[k]?.id ?? 'none';
const value = (state: FigureState, k: number): string => {
  const found = lineValue(state.lines, idOf(state, k));
  return found.ok ? found.value.value.toFraction(true) : found.error.code;
};
const answer = (state: FigureState): string => {
  const { result } = lookAt(state);
  return result?.ok ? result.value.value.toFraction(true) : 'none';
};
const stored = (rows: FigureRows): FigureRows => JSON.parse(JSON.stringify(rows));
const restarted = (state: FigureState): FigureState => readFigure(stored(figureChanges({}, state)));
/** A page keeps a state over what it sees kept; what is taken away is gone. */
const keptBy = (rows: FigureRows, state: FigureState): FigureRows =>
  Object.fromEntries(
    Object.entries(stored({ ...rows, ...figureChanges(rows, state) })).filter(([, one]) => one !== null),
  );

/** Nine, then half of it by reference. */
const twoLines = press(emptyFigure, d(9), equals, op('÷'), d(2), equals);

describe('pressKey', () => {
  test.each([
    ['13 7/16', [d(1), d(3), fraction(7)], 3],
    ['13 29/64', [d(1), d(3), fraction(7), { key: 'strong' }], 4],
    [
      '13 57/128',
      [d(2), d(7), fraction(10), op('−'), fraction(12), { key: 'scant' }, op('÷'), d(2), equals],
      11,
    ],
  ] as const)('%s takes no more taps than the design allows', (want, keys, most) => {
    expect(answer(press(emptyFigure, ...keys))).toBe(want);
    expect(keys.length).toBeLessThanOrEqual(most);
  });

  test('a finished sum is a line, and a sign goes on from it by reference', () => {
    expect(twoLines.lines.map((l) => l.text)).toEqual(['9', `#${idOf(twoLines, 0)} ÷ 2`]);
    expect(value(twoLines, 1)).toBe('4 1/2');
  });

  test('a line changed takes the lines built on it along', () => {
    const state = press(changeLine(twoLines, idOf(twoLines, 0)), op('+'), d(1), equals);
    expect([state.lines.length, value(state, 0), value(state, 1)]).toEqual([2, '10', '5']);
  });

  test('a line cannot be changed to stand on one that is built on it, nor on itself', () => {
    const state = press(changeLine(twoLines, idOf(twoLines, 0)), op('+'));
    for (const k of [0, 1]) {
      const refused = pressKey(state, line(idOf(state, k)), '1/64');
      expect(refused).toEqual({ state, refused: 'built-on-itself' });
    }
    expect(pressKey(press(twoLines, op('+')), line(idOf(twoLines, 0)), '1/64').refused).toBeUndefined();
  });

  test('a strip takes sixty lines, then refuses and keeps them all', () => {
    let state = emptyFigure;
    for (let k = 0; k < mostLines; k += 1) state = press(state, d(1), equals);
    expect(state.lines).toHaveLength(60);
    const full = pressKey(press(state, d(2)), equals, '1/64');
    expect(full.refused).toBe('strip-full');
    expect(full.state.lines).toHaveLength(60);
  });

  test('a sum longer than a line can hold is refused before it is lost', () => {
    let state = press(emptyFigure, d(1));
    let refused: string | undefined;
    for (let k = 0; k < 200 && !refused; k += 1) {
      for (const key of [op(k % 2 === 0 ? '×' : '+'), d(2), fraction(7)]) {
        const next = pressKey(state, key, '1/64');
        refused ??= next.refused;
        state = next.state;
      }
    }
    expect(refused).toBe('sum-too-long');
    const kept = press(state, equals);
    expect(value(kept, 0)).not.toBe('bad-figure');
    expect(restarted(kept)).toEqual(kept);
  });

  test('brackets opened without end are refused', () => {
    let state = emptyFigure;
    for (let k = 0; k < 100; k += 1) state = press(state, { key: 'bracket' });
    expect(state.keys.frames.length).toBeLessThanOrEqual(20);
  });
});

describe('lineValue', () => {
  test('a line built on itself is named, not followed for ever', () => {
    const lines = [
      { id: 'a', name: '', text: '#b + 1' },
      { id: 'b', name: '', text: '#a + 1' },
    ];
    const found = lineValue(lines, 'a');
    expect(!found.ok && found.error.code).toBe('ring');
  });

  test('the lot added fifty times over is worked once a line, not once a path', () => {
    let state = press(emptyFigure, d(1), equals);
    for (let k = 0; k < 50; k += 1) state = addTheLot(state).state;
    expect(state.lines).toHaveLength(51);
    expect(value(state, 50)).toBe(`${2n ** 49n}`); // each total is as much as all before it
  });
});

describe('builtOn', () => {
  test('goes through lines, backwards and forwards in the strip', () => {
    const lines = [
      { id: 'a', name: '', text: '#c + 1' },
      { id: 'b', name: '', text: '4' },
      { id: 'c', name: '', text: '#b ÷ 2' },
    ];
    expect(builtOn(lines, 'b').map((l) => l.id)).toEqual(['a', 'c']);
    expect(builtOn(lines, 'a')).toEqual([]);
  });
});

describe('the strip', () => {
  test('a line struck out leaves those built on it asking for it, and undo brings it back', () => {
    const struck = dropLine(twoLines, idOf(twoLines, 0));
    expect(value(struck, 0)).toBe('unknown-line');
    expect(value(undoFigure(struck), 1)).toBe('4 1/2');
  });

  test('a new line never takes the place of one struck out', () => {
    const struck = dropLine(twoLines, idOf(twoLines, 0));
    const next = press(struck, d(3), equals);
    expect(value(next, 0)).toBe('unknown-line');
    expect(new Set([...twoLines.lines, ...next.lines].map((l) => l.id)).size).toBe(3);
  });

  test('a new strip is empty, and undo brings the old one back', () => {
    const fresh = press(newStrip(twoLines), d(7), equals);
    expect(value(fresh, 0)).toBe('7');
    const back = [1, 2, 3].reduce((state) => undoFigure(state), fresh);
    expect(value(back, 1)).toBe('4 1/2');
  });

  test('the strip is added up by reference, names and all', () => {
    let state = typed(typed(emptyFigure, '27 5/8'), '47/64');
    state = addTheLot(nameLine(state, idOf(state, 0), 'Inside width')).state;
    expect(value(state, 2)).toBe('28 23/64');
    expect([0, 1, 2].map((k) => callIt(state.lines, idOf(state, k)))).toEqual([
      'Inside width',
      'line 2',
      'The lot',
    ]);
  });

  test('on a metric tape a typed bare number is millimetres, for good', () => {
    const { state } = takeTyped({ ...emptyFigure, typed: '341 - 18 × 2' }, 'mm');
    expect(state.lines[0]?.text).toBe('341 mm − (18 mm × 2)');
    expect(value(state, 0)).toBe('12 1/127');
  });

  test('a typed line that does not read stays where it was typed', () => {
    const state = typed(emptyFigure, '5 1/2 3/4');
    expect([state.lines.length, state.typed]).toEqual([0, '5 1/2 3/4']);
  });

  test('a typed line taken can be had back to type on', () => {
    expect(undoFigure(typed(emptyFigure, '5 1/2')).typed).toBe('5 1/2');
  });
});

describe('useFigure', () => {
  const sheet = (state: FigureState) => useFigure(state, 'Sheet A', inches(23n, 32n), '1/64').state;

  test('a measured sheet is a named line of the strip, there once however often it is used', () => {
    const once = press(sheet(press(emptyFigure, d(9), op('−'))), op('−'));
    const state = press(sheet(once), equals);
    expect(state.lines.map((l) => l.name)).toEqual(['Sheet A', '']);
    expect(value(state, 1)).toBe('7 9/16');
  });

  test('one undo takes the line and its use back together', () => {
    const before = press(emptyFigure, d(9), op('−'));
    expect(undoFigure(sheet(before))).toEqual(before);
  });

  test('where no figure can stand, no line is left behind', () => {
    const state = press(changeLine(twoLines, idOf(twoLines, 0)));
    expect(useFigure(state, 'Sheet A', inches(23n, 32n), '1/64')).toEqual({ state, refused: 'sign-first' });
  });
});

describe('fromLength', () => {
  test('a line answers are measured back from is followed when it changes', () => {
    const set = measureBack(twoLines, `#${idOf(twoLines, 0)}`);
    expect(fromLength(set)?.toFraction(true)).toBe('9');
    const changed = press(changeLine(set, idOf(set, 0)), op('+'), d(1), equals);
    expect(fromLength(changed)?.toFraction(true)).toBe('10');
    expect(fromLength(dropLine(set, idOf(set, 0)))).toBeUndefined();
    expect(fromLength(measureBack(set, ''))).toBeUndefined();
  });

  test('the length of a part given in the quick sum is one, until it is emptied', () => {
    const set = fillBlank(emptyFigure, 'other-end.length', '257/4');
    expect(fromLength(set)?.toFraction(true)).toBe('64 1/4');
    const other = fillBlank(set, 'parts.length', '12');
    expect(fromLength(other)?.toFraction(true)).toBe('64 1/4');
    expect(fromLength(fillBlank(other, 'other-end.length', undefined))).toBeUndefined();
    expect(undoFigure(undoFigure(other))).toEqual({ ...emptyFigure, undo: [] });
  });
});

describe('undo and keeping', () => {
  test('fifty keys can be taken back, also after a restart', () => {
    let state = emptyFigure;
    for (let k = 0; k < 30; k += 1) state = press(state, d(k % 9), op('+'));
    expect(state.undo).toHaveLength(undoDepth);
    state = restarted(state);
    for (let k = 0; k < 50; k += 1) state = undoFigure(state);
    expect(lookAt(state).tokens.filter((t) => t.is === 'length')).toHaveLength(5);
    expect(undoFigure(state)).toBe(state);
  });

  test('all of it is kept: lines, blanks, what is measured back from, a half-keyed figure', () => {
    const state = press(
      measureBack(fillBlank(twoLines, 'parts.n', '5'), '#1'),
      { key: 'bracket' },
      d(5),
      { key: 'feet' },
      d(3),
      fraction(4),
      { key: 'strong' },
    );
    expect(restarted(state)).toEqual(state);
  });

  const kept = figureWhole(figureChanges({}, twoLines)) as Record<string, never>;
  test.each([
    ['nothing', undefined],
    ['null', null],
    ['a number', 7],
    ['a list', []],
    ['no keys', { ...kept, keys: undefined }],
    [
      'keys without a bracket level',
      { ...kept, keys: { frames: [], slot: { digits: '', unit: 'in' }, done: false } },
    ],
    [
      'a sum that is none',
      {
        ...kept,
        keys: { frames: [{ total: { is: 'op', op: '+' } }], slot: { digits: '', unit: 'in' }, done: true },
      },
    ],
    [
      'digits that are none',
      { ...kept, keys: { frames: [{}], slot: { digits: '1e9', unit: 'in' }, done: false } },
    ],
    ['a line without text', { ...kept, lines: [{ id: '1', name: '' }] }],
    ['an undo that is none', { ...kept, undo: [{}] }],
    ['a blank that is no text', { ...kept, sums: { 'parts.n': 5 } }],
  ])('kept state with %s starts empty', (_, state) =>
    expect(readFigure({ figure: state as never })).toEqual(emptyFigure),
  );
});

describe('two pages on one strip', () => {
  const page = (tag: string): FigureState => ({ ...emptyFigure, tag });
  const texts = (rows: FigureRows) => readFigure(rows).lines.map((line) => line.text);
  /** What the other page sees of these rows: the lines, and its own half sum. */
  const beside = (rows: FigureRows, own: FigureState): FigureRows =>
    keptBy(rows, { ...own, lines: readFigure(rows).lines });

  test('a key in one wipes nothing of the other, and undo takes back its own line alone', () => {
    let rows = keptBy({}, press(page('a'), d(1), equals, d(2), equals, d(3), equals));
    rows = beside(rows, page('b'));
    rows = keptBy(rows, press({ ...page('b'), lines: readFigure(rows).lines }, d(4), equals));
    expect(texts(rows)).toEqual(['1', '2', '3', '4']);
    expect(new Set(readFigure(rows).lines.map(({ id }) => id)).size).toBe(4);
    const struck = keptBy(rows, undoFigure(readFigure(rows)));
    expect(texts(struck)).toEqual(['1', '2', '3']);
  });

  test('undo of a line struck out puts it where it stood, and leaves what was added since', () => {
    let state = press(page('a'), d(1), equals, d(2), equals, d(3), equals);
    let rows = keptBy({}, state);
    state = dropLine(readFigure(rows), readFigure(rows).lines[1]?.id ?? '');
    rows = keptBy(rows, state);
    expect(texts(rows)).toEqual(['1', '3']);
    const added = { ...rows, 'strip/b1': { name: '', text: '9', at: 9 } };
    expect(texts(keptBy(added, undoFigure(readFigure(added))))).toEqual(['1', '2', '3', '9']);
  });

  test('a strip kept in one before reads as it did, and each of its lines goes by itself from then on', () => {
    const old = { figure: stored({ figure: twoLines as never }).figure ?? null };
    expect(readFigure(old).lines).toEqual(twoLines.lines);
    const dropped = keptBy(old, dropLine(readFigure(old), '1'));
    expect(readFigure(dropped).lines).toEqual(twoLines.lines.slice(1));
  });

  test('a line that came from another page after this one was shown is not taken away by a key here', () => {
    const shown = press(page('a'), d(1), equals);
    const rows = { ...keptBy({}, shown), 'strip/b1': { name: '', text: '9', at: 9 } };
    const changes = figureChanges(rows, press(shown, d(2), equals), shown.lines);
    expect(Object.keys(changes)).not.toContain('strip/b1');
    expect(figureChanges(rows, newStrip(shown), shown.lines)).toMatchObject({ 'strip/a1': null });
  });

  test('only what differs is kept at a key', () => {
    const rows = figureChanges({}, press(page('a'), d(1), equals, d(2), equals));
    expect(Object.keys(figureChanges(rows, press(readFigure(rows), d(7))))).toEqual(['undo/5', 'figure']);
    expect(Object.keys(figureChanges(rows, undoFigure(readFigure(rows))))).toEqual(['strip/a2', 'figure']);
  });

  test('a key late in a long sum is kept in a few kilobytes, and fifty keys can be taken back all the same', () => {
    let rows: FigureRows = {};
    for (let k = 0; k < 120; k += 1) {
      const changes = figureChanges(rows, press(readFigure(rows), k % 2 === 0 ? d(3) : op('+')));
      expect(JSON.stringify(changes).length).toBeLessThan(12_000);
      rows = { ...rows, ...changes };
    }
    const again = readFigure(stored(rows));
    expect(again.undo).toHaveLength(undoDepth);
    const back = Array.from({ length: 50 }).reduce<FigureState>(undoFigure, again);
    expect(lookAt(back).tokens.filter((t) => t.is === 'length')).toHaveLength(35);
  });

  test('steps back kept in one before read as they did, and go by themselves from then on', () => {
    const old = stored({ figure: { ...press(emptyFigure, d(1), op('+'), d(2)), steps: undefined } as never });
    const next = press(readFigure(old), d(3));
    expect(next.undo).toHaveLength(4);
    expect(readFigure(keptBy(old, next))).toEqual(next);
  });

  test('the steps of another page lead nowhere here', () => {
    const rows = figureChanges({}, press(page('a'), d(1), d(2), d(3)));
    const theirs = figureChanges({}, press(page('b'), d(4), d(5)));
    const mixed = { ...rows, 'undo/2': theirs['undo/2'] ?? null };
    expect(readFigure(mixed).undo).toHaveLength(1);
    expect(lookAt(undoFigure(readFigure(mixed))).tokens).toEqual(lookAt(press(page('a'), d(1), d(2))).tokens);
  });
});
