import type { ComponentChildren } from 'preact';
import { absolute, isNegative, type Length, type Ratio, ratio } from '../../length/length';
import { assertNever } from '../../length/result';
import { toWhole } from '../../length/round';
import type { PrintCheck } from '../../plan/print-check';
import type { PaperAt, PaperProblem } from '../../plan/stick-print';
import type { Stick } from '../../plan/sticks-of';
import { counted } from '../shared/counted';
import { closely, exactly } from '../shared/exact-words';
import { endName } from './stick-words';

export const title = 'Story stick at full size';
export const back = 'On paper';
export const notThere = 'There is no such stick any more: what it was of was removed, or does not work out.';
export const rollWide = 'Width of the roll';
export const fileName = (name: string): string => `Stick, ${name.replace(/[:/\\]/g, '')}`;
type Blanks = Readonly<Record<'on' | 'wide' | 'margin' | 'overlap', ComponentChildren>>;

export const printedOn = (on: PaperAt['on'], b: Blanks) =>
  on === 'roll' ? (
    <>
      Printed on {b.on}, {b.wide} wide, with {b.margin} white all round.
    </>
  ) : (
    <>
      Printed on {b.on}, with {b.margin} white all round. Sheets lap by {b.overlap}.
    </>
  );

export const takes = (sheets: number, stick: Stick): string =>
  `${sheets === 1 ? 'One page' : counted(sheets, 'sheet', 'sheets')}, from the ${endName(stick)}. Print at actual size: no fitting to the page.`;

/** Why it cannot be printed, by how much, and what would fit. */
export function cannot(problem: PaperProblem): string {
  switch (problem.code) {
    case 'margins-eat':
      return `The white at both ends takes ${exactly(problem.by)} more than the sheet is long. Leave less white.`;
    case 'overlap-eats':
      return `Each sheet holds ${exactly(problem.usable)}: the lap has to be less than that, and is ${exactly(problem.by)} over. Lap less.`;
    case 'no-roll':
      return 'Say how wide the roll is.';
    case 'roll-narrow':
      return `The roll is ${exactly(problem.by)} too narrow for the stick and its figures: ${exactly(problem.least)} or more fits.`;
    case 'too-long':
      return `The strip is ${exactly(problem.by)} longer than one page of a PDF may be. Print it on sheets.`;
    default:
      return assertNever(problem);
  }
}

export const checks = 'Is the print true?';
export const barAlong = 'Bar along the stick, as printed';
export const barAcross = 'Bar across, as printed';
export const wholeStick = 'Whole stick on your tape';

export const asRead = (b: Readonly<Record<'bar' | 'across' | 'whole', ComponentChildren>>) => (
  <>
    The bar along the stick reads {b.bar}, the bar across {b.across}. Laid together, the whole stick reads{' '}
    {b.whole} on the tape of the job.
  </>
);

export const wrongBar = (drawn: Length, read: Length): string =>
  `That is off by more than a tenth of ${exactly(drawn)}: ${exactly(absolute(read.sub(drawn) as Length))}. Is it the right bar, in the right unit?`;

type Said = { readonly says: string; readonly wrong: boolean };

/** Parts in a thousand, to the tenth. */
const inThousand = (off: Ratio): string => {
  const tenths = toWhole((off.abs() as Ratio).mul(ratio(10_000n)) as Ratio, 'halfExpand');
  return `${tenths / 10n}${tenths % 10n ? `.${tenths % 10n}` : ''}`;
};

const percent = (scale: Ratio): string => {
  const hundredths = toWhole(scale.mul(ratio(10_000n)) as Ratio, 'halfExpand');
  return `${hundredths / 100n}.${`${hundredths % 100n}`.padStart(2, '0')} %`;
};

/** What the readings of a print say, one line each. */
export function verdicts(check: PrintCheck): readonly Said[] {
  const { bars, whole, verdict, hidden } = check;
  const barSays = (bar: PrintCheck['bars']['along'], name: string): readonly Said[] => {
    if (!bar?.ok) return [];
    const { off, passes, adds, reprintAt } = bar.value;
    if (passes)
      return [{ says: `The bar ${name} is off by ${inThousand(off)} in 1,000: it passes.`, wrong: false }];
    const over = `${inThousand(off)} in 1,000 too ${isNegative(adds) ? 'short' : 'long'}`;
    const comes = `over the whole stick that is ${closely(absolute(adds))}`;
    return [
      {
        says: `Refused: the bar ${name} is ${over}; ${comes}. Switch all scaling off, then print at ${percent(reprintAt)}.`,
        wrong: true,
      },
    ];
  };
  return [
    ...barSays(bars.along, 'along the stick'),
    ...barSays(bars.across, 'across'),
    ...(whole && !whole.passes
      ? [
          {
            says: `Refused: the whole stick is ${closely(absolute(whole.off))} too ${isNegative(whole.off) ? 'short' : 'long'}, and ${closely(check.mayBeOff)} is the most. Print it again; use this one for names and order alone.`,
            wrong: true,
          },
        ]
      : []),
    ...(verdict === 'trusted'
      ? [{ says: 'This print may be used. Paper moves with damp: check it again on the day.', wrong: false }]
      : []),
    ...(verdict === 'open' && (bars.along || bars.across)
      ? [
          {
            says: `Now the whole stick: a bar read to one mark of the tape can hide ${closely(hidden)} over it.`,
            wrong: false,
          },
        ]
      : []),
  ];
}

export const never =
  'A print that fails is never glued on, nor put right by pencil. Never set a cutter or a stop from paper: set them from the figures.';
