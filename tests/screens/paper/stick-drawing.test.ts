import { describe, expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { planOf } from '../../../src/plan/plan';
import { paperOf, stickOn } from '../../../src/plan/stick-print';
import { sticksOf } from '../../../src/plan/sticks-of';
import { stickPages, stripNeeds } from '../../../src/screens/paper/stick-drawing';
import type { WidthOf } from '../../../src/ui/paper/ink';
import { jobId, sampleLog } from '../../plan/laid-sample';

const plan = planOf(jobOf(jobId, fold(sampleLog).values), {});
const { job } = plan;

/** About as wide as figures in bold come out on paper; names are a little narrower. */
const widthOf: WidthOf = (text, high) => text.length * high * 0.65;

/** A letter with 1/2 in white: the band begins at 12.7 mm and is 72 mm wide, its figures begin 20 mm into it. */
const [figures, end] = [12.7 + 20, 12.7 + 72];

const pages = sticksOf(plan).flatMap((stick) => {
  const laid = stickOn(stick, paperOf(job), stripNeeds);
  if (!laid.ok) throw new Error(laid.error.code);
  const print = { ...laid.value, stick, tape: job.tape, job: job.name, day: '', below: false, widthOf };
  return stickPages(print);
});

/** The texts of each page that begin inside the band. */
const inBand = pages.map(({ ink }) =>
  ink.flatMap((one) =>
    one.draw === 'text' && one.at[0] >= figures && one.at[0] < end
      ? [{ text: one.text, x: one.at[0], y: one.at[1], high: one.high, wide: widthOf(one.text, one.high) }]
      : [],
  ),
);

describe('on a story stick', () => {
  test('no name reaches over the band, where a bar the print is checked by stands', () => {
    const names = inBand.flat().filter(({ high }) => high < 4);
    expect(names.length).toBeGreaterThan(30);
    for (const { text, x, wide } of names) expect(x + wide, text).toBeLessThanOrEqual(end);
  });

  test('a name too long to stand beside its figure stands under it, and on nothing else', () => {
    const [page = []] = inBand.filter((one) =>
      ['4 1/8', 'W1, the bottom’s dado'].every((said) => one.some(({ text }) => text.startsWith(said))),
    );
    const figure = page.find(({ text }) => text.startsWith('4 1/8'));
    const under = page.find(({ text }) => text.includes('dado'));
    expect(under?.x).toBe(figure?.x);
    expect(under?.y).toBeGreaterThan(figure?.y ?? Number.POSITIVE_INFINITY);
    for (const texts of inBand)
      for (const a of texts)
        for (const b of texts) {
          const apart =
            a.x + a.wide <= b.x || b.x + b.wide <= a.x || a.y <= b.y - b.high || b.y <= a.y - a.high;
          expect(a === b || apart, `${a.text} on ${b.text}`).toBe(true);
        }
  });

  test('an arrow to the reference end stands on every sheet, and no text on it', () => {
    // the sample's case is over 60 in high: seven sheets and more of it alone
    expect(pages.length).toBeGreaterThan(10);
    for (const { ink } of pages) {
      // 11.5 mm beside the band: its shaft, and two lines from its tip
      const arrow = ink.flatMap((one) => (one.draw === 'line' && one.from[0] === end + 11.5 ? [one] : []));
      expect(arrow.length).toBe(3);
      const [tip = 0, foot = 0] = [arrow[0]?.from[1], arrow[0]?.to[1]];
      expect(arrow.every(({ from, to }) => from[1] === tip && to[1] > tip)).toBe(true);
      for (const one of ink) {
        if (one.draw !== 'text') continue;
        const [x, y] = one.at;
        const across = x < end + 13.1 && x + widthOf(one.text, one.high) > end + 9.9;
        if (across && y > tip && y - one.high < foot) expect.fail(`${one.text} on the arrow`);
      }
    }
  });
});
