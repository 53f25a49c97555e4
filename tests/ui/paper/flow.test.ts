import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Block,
  beside,
  flow,
  type Leaf,
  stacked,
  textBlock,
  textLines,
} from '../../../src/ui/paper/flow';
import { line, textAt } from '../../../src/ui/paper/ink';

const leaf: Leaf = { wide: 100, high: 100, margin: 10 };
const head: Block = { high: 8, ink: ([x, y]) => [textAt([x, y + 6], 'head', { high: 5 })] };
/** A block that draws its own frame, by its number. */
const block = (k: number, high: number, more: Partial<Block> = {}): Block => ({
  high,
  ink: ([x, y]) => [textAt([x, y], `${k}`, { high: 1 }), line([x, y], [x, y + high])],
  ...more,
});
const numbersOf = (blocks: readonly Block[]) =>
  [...flow(leaf, () => head, blocks)].map(({ ink }) =>
    ink.flatMap((one) => (one.draw === 'text' ? [one.text] : [])),
  );

describe('flow', () => {
  test('fills a page of 80 below its head of 8: two of 36 go on it, the third on the next', () => {
    expect(numbersOf([block(1, 36), block(2, 36), block(3, 36)])).toEqual([
      ['head', '1', '2'],
      ['head', '3'],
    ]);
  });

  test('a head is never the last of a page', () => {
    expect(numbersOf([block(1, 36), block(2, 30, { head: true }), block(3, 10)])).toEqual([
      ['head', '1'],
      ['head', '2', '3'],
    ]);
  });

  test('what goes on over the page says again what it belongs to', () => {
    const again = block(0, 4);
    expect(numbersOf([block(1, 36, { again }), block(2, 30, { again }), block(3, 20, { again })])).toEqual([
      ['head', '0', '1', '2'],
      ['head', '0', '3'],
    ]);
  });

  test('nothing makes no page', () => expect(numbersOf([])).toEqual([]));

  test('blocks lie inside the margins, under each other, each once and in order', () => {
    const some = fc.record({
      high: fc.integer({ min: 1, max: 30 }),
      head: fc.boolean(),
      again: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 40 }), (said) => {
        const blocks = said.map(({ high, head: isHead, again }, k) =>
          block(k + 1, high, {
            ...(isHead && !said[k - 1]?.head && k < said.length - 1 ? { head: true as const } : {}),
            ...(again ? { again: block(0, 3) } : {}),
          }),
        );
        const pages = [...flow(leaf, () => head, blocks)];
        for (const { ink } of pages) {
          const frames = ink.flatMap((one) =>
            one.draw === 'line' ? [[one.from[1], one.to[1]] as const] : [],
          );
          frames.forEach(([top, end], k) => {
            expect(top).toBeGreaterThanOrEqual(frames[k - 1]?.[1] ?? 18);
            expect(end).toBeLessThanOrEqual(90);
          });
        }
        const drawn = pages.flatMap(({ ink }) =>
          ink.flatMap((one) => (one.draw === 'text' && /^[1-9]/.test(one.text) ? [Number(one.text)] : [])),
        );
        expect(drawn).toEqual(blocks.map((_, k) => k + 1));
      }),
    );
  });
});

const widthOf = (text: string, high: number): number => text.length * high;

describe('texts', () => {
  test('a length is not broken over a line', () => {
    const rows = textLines({ text: 'stop at 20 5/16', high: 1 }, { wide: 10, widthOf });
    const said = rows.flatMap(({ ink }) => ink([0, 0])).map((one) => (one.draw === 'text' ? one.text : ''));
    expect(said).toEqual(['stop at', '20\u00a05/16']);
  });

  test('beside each other they are as high as the highest, under each other as all together', () => {
    const text = textBlock({ text: 'ab', high: 2 }, { wide: 50, widthOf, after: 1 });
    // one line of 1.7 times 2, and 1 after it
    expect(text.high).toBeCloseTo(4.4, 9);
    expect(
      beside([
        [0, text],
        [20, stacked([text, text])],
      ]).high,
    ).toBeCloseTo(8.8, 9);
  });
});
