import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches } from '../../src/length/length';
import type { Tape } from '../../src/length/tape';
import { lookAt, pressKey, takeReading, undoFigure } from '../../src/screens/figure/figure.model';
import { emptyFigure, type FigureState } from '../../src/screens/figure/figure.state';

const keyed = (state: FigureState, text: string, tape: Tape = '1/32'): FigureState =>
  [...text].reduce((s, sign) => {
    const op = { '+': '+', '-': '−', '*': '×' }[sign];
    const key = op
      ? ({ key: 'op', op } as Parameters<typeof pressKey>[1])
      : sign === '='
        ? ({ key: 'equals' } as const)
        : ({ key: 'digit', digit: Number(sign) } as const);
    return pressKey(s, key, tape).state;
  }, state);

const worth = (state: FigureState) => {
  const { result } = lookAt(state);
  return result?.ok ? result.value : undefined;
};

describe('takeReading', () => {
  test('a reading is the exact decimal, in inches or in millimetres', () => {
    const inch = takeReading(emptyFigure, { text: '0.7185', unit: 'in' }, '1/32').state;
    expect(worth(inch)).toEqual({ kind: 'length', value: inches(7185n, 10000n) });
    const mm = takeReading(emptyFigure, { text: '18,25', unit: 'mm' }, '1/32').state;
    expect(worth(mm)).toEqual({ kind: 'length', value: fromMillimetres(1825n, 100n) });
  });

  test('on a metric tape inches are inches all the same', () => {
    const state = takeReading(emptyFigure, { text: '0.7185', unit: 'in' }, '1 mm' as Tape).state;
    expect(worth(state)).toEqual({ kind: 'length', value: inches(7185n, 10000n) });
  });

  test('it takes the place of a half-keyed figure and leaves the sum before it', () => {
    const sum = keyed(emptyFigure, '38-12');
    const state = takeReading(sum, { text: '0.75', unit: 'in' }, '1/32').state;
    expect(worth(state)).toEqual({ kind: 'length', value: inches(149n, 4n) });
    expect(worth(undoFigure(state))).toEqual({ kind: 'length', value: inches(26n) });
  });

  test('after × it is a length still, not a count', () => {
    const state = takeReading(keyed(emptyFigure, '3*'), { text: '2', unit: 'in' }, '1/32').state;
    expect(lookAt(state).takenAs ?? 'length').toBe('length');
  });

  test('after equals it begins a new sum', () => {
    const state = takeReading(keyed(emptyFigure, '3+4='), { text: '1.5', unit: 'in' }, '1/32').state;
    expect(worth(state)).toEqual({ kind: 'length', value: inches(3n, 2n) });
    expect(state.current).toBe('');
  });
});
