import { add, howMany, isPositive, type Length, less, subtract, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { toWhole } from '../../length/round';
import { between, type Sheet } from './sheet';

/** Labels of one size on sheets. Inches, > 0; gaps and margin >= 0. */
type LabelsAsked = {
  readonly sheet: Sheet;
  readonly margin: Length;
  readonly label: Sheet;
  /** Between two labels side by side, and one over the other: as much where it is not said. */
  readonly gap: Length;
  readonly down?: Length | undefined;
  /** How many are wanted: whole, >= 0. */
  readonly count: number;
};

type LabelGrid = {
  /** Whether the sheet lies on its side. */
  readonly turned: boolean;
  readonly columns: number;
  readonly rows: number;
  readonly pages: number;
};

/** Not one label fits: too large by so much, 0 where that side would go. Inches. */
type LabelsProblem = {
  readonly code: 'no-label-fits';
  readonly across: Length;
  readonly long: Length;
};

const past = (side: Length, room: Length): Length => (less(room, side) ? subtract(side, room) : zero);

/** How many go side by side: floor((usable + gap) / (label + gap)). */
const howManyFit = (usable: Length, label: Length, gap: Length): number =>
  isPositive(usable) ? Number(toWhole(howMany(add(usable, gap), add(label, gap)), 'floor')) : 0;

/**
 * How labels lie on a sheet, upright or on its side, whichever takes more; upright where both take as many.
 *
 * @example labelsOn({ sheet: sheetOf.a4, margin, label, gap, count: 40 }) // Example 4 of paper
 */
export function labelsOn({
  sheet,
  margin,
  label,
  gap,
  down = gap,
  count,
}: LabelsAsked): Result<LabelGrid, LabelsProblem> {
  const across = between(sheet.across, margin);
  const long = between(sheet.long, margin);
  const grid = (wide: Length, high: Length) => ({
    columns: howManyFit(wide, label.across, gap),
    rows: howManyFit(high, label.long, down),
  });
  const upright = grid(across, long);
  const aside = grid(long, across);
  const turned = aside.columns * aside.rows > upright.columns * upright.rows;
  const { columns, rows } = turned ? aside : upright;
  if (columns * rows === 0)
    return err({ code: 'no-label-fits', across: past(label.across, across), long: past(label.long, long) });
  return ok({ turned, columns, rows, pages: Math.ceil(count / (columns * rows)) });
}
