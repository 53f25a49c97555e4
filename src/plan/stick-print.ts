import type { Job } from '../job/job';
import { onAll, printOf } from '../job/prints';
import { add, isPositive, type Length, subtract, times, zero } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { unitsOf } from '../length/tape';
import { between, overLongest, type Paper, sheetOf, usualOn } from '../trade/paper/sheet';
import { type Tile, type TilesProblem, tilesOf } from '../trade/paper/tiles';
import type { Stick } from './sticks-of';

/** What a job is printed on: sheets, or a strip off a roll. Inches. */
export type PaperAt = {
  readonly on: Paper | 'roll';
  readonly wide: Length | undefined;
  readonly margin: Length;
  readonly overlap: Length;
};

/** What was chosen, else what is usual where the job's unit is. */
export function paperOf(job: Job): PaperAt {
  const units = unitsOf(job.tape);
  const said = printOf(job, onAll);
  const on = said.paper ?? (units === 'mm' ? 'a4' : 'letter');
  const usual = usualOn[units];
  return {
    on,
    wide: on === 'roll' ? said.wide : sheetOf[on].across,
    margin: said.margin ?? usual.margin,
    overlap: said.overlap ?? usual.overlap,
  };
}

/** A stick laid on its paper. Inches. */
type StickOnPaper = {
  readonly page: { readonly wide: Length; readonly high: Length; readonly margin: Length };
  readonly tiles: readonly Tile[];
  readonly laps: readonly Tile[];
};

export type PaperProblem =
  | TilesProblem
  /** How wide the roll is was not said; or too narrow for the band, by so much. */
  | { readonly code: 'no-roll' }
  | { readonly code: 'roll-narrow'; readonly by: Length; readonly least: Length }
  /** Longer than a page of a PDF may be. */
  | { readonly code: 'too-long'; readonly by: Length };

/** How long a stick is on paper, from where its wood begins. Inches. */
export const longOf = ({ from, to }: Pick<Stick, 'from' | 'to'>): Length => subtract(to, from);

/**
 * A stick on the sheets or the strip it is printed on.
 *
 * @param band what the stick and its figures take across, inches; @param foot what a strip has below it for its words
 */
export function stickOn(
  stick: Stick,
  paper: PaperAt,
  { band, foot }: { readonly band: Length; readonly foot: Length },
): Result<StickOnPaper, PaperProblem> {
  const { on, wide, margin, overlap } = paper;
  const long = longOf(stick);
  if (on !== 'roll') {
    const side = sheetOf[on].long;
    const laid = tilesOf({ stick: long, side, margin, overlap });
    const page = { wide: sheetOf[on].across, high: side, margin };
    return laid.ok ? ok({ page, tiles: laid.value.tiles, laps: laid.value.laps }) : laid;
  }
  if (!wide) return err({ code: 'no-roll' });
  const short = subtract(band, between(wide, margin));
  if (isPositive(short)) return err({ code: 'roll-narrow', by: short, least: add(wide, short) });
  const high = add(add(long, foot), times(margin, 2n));
  const by = overLongest(high);
  if (by) return err({ code: 'too-long', by });
  return ok({ page: { wide, high, margin }, tiles: [{ from: zero, to: long }], laps: [] });
}
