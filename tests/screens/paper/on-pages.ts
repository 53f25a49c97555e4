import { expect } from 'vitest';
import type { Leaf } from '../../../src/ui/paper/flow';
import type { Ink, Page, WidthOf } from '../../../src/ui/paper/ink';

/** About as wide as Helvetica: its signs are 0.5 to 0.8 of the height of its capitals, most of them 0.75. */
export const widthOf: WidthOf = (text, high, bold) => text.length * high * (bold ? 0.85 : 0.8);

export const a4: Leaf = { wide: 210, high: 297, margin: 12 };
export const letter: Leaf = { wide: 215.9, high: 279.4, margin: 12.7 };

type Box = {
  readonly what: string;
  readonly x: number;
  readonly y: number;
  readonly x2: number;
  readonly y2: number;
};

/** What a text covers: its capitals, and a quarter of them below for what hangs. */
function boxOf(ink: Ink): Box {
  switch (ink.draw) {
    case 'line': {
      const [x, y, x2, y2] = [...ink.from, ...ink.to];
      return {
        what: 'line',
        x: Math.min(x, x2),
        y: Math.min(y, y2),
        x2: Math.max(x, x2),
        y2: Math.max(y, y2),
      };
    }
    case 'box':
      return { what: 'box', x: ink.at[0], y: ink.at[1], x2: ink.at[0] + ink.wide, y2: ink.at[1] + ink.high };
    default: {
      const wide = widthOf(ink.text, ink.high, ink.bold);
      const [x, y] = ink.at;
      const before = ink.align === 'right' ? wide : ink.align === 'middle' ? wide / 2 : 0;
      const down = 0.25 * ink.high;
      if (ink.turned)
        return { what: ink.text, x: x - ink.high, y: y - wide + before, x2: x + down, y2: y + before };
      return { what: ink.text, x: x - before, y: y - ink.high, x2: x - before + wide, y2: y + down };
    }
  }
}

const near = 0.01;

/** Nothing lies outside the margins, and no text lies on another. */
export function expectNeat(pages: readonly Page[], { margin }: Leaf): void {
  for (const { wide, high, ink } of pages) {
    const boxes = ink.map(boxOf);
    for (const { what, x, y, x2, y2 } of boxes)
      if (x < margin - near || y < margin - near || x2 > wide - margin + near || y2 > high - margin + near)
        expect.fail(`outside: ${what} at ${[x, y, x2, y2].map((n) => n.toFixed(2))}`);
    const texts = boxes.filter((_, k) => ink[k]?.draw === 'text').sort((a, b) => a.y - b.y);
    texts.forEach((a, k) => {
      for (const b of texts.slice(k + 1)) {
        if (b.y >= a.y2 - near) break;
        if (b.x < a.x2 - near && a.x < b.x2 - near) expect.fail(`“${a.what}” lies on “${b.what}”`);
      }
    });
  }
}

/** The words of a page, one text after the other. */
export const textOf = ({ ink }: Page): string =>
  ink.flatMap((one) => (one.draw === 'text' ? [one.text.replaceAll('\u00a0', ' ')] : [])).join('\n');
