import { forDrawing, type Length } from '../../length/length';

/** Right and down from the upper left corner of a page, millimetres: a page is a picture, its lengths may be floats. */
export type Spot = readonly [x: number, y: number];

/** What is drawn on a page, black. Millimetres. */
export type Ink =
  | {
      readonly draw: 'line';
      readonly from: Spot;
      readonly to: Spot;
      readonly wide: number;
      readonly dashed?: true;
    }
  /** Its upper left corner; `grey` fills it, 0 black, 1 white; `line` goes round it. */
  | {
      readonly draw: 'box';
      readonly at: Spot;
      readonly wide: number;
      readonly high: number;
      readonly line?: number;
      readonly grey?: number;
    }
  /** `high`: how high its capitals are. Stands on `at`; `turned` runs upward. */
  | {
      readonly draw: 'text';
      readonly at: Spot;
      readonly text: string;
      readonly high: number;
      readonly bold?: true;
      readonly align?: 'middle' | 'right';
      readonly turned?: true;
    };

/** A page: its size, millimetres, and what is on it. */
export type Page = { readonly wide: number; readonly high: number; readonly ink: readonly Ink[] };

/** How wide a text comes out, millimetres. */
export type WidthOf = (text: string, high: number, bold?: true) => number;

/** A length as millimetres on a page. */
export const onPage = (x: Length): number => forDrawing(x) * 25.4;

export const line = (from: Spot, to: Spot, wide = 0.25): Ink => ({ draw: 'line', from, to, wide });

type Look = Omit<Extract<Ink, { readonly draw: 'text' }>, 'draw' | 'at' | 'text'>;

export const textAt = (at: Spot, text: string, look: Look): Ink => ({ draw: 'text', at, text, ...look });

/**
 * A text in lines no wider than `wide`; a word that is wider stands alone and is broken.
 *
 * @param widthOf of a text in the size and weight wanted
 */
export function wrapped(text: string, wide: number, widthOf: (text: string) => number): readonly string[] {
  const lines: string[] = [];
  let now = '';
  for (const word of text.split(' ').flatMap((one) => broken(one, wide, widthOf))) {
    const longer = now ? `${now} ${word}` : word;
    if (now && widthOf(longer) > wide) {
      lines.push(now);
      now = word;
    } else now = longer;
  }
  return [...lines, now];
}

/** A word in pieces that fit: at least one sign each. */
function broken(word: string, wide: number, widthOf: (text: string) => number): readonly string[] {
  if (word.length < 2 || widthOf(word) <= wide) return [word];
  const signs = [...word];
  let take = signs.length - 1;
  while (take > 1 && widthOf(signs.slice(0, take).join('')) > wide) take -= 1;
  return [signs.slice(0, take).join(''), ...broken(signs.slice(take).join(''), wide, widthOf)];
}
