import { describe, expect, test } from 'vitest';
import { rowLine } from '../../e2e/bench/figures.mjs';
import { once, runParts } from '../../e2e/bench/parts.mjs';

const lines: string[] = [];
const print = (line: string): void => void lines.push(line);

async function run(...parts: readonly (() => Iterable<number>)[]) {
  lines.length = 0;
  const named = parts.map((rows, k) => ({ name: `part ${k + 1}`, rows, line: (n: number) => `row ${n}` }));
  return { counts: await runParts(named, print), lines: [...lines] };
}

describe('runParts', () => {
  test('prints each row as it comes', async () => {
    const seen: number[] = [];
    await run(function* () {
      yield 1;
      seen.push(lines.length);
      yield 2;
    });
    expect(seen).toEqual([2]); // the part's name and its first row, before the second is measured
    expect(lines).toEqual(['part 1 ...', 'row 1', 'row 2']);
  });

  test('a part that breaks off keeps its rows, says why in one line, and the next one runs', async () => {
    const { counts, lines } = await run(
      function* () {
        yield 1;
        throw new Error('editJob is not a function\nand a stack');
      },
      () => [2],
    );
    expect(counts).toEqual({ passed: 1, failed: 1 });
    expect(lines).toEqual([
      'part 1 ...',
      'row 1',
      'FAILED  part 1: editJob is not a function',
      'part 2 ...',
      'row 2',
    ]);
  });

  test('a part that measures nothing has failed', async () => {
    expect((await run(() => [])).counts).toEqual({ passed: 0, failed: 1 });
  });
});

describe('rowLine', () => {
  test('has the figures in columns before the name', () => {
    expect(rowLine({ name: 'a long log', app: 1234.56, beside: 1.25, unit: 'ms' }).trim()).toMatch(
      /^1,235 +1\.3 +ms +a long log$/,
    );
    expect(rowLine({ name: 'alone', app: 0.04, unit: 'ms' }).trim()).toMatch(/^0 +- +ms +alone$/);
  });

  test.each([undefined, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s as a figure', (app) => {
    expect(() => rowLine({ name: 'a row', app, unit: 'ms' })).toThrow('a row: nothing was measured');
  });
});

test('once makes a thing when it is first asked for, and fails alike each time', async () => {
  let made = 0;
  const get = once(async () => {
    made += 1;
    throw new Error('no page');
  });
  await expect(get()).rejects.toThrow('no page');
  await expect(get()).rejects.toThrow('no page');
  expect(made).toBe(1);
});
