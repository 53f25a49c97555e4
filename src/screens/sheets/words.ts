import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { Lies, RoughPiece } from '../../trade/sheets/pieces';
import type { Misfit } from '../../trade/sheets/standing';
import type { SheetStock } from '../../trade/sheets/stock';
import { counted, wordFor } from '../shared/counted';
import { workWord } from '../shared/part-words';
import { measureUnit } from '../shared/pounds';
import { listed, pieceCount, sizeWords } from '../shared/sheet-words';

export * from '../shared/sheet-words';

/** What a stock's pieces are called: one sheet, two sticks. */
export const unitOf = (kind: SheetStock['kind'], n: number): string =>
  kind === 'stick' ? counted(n, 'stick', 'sticks') : counted(n, 'sheet', 'sheets');

export const liesWords: Readonly<Record<Lies, string>> = {
  along: 'grain along it',
  across: 'grain across it',
  free: 'either way',
};

/** What is done with a tap: `Ripped, next`. */
const cutDone = (step: CutStep): string => (step.way === 'rip' ? 'Ripped' : 'Cut');

/** What the search says of its plan. */
export function proofWords(at: {
  readonly kind: SheetStock['kind'];
  readonly count: number;
  readonly least: number | undefined;
  readonly proved: boolean;
  /** How wide sticks are taken to be while nobody has said it: then nothing is proved of wider ones. */
  readonly asWide?: string | undefined;
}): string {
  const n = unitOf(at.kind, at.count);
  if (at.asWide !== undefined)
    return `${n}, taken as wide as the widest piece, ${at.asWide}. Say how wide yours are: a wider one may hold two side by side.`;
  if (at.proved) return `${n}. ${at.least === undefined ? 'Lowest cost' : `Fewest ${at.kind}s`} possible.`;
  if (at.least === undefined) return `${n}.`;
  return at.least < at.count ? `${n}; at least ${at.least} are needed.` : `${n}.`;
}

export const sheets = 'Sheets';
export const sheet = 'Sheet';
export const onPaper = 'Sheets with their cuts on paper';
export const toSheets = 'To the sheets';

export const buy = 'Buy';
export const whatToBuy = 'What to buy';
export const kerf = 'Kerf';
export const kerfFirst =
  'Every cut takes the saw’s kerf, and it is not measured yet. Cut into scrap with the blade you will use and measure the slot.';
export const theKerf = 'The kerf';
export const kerfTitle = 'Kerf of the saw that cuts the sheets';
export const nothingYet =
  'Nothing to cut yet. Give a case its sizes and say which sheets its parts come out of.';
export const withoutSheet = 'Without a sheet';
export const noSheetSaid = (homeless: readonly RoughPiece[]): string =>
  `No sheet chosen for ${pieceCount(homeless.length)}: ${listed([...new Set(homeless.map((p) => workWord(p.name)))])}.`;

/** What stands for the pieces of a pool that have no sheet yet. */
export const toLayOut = (n: number, kind: SheetStock['kind'], sizes: readonly string[]): string =>
  `${pieceCount(n)} to lay out on ${kind === 'stick' ? 'sticks' : 'sheets'} ${listed(sizes)}.`;
export const allCut = 'All cut.';
export const again = 'Again';
export const layOut = 'Lay out';
export const layOutAgain = 'Lay out again';
export const layOutRest = 'Lay out the rest';

export const outdated =
  'The plan was made for other sizes: a sheet, the kerf or a piece has changed since. Lay out again.';
const names = (of: readonly RoughPiece[]): string => listed(of.map((p) => workWord(p.name)));
export const notLaid = (missing: readonly RoughPiece[]): string => `On no sheet yet: ${names(missing)}.`;
export const laidTwice = (twice: readonly RoughPiece[]): string =>
  `Laid out twice: ${names(twice)}. Two plans met; lay out again.`;
export const unwanted = (n: number): string =>
  `${pieceCount(n)} on the plan ${wordFor(n, 'is', 'are')} no longer needed.`;

/** A piece laid at another size than it is wanted. @param out it is cut out of its sheet already */
export function misfit({ piece, laid, short }: Misfit, out: boolean, tape: Tape): string {
  const wants = `now needs ${sizeWords(piece, tape)}`;
  const then = !out
    ? `${wants}: lay out the rest.`
    : short
      ? `less than its finished ${sizeWords(piece.finished, tape)}: spoil it and cut another.`
      : `${wants}.`;
  return `${workWord(piece.name)} is laid out at ${sizeWords(laid, tape)}, ${then}`;
}

/** How far a sheet is cut. */
export function cutsDone(done: number, of: number): string {
  if (done === 0) return counted(of, 'cut', 'cuts');
  return done === of ? 'all cut' : `${done} of ${of}`;
}

export const noSearch = 'The search could not start on this phone.';
export const layingOut = (n: number): string => `Laying out ${pieceCount(n)}.`;

/** How a search with a plan in hand goes on, or what it leaves open. */
export function searchState(running: boolean, proved: boolean): string {
  if (running) return proved ? ' Looking for fewer settings and a larger offcut.' : ' Still looking.';
  return proved ? '' : ' There may be a better one.';
}

