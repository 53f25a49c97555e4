import type { jsPDF } from 'jspdf';
import type { Ink, Page, WidthOf } from './ink';
import { type Drawn, pictureOf } from './text-picture';

/** How a long print goes on, and how it is told to stop. */
type Run = {
  readonly title: string;
  /** After each page: how many are done. */
  readonly onPage?: (done: number) => void;
  readonly stop?: AbortSignal;
};

/** Writes pages as a PDF. The library comes when the first is asked for, out of what the phone keeps. */
type Writer = {
  readonly widthOf: WidthOf;
  /** @param pages each is made when it is its turn; @returns nothing where it was stopped */
  readonly write: (pages: Iterable<Page>, run: Run) => Promise<Blob | undefined>;
};

const font = 'helvetica';
/** Height of the capitals of Helvetica, 718 of 1,000 of its size (Adobe's metrics of the font), and points in a mm. */
const sizeOf = (high: number): number => ((high / 0.718) * 72) / 25.4;

/** What the fonts every reader of PDF has can write (WinAnsi); anything else is drawn by the phone's own fonts. */
const plain = /^[\x20-\x7e\xa0-\xff‘’“”–—•…€™]*$/;

const style = (bold: true | undefined): 'bold' | 'normal' => (bold ? 'bold' : 'normal');

export async function openWriter(): Promise<Writer> {
  const { jsPDF: Pdf } = await import('jspdf');
  const measure = new Pdf({ unit: 'mm' });
  const widthOf: WidthOf = (text, high, bold) =>
    plain.test(text)
      ? measure.setFont(font, style(bold)).setFontSize(sizeOf(high)).getTextWidth(text)
      : pictureOf(text, high, bold).wide;
  const write: Writer['write'] = async (pages, run) => {
    const doc = new Pdf({ unit: 'mm', compress: true, floatPrecision: 6, format: [1, 1] });
    doc.setProperties({ title: run.title });
    let done = 0;
    for (const page of pages) {
      if (run.stop?.aborted) return undefined;
      doc.addPage([page.wide, page.high], page.wide > page.high ? 'landscape' : 'portrait');
      for (const ink of page.ink) put(doc, ink);
      done += 1;
      run.onPage?.(done);
      await new Promise((next) => setTimeout(next)); // the screen is drawn between two pages
    }
    if (run.stop?.aborted) return undefined;
    doc.deletePage(1); // the one it began with
    return new Blob([doc.output('arraybuffer')], { type: 'application/pdf' });
  };
  return { widthOf, write };
}

function put(doc: jsPDF, ink: Ink): void {
  if (ink.draw === 'line') {
    doc.setLineWidth(ink.wide);
    doc.setLineDashPattern(ink.dashed ? [1.5, 1.5] : [], 0);
    doc.line(...ink.from, ...ink.to);
    return;
  }
  if (ink.draw === 'box') {
    const { grey, line, wide, high } = ink;
    if (grey !== undefined) {
      const level = Math.round(grey * 255);
      doc.setFillColor(level, level, level).rect(...ink.at, wide, high, 'F');
    }
    if (line !== undefined) {
      doc.setLineWidth(line);
      doc.setLineDashPattern([], 0);
      doc.rect(...ink.at, wide, high, 'S');
    }
    return;
  }
  putText(doc, ink);
}

type Text = Extract<Ink, { readonly draw: 'text' }>;

const aligned = { middle: 'center', right: 'right' } as const;

function putText(doc: jsPDF, { at, text, high, bold, align, turned }: Text): void {
  if (plain.test(text)) {
    doc.setFont(font, style(bold)).setFontSize(sizeOf(high));
    doc.text(text, ...at, { align: align ? aligned[align] : 'left', ...(turned ? { angle: 90 } : {}) });
    return;
  }
  const picture = pictureOf(text, high, bold);
  const before = align ? { middle: picture.wide / 2, right: picture.wide }[align] : 0;
  putPicture(doc, picture, turned ? [at[0], at[1] + before] : [at[0] - before, at[1]], turned);
}

/** A picture with its base line at a spot. */
function putPicture(doc: jsPDF, picture: Drawn, [x, y]: readonly [number, number], turned?: true): void {
  const { pixels, wide, high, below } = picture;
  // the library turns round the lower left corner
  const [left, top] = turned ? [x + below, y - high] : [x, y + below - high];
  doc.addImage(pixels, 'RGBA', left, top, wide, high, undefined, 'FAST', turned ? 90 : 0);
}
