import { type Ink, type Page, type Spot, textAt, type WidthOf, wrapped } from './ink';

/** A piece of a page that stays whole: so high, drawn below a spot. Millimetres. */
export type Block = {
  readonly high: number;
  /** It is never the last of a page: what follows stands under it. */
  readonly head?: true;
  /** What stands over it where it begins a page: what it goes on with. */
  readonly again?: Block;
  readonly ink: (at: Spot) => readonly Ink[];
};

/** A sheet and its white all round, millimetres. */
export type Leaf = { readonly wide: number; readonly high: number; readonly margin: number };

/** What stands at the head of each page, by its number from 1. */
type HeadOf = (no: number) => Block;

/** How wide and how high a page is between its margins. */
export const roomOn = ({ wide, high, margin }: Leaf) => ({
  wide: wide - 2 * margin,
  high: high - 2 * margin,
});

/**
 * Blocks one under the other, page after page, each page as it is asked for.
 *
 * @param blocks none higher than what a page has below its head
 */
export function* flow(leaf: Leaf, headOf: HeadOf, blocks: Iterable<Block>): Generator<Page> {
  const { margin, wide, high } = leaf;
  const page = (ink: readonly Ink[]): Page => ({ wide, high, ink });
  let no = 0;
  let ink: readonly Ink[] = [];
  let y = Number.POSITIVE_INFINITY;
  let waiting: readonly Block[] = [];
  const begin = () => {
    no += 1;
    const head = headOf(no);
    ink = head.ink([margin, margin]);
    y = margin + head.high;
  };
  for (const block of blocks) {
    waiting = [...waiting, block];
    if (block.head) continue;
    if (y + sumOf(waiting) > high - margin) {
      if (no > 0) yield page(ink);
      begin();
      if (waiting[0]?.again) waiting = [waiting[0].again, ...waiting];
    }
    for (const one of waiting) {
      ink = [...ink, ...one.ink([margin, y])];
      y += one.high;
    }
    waiting = [];
  }
  if (no > 0) yield page(ink);
}

const sumOf = (blocks: readonly Block[]): number => blocks.reduce((sum, { high }) => sum + high, 0);

type Said = {
  readonly text: string;
  /** How high its capitals are. */
  readonly high: number;
  readonly bold?: true;
};

type TextAt = {
  readonly wide: number;
  readonly widthOf: WidthOf;
  readonly from?: number;
  readonly after?: number;
};

/** From one line of a text to the next, as often as its capitals are high. */
const pitch = 1.7;

/** A text in lines no wider than the room, beginning `from` to the right; so much white `after` it. */
export const textBlock = (said: Said, at: TextAt): Block => {
  const rows = textLines(said, at);
  return { ...stacked(rows), high: sumOf(rows) + (at.after ?? 0) };
};

/** The same, a block a line: it may go on over the page. */
export const textLines = (
  { text, high, bold }: Said,
  { wide, widthOf, from = 0 }: TextAt,
): readonly Block[] =>
  wrapped(whole(text), wide - from, (one) => widthOf(one, high, bold)).map((row) => ({
    high: high * pitch,
    ink: ([x, y]) => [textAt([x + from, y + high * 1.25], row, { high, ...(bold ? { bold } : {}) })],
  }));

/** A length is not broken over a line: the space in it is one that holds. */
const whole = (text: string): string => text.replace(/(\d) (?=\d+\/\d|mm\b)/g, '$1\u00a0');

/** Blocks beside each other, each so far to the right: as high as the highest. */
export const beside = (blocks: readonly (readonly [from: number, block: Block])[]): Block => ({
  high: Math.max(0, ...blocks.map(([, { high }]) => high)),
  ink: ([x, y]) => blocks.flatMap(([from, block]) => block.ink([x + from, y])),
});

/** Blocks under each other that stay together. */
export const stacked = (blocks: readonly Block[]): Block => ({
  high: sumOf(blocks),
  ink: ([x, y]) => {
    let down = y;
    return blocks.flatMap((block) => {
      const drawn = block.ink([x, down]);
      down += block.high;
      return drawn;
    });
  },
});

/** White between two blocks. */
export const gap = (high: number): Block => ({ high, ink: () => [] });
