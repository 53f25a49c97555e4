import type { Job } from '../job/job';
import { onLabels, printOf } from '../job/prints';
import { add, fromMillimetres, inches, type Length, over, subtract, times, zero } from '../length/length';
import type { Result } from '../length/result';
import { unitsOf } from '../length/tape';
import type { Units } from '../length/units';
import { labelsOn } from '../trade/paper/labels';
import { type Paper, sheetOf } from '../trade/paper/sheet';
import { listPaperOf } from './list-print';

/** What labels are printed on: a sheet with its white, their size, and what stands between two. Inches. */
export type LabelPaper = {
  readonly on: Paper;
  readonly margin: Length;
  readonly wide: Length;
  readonly high: Length;
  readonly gap: Length;
  readonly down: Length;
};

/** A label nobody has said the size of. Common practice, no source. */
const usual: Readonly<Record<Units, { readonly wide: Length; readonly high: Length }>> = {
  in: { wide: inches(7n, 2n), high: inches(5n, 2n) },
  mm: { wide: fromMillimetres(90n), high: fromMillimetres(60n) },
};

export function labelPaperOf(job: Job): LabelPaper {
  const said = printOf(job, onLabels);
  const list = listPaperOf(job);
  const { wide, high } = usual[unitsOf(job.tape)];
  return {
    on: said.paper && said.paper !== 'roll' ? said.paper : list.on,
    margin: said.margin ?? list.margin,
    wide: said.wide ?? wide,
    high: said.high ?? high,
    gap: said.gap ?? zero,
    down: said.down ?? said.gap ?? zero,
  };
}

/** Labels laid on sheets: the sheet as it lies, and the place of each on it, from its upper left. Inches. */
type LabelSheets = {
  readonly wide: Length;
  readonly high: Length;
  readonly pages: number;
  readonly spots: readonly { readonly across: Length; readonly down: Length }[];
};

/** So many labels on their sheets, the grid in the middle of each; or by how much one is too large. */
export function labelSheets(
  paper: LabelPaper,
  count: number,
): Result<LabelSheets, { readonly code: 'no-label-fits'; readonly across: Length; readonly long: Length }> {
  const { on, margin, wide, high, gap, down } = paper;
  const sheet = sheetOf[on];
  const grid = labelsOn({ sheet, margin, label: { across: wide, long: high }, gap, down, count });
  if (!grid.ok) return grid;
  const { turned, columns, rows, pages } = grid.value;
  const [across, long] = turned ? [sheet.long, sheet.across] : [sheet.across, sheet.long];
  const at = (side: Length, n: number, each: Length, between: Length) => {
    const taken = add(times(each, BigInt(n)), times(between, BigInt(n - 1)));
    const begin = over(subtract(side, taken), 2n);
    return Array.from({ length: n }, (_, k) => add(begin, times(add(each, between), BigInt(k))));
  };
  const spots = at(long, rows, high, down).flatMap((y) =>
    at(across, columns, wide, gap).map((x) => ({ across: x, down: y })),
  );
  return { ok: true, value: { wide: across, high: long, pages, spots } };
}
