import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { remainder, writeLength, writeMark } from '../../length/write';
import type { Checklist } from '../../plan/checklist';
import type { SetupCode } from '../../plan/setup-codes';
import type { Operation } from '../../trade/setups/operation';
import { blockWords } from '../shared/block-words';
import { buildWords, whatWords } from '../shared/cut-words';
import { workWord } from '../shared/part-words';
import { setupTitle } from '../shared/setup-title';

export const atBench = 'At the bench and on site';

/** What stands over a page: the build, or the bench. */
export const buildTitle = ({ setup }: Operation, bench: boolean, tape: Tape): string =>
  bench ? atBench : buildWords(setup, tape);

const numbers = (codes: readonly SetupCode[]): string => {
  const [first, last] = [codes[0]?.no, codes[codes.length - 1]?.no];
  if (first === last) return `Setup ${first}`;
  const inRow = codes.every(({ no }, k) => no === (first ?? 0) + k);
  return inRow ? `Setups ${first} to ${last}` : `Setups ${codes.map(({ no }) => no).join(', ')}`;
};

type HeadAt = {
  readonly job: string;
  readonly day: string;
  readonly codes: readonly SetupCode[];
  readonly no: number;
  /** The page of all. */
  readonly page: number;
};

export const underTitle = ({ job, day, codes, no, page }: HeadAt): string =>
  [job, day, numbers(codes), ...(no > 1 ? ['continued'] : []), `page ${page}`].filter(Boolean).join(' · ');

export const how =
  'Tick a box once it is done. “Tick a page in” on the phone takes it back by number and letter.';

/** What rounding left, as it stands beside the figure. @example 'strong 0.008' */
export function rest({ rest }: Rounded, tape: Tape): string {
  const left = remainder(rest, tape);
  return left ? [left.word, left.by].filter(Boolean).join(' ') : '';
}

/** A setup on the next page: its figure stands again. */
export function goesOn({ no, check }: SetupCode, op: Operation, tape: Tape): string {
  const { figure } = op.setup;
  return `${no} ${check}  ${setupTitle(op)}${figure ? ` ${writeMark(figure, tape)}` : ''}, continued`;
}

export const piece = (op: Operation, tape: Tape): string => `${workWord(op.name)}: ${whatWords(op, tape)}`;
export const notYet = (list: Checklist, op: Operation): string => `Not yet: ${blockWords(list, op)}`;
export const figure = (label: string, mark: Rounded, tape: Tape): string =>
  `${label} ${writeMark(mark, tape)}`;
export const ofPieces = (names: readonly string[], says: string): string => `${names.join(', ')}: ${says}`;
export const eachHole = 'each hole by its number, from the bottom end:';
/** Every hole with its number, none broken over a line. */
export const holes = (marks: readonly string[]): string =>
  marks.map((mark) => mark.replace(': ', ':\u00a0')).join('   ');
export const found = (label: string, says: string): string => `${label}: ${says}`;
export const big = ({ value }: Rounded, tape: Tape): string => writeLength(value, tape);
/** The letter of the box for what is set first. */
export const boxOfSet = 'S';