export const changedSince = ' Something has been cut or changed since: leave this and lay out again.';
export const stop = 'Stop';
export const lookFurther = 'Look further';
export const leaveIt = 'Leave it';
export const cutByPlan = 'Cut by this plan';
export const leavePlan = 'Leave this plan';
export const planTaken = (pool: string, units: string): string => `${pool}: plan of ${units}`;

/** A sheet in hand. */
export const sheetGone = 'This sheet is no longer in the plan: it was laid out again.';
export const drawn = (title: string, cuts: number): string => `${title}, ${counted(cuts, 'cut', 'cuts')}`;
export const missing = (lost: readonly RoughPiece[]): string =>
  `On no sheet any more: ${names(lost)}. Lay out the rest on Sheets.`;
export const cutsOfSheet = 'Cuts of this sheet';
export const isCut = 'cut';
export const cutNo = (no: number): string => `Cut ${no}`;
export const nothingToCut = 'Nothing to cut: the piece is the whole sheet.';
export const back = 'Back';
export const wrongCut = 'Cut wrong';
export const firstCut = (no: number): string => `First cut ${no}`;
export const toNextCut = 'To the next cut';
export const notAfterAll = 'Not cut after all';
export const cutAndNext = (step: CutStep): string => `${cutDone(step)}, next`;
export const cameOutTitle = ({ keep, figure }: CutStep, tape: Tape): string =>
  `The kept piece ends at, ${keep === 'near' ? 'instead of' : 'the trim off, instead of'} ${writeLength(figure.value, tape)}`;

/** A cut that came out elsewhere. */
export const noCut = 'A cut at 0 is no cut. Enter where the kept piece ends.';
export const beyondSheet = (by: Length, most: Length, tape: Tape): string =>
  `That is ${writeLength(by, tape)} beyond the sheet, which is ${writeLength(most, tape)} there.`;
export const nothingChanged = 'The search could not start on this phone: nothing was changed. Try again.';
export const cutWrongFor = (came: Length, wanted: Length, tape: Tape): string =>
  `Cut wrong: ${writeLength(came, tape)} for ${writeLength(wanted, tape)}`;
export const nearEnough = 'Near enough: every piece still has a final cut’s worth over.';
export const allStillFit =
  'Every piece still goes on what is left of this sheet: the cuts after this one are new.';

export const leftOver = 'Left over';
export const inPlan = 'in the plan';
export const keepOffcut = 'Keep as offcut';
export const offcutKept = (size: string): string => `Offcut kept: ${size}`;

export const piecesTitle = 'Pieces';
export const nothingOut = 'Nothing comes out of this stock.';
export const whatGoesIn = 'What goes in';
export const howCut = 'How it is cut';

/** How a pool is cut; each name in braces is a blank. */
export const stickSlip = 'Cut each piece {over} over length. ';
export const sheetSlip = (): string =>
  `Cut each piece {over} oversize each way, with {guide}; one person carries {carry} ${measureUnit('weight')}. `;
export const kerfIs = 'The kerf is {kerf}.';
/** Which saws, where the shop has some of its own. */
export const sawSlip = {
  guideSaw: 'Along the guide cuts {guideSaw}. ',
  fenceSaw: 'At the fence cuts {fenceSaw}. ',
};
export const usualSaw = { guideSaw: 'the shop’s circular saw', fenceSaw: 'the shop’s table saw' };
export const sawTitle = { guideSaw: 'The saw along the guide', fenceSaw: 'The saw at the fence' };
export const sawHint = 'by its own kerf and figures';
export const sawGone = (name: string | undefined): string =>
  `${name ?? 'The saw the sheets were put on'} is not among the machines of this phone: they are cut on the usual one until you add it or say another.`;
export const sawsUnmeasured = (names: readonly string[]): string =>
  `Every cut takes the saw’s kerf, and that of ${listed(names)} is not measured yet. Cut into scrap, measure the slot, and enter it in Shop figures.`;
export const toShop = 'Shop figures';
export const kerfUnknown = 'The kerf is not measured yet: see Shop figures.';

export const overTitle = (stick: boolean): string =>
  stick ? 'Over length, each piece' : 'Oversize each way, for the final cuts';
export const carryTitle = 'What one person carries';
export const guideTitle = 'What the sheets are cut with';
export const guides = [
  { value: 'both', label: 'a guide and a table saw', hint: 'what one person lifts goes to the fence' },
  { value: 'guide', label: 'a circular saw along a guide' },
];

export const rough = (n: number): string => `${n === 1 ? 'one' : `${n} of them`}, rough`;

/** Which sheet a piece must come out of. */
export function shareWords(
  { together }: { readonly together?: string | undefined },
  share: string | undefined,
): string {
  if (share !== undefined && share !== 'anywhere') return `on one sheet with all of ${share}`;
  return together === undefined ? 'on any sheet' : 'on one sheet with its mates';
}

export const grainTitle = (part: string): string => `Grain of ${part}`;
export const shareTitle = (part: string): string => `What ${part} shares a sheet with`;
export const shares = [
  { value: '', label: 'its mates', hint: 'left and right, the fronts of a column' },
  { value: 'anywhere', label: 'nothing: any sheet' },
];
export const shareLetter = (letter: string) => ({
  value: letter,
  label: `all of ${letter}`,
  hint: 'every part given this letter',
});
