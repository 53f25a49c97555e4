import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';

// PDFs as another program has them: poppler's tools of Debian (poppler-utils).

const rasteriser = '/usr/bin/pdftoppm';
export const hasPoppler = existsSync(rasteriser);

/** Points to the inch: one is 0.02 mm. */
const dpi = 1200;
const mm = (points: number): number => (points * 25.4) / dpi;
const points = (millimetres: number): number => Math.round((millimetres * dpi) / 25.4);

type Band = {
  readonly page: number;
  /** From the upper left corner of the page, millimetres. */
  readonly x: number;
  readonly y?: number;
  readonly wide: number;
  readonly high: number;
};

/** A part of a page as rows of grey, 0 black. */
function greys(
  pdf: string,
  { page, x, y = 0, wide, high }: Band,
): { readonly across: number; readonly grey: Buffer } {
  const out = `${pdf}.${page}.${x}`;
  const box = ['-x', x, '-y', y, '-W', wide, '-H', high].map((n) =>
    typeof n === 'number' ? `${points(n)}` : n,
  );
  const on = ['-f', page, '-l', page].map(String);
  execFileSync(rasteriser, ['-gray', '-singlefile', '-r', `${dpi}`, ...on, ...box, pdf, out]);
  const file = readFileSync(`${out}.pgm`);
  rmSync(`${out}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('not a grey picture');
  return { across: Number(head[1]), grey: file.subarray(head[0].length) };
}

/** How black each row (or column) of a band is, 0 to 1. */
function blackness(pdf: string, band: Band, along: 'down' | 'right'): readonly number[] {
  const { across, grey } = greys(pdf, band);
  const rows = grey.length / across;
  const at = (n: number, k: number) => grey[along === 'down' ? n * across + k : k * across + n] ?? 255;
  const [count, each] = along === 'down' ? [rows, across] : [across, rows];
  return Array.from({ length: count }, (_, n) => {
    let black = 0;
    for (let k = 0; k < each; k += 1) black += 255 - at(n, k);
    return black / (255 * each);
  });
}

/**
 * Where lines cross a band, millimetres from its own beginning on the page: the middle of each.
 *
 * @param along which way the lines follow one another
 */
export function linesIn(pdf: string, band: Band, along: 'down' | 'right'): readonly number[] {
  const found: number[] = [];
  let weight = 0;
  let moment = 0;
  for (const [n, black] of [...blackness(pdf, band, along), 0].entries()) {
    if (black > 0.5) {
      weight += black;
      moment += black * (n + 0.5);
    } else if (weight > 0) {
      found.push(mm(moment / weight) + (along === 'down' ? (band.y ?? 0) : band.x));
      weight = 0;
      moment = 0;
    }
  }
  return found;
}

/** The words of a page, as they lie on it. */
export const wordsOf = (pdf: string, page: number): string =>
  execFileSync('/usr/bin/pdftotext', ['-layout', '-f', `${page}`, '-l', `${page}`, pdf, '-'], {
    encoding: 'utf8',
  });

type Size = { readonly pages: number; readonly wide: number; readonly high: number };

/** How many pages, and the size of the first, millimetres. */
export function sizeOf(pdf: string): Size {
  const said = execFileSync('/usr/bin/pdfinfo', [pdf], { encoding: 'utf8' });
  const [, pages] = /Pages:\s+(\d+)/.exec(said) ?? [];
  const [, wide, high] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(said) ?? [];
  const inMm = (pts: string | undefined) => (Number(pts) * 25.4) / 72;
  return { pages: Number(pages), wide: inMm(wide), high: inMm(high) };
}
