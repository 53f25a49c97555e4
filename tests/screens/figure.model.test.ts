import { describe, expect, test } from 'vitest';
import type { Key } from '../../src/length/keypad';
import {
  addTheLot,
  asJson,
  builtOn,
  callIt,
  changeLine,
  dropLine,
  emptyFigure,
  type FigureState,
  lineValue,
  lookAt,
  nameLine,
  pressKey,
  readFigure,
  takeTyped,
  undoFigure,
} from '../../src/screens/figure/figure.model';

let ids = 0;
const newId = () => `l${++ids}`;
const press = (state: FigureState, ...keys: readonly Key[]): FigureState =>
  keys.reduce((at, key) => pressKey(at, key, '1/64', newId).state, state);
const d = (digit: number): Key => ({ key: 'digit', digit });
const equals: Key = { key: 'equals' };
const typed = (state: FigureState, text: string): FigureState =>
  takeTyped({ ...state, typed: text }, 'in', newId);
const value = (state: FigureState, k: number): string => {
  const found = lineValue(state.lines, state.lines[k]?.id ?? '');
  return found.ok ? found.value.value.toFraction(true) : found.error.code;
};

describe('the roll', () => {
  test('a finished sum is a line, and a sign goes on from it by reference', () => {
    const one = press(emptyFigure, d(9), equals);
    const two = press(one, { key: 'op', op: '÷' }, d(2), equals);
    expect(two.lines.map((l) => l.text)).toEqual(['9', `#${one.lines[0]?.id} ÷ 2`]);
    expect(value(two, 1)).toBe('4 1/2');
  });

  test('a line changed takes the lines built on it along', () => {
    let state = press(emptyFigure, d(9), equals, { key: 'op', op: '÷' }, d(2), equals);
    const first = state.lines[0]?.id ?? '';
    expect(builtOn(state.lines, first)).toHaveLength(1);
    state = press(changeLine(state, first), { key: 'op', op: '+' }, d(1), equals);
    expect([state.lines.length, value(state, 0), value(state, 1)]).toEqual([2, '10', '5']);
  });

  test('a line built on itself is named, not followed for ever', () => {
    const lines = [
      { id: 'a', name: '', text: '#b + 1' },
      { id: 'b', name: '', text: '#a + 1' },
    ];
    const found = lineValue(lines, 'a');
    expect(!found.ok && found.error.code).toBe('ring');
  });

  test('a line struck out leaves those built on it asking for it, and undo brings it back', () => {
    const state = press(emptyFigure, d(9), equals, { key: 'op', op: '÷' }, d(2), equals);
    const struck = dropLine(state, state.lines[0]?.id ?? '');
    expect(value(struck, 0)).toBe('unknown-line');
    expect(value(undoFigure(struck), 1)).toBe('4 1/2');
  });

  test('the strip is added up by reference, names and all', () => {
    let state = typed(typed(emptyFigure, '27 5/8'), '47/64');
    state = addTheLot(nameLine(state, state.lines[0]?.id ?? '', 'Inside width'), newId);
    expect(value(state, 2)).toBe('28 23/64');
    expect(callIt(state.lines, state.lines[0]?.id ?? '')).toBe('Inside width');
    expect(callIt(state.lines, state.lines[1]?.id ?? '')).toBe('line 2');
  });

  test('on a metric tape a typed bare number is millimetres, for good', () => {
    const state = takeTyped({ ...emptyFigure, typed: '341 - 18 × 2' }, 'mm', newId);
    expect(state.lines[0]?.text).toBe('341 mm − (18 mm × 2)');
    expect(value(state, 0)).toBe('12 1/127');
  });

  test('a typed line that does not read stays where it was typed', () => {
    const state = typed(emptyFigure, '5 1/2 3/4');
    expect([state.lines.length, state.typed]).toEqual([0, '5 1/2 3/4']);
  });
});

describe('undo and keeping', () => {
  test('fifty keys can be taken back, also after a restart', () => {
    let state = emptyFigure;
    for (let k = 0; k < 30; k += 1) state = press(state, d(k % 9), { key: 'op', op: '+' });
    expect(state.undo).toHaveLength(50);
    state = readFigure(JSON.parse(JSON.stringify(asJson(state))));
    for (let k = 0; k < 50; k += 1) state = undoFigure(state);
    expect(lookAt(state).tokens.filter((t) => t.is === 'length')).toHaveLength(5);
    expect(undoFigure(state)).toBe(state);
  });

  test.each([
    undefined,
    null,
    7,
    'x',
    [],
    {},
    { lines: 3, undo: [] },
    { lines: [{}], undo: [], typed: '', keys: { frames: [], slot: { digits: '' } } },
  ])('kept state that is none (%j) starts empty', (kept) =>
    expect(readFigure(kept as never)).toBe(emptyFigure),
  );
});
