import type { Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { SetupCode } from '../../plan/setup-codes';
import type { Operation } from '../../trade/setups/operation';
import { counted } from '../shared/counted';
import { buildWords, whatWords } from '../shared/cut-words';
import { blocked } from '../shared/held-words';
import { workWord } from '../shared/part-words';
import { setupTitle } from '../shared/setup-title';

export const title = 'Tick a page in';
export const back = 'Back';
export const empty = 'Nothing to tick in: there are no cuts yet.';
/** What the page in hand is of. */
export const which = 'What is on the page';
export const setups = 'Setups';
export const sheets = 'Sheets';
export const whichSetup = 'Setup on the page';
export const noSetup = (no: number, last: number): string =>
  `There is no setup ${no}: they go from 1 to ${last}.`;
export const setupOf = 'Setup';
export const pageOf = 'Setup on the page:';

/** What has to stand on the page. */
export const compare = (check: string, no: number): string =>
  `Under the ${no} on the paper stands ${check}. If it says otherwise, something changed after it was printed: print it again and tick none of it here.`;

/** What is set to what, as on the page. */
export function heading(op: Operation, tape: Tape): string {
  const { figure } = op.setup;
  return `${setupTitle(op)}${figure ? ` ${writeMark(figure, tape)}` : ''}`;
}
export const build = (op: Operation, tape: Tape): string => buildWords(op.setup, tape);

export const set = 'It is set';
export const box = (letter: string, op: Operation, tape: Tape): string =>
  `${letter}, ${workWord(op.name)}, ${whatWords(op, tape)}`;
export const piece = (op: Operation): string => workWord(op.name);
export const what = (op: Operation, tape: Tape): string => whatWords(op, tape);

export const all = (n: number): string =>
  n === 0 ? 'All of it: it is set' : `All of it: ${counted(n, 'box', 'boxes')}`;
export const allAct = ({ no }: SetupCode, n: number): string =>
  `Setup ${no} off the paper: ${counted(n, 'box', 'boxes')}`;
export const held = (n: number): string =>
  `${counted(n, 'box stays', 'boxes stay')} open: each says below what it waits for.`;
export const next = (no: number): string => `Next: setup ${no}`;
export const allDone = 'Everything is ticked';

export const whichSheet = 'Sheet on the page';
export const sheetOf = 'Sheet on the page:';
export const signs = (check: string): string => `marked ${check} on paper`;
export const compareSheet = (check: string): string =>
  `At the right of its name on the paper stands ${check}. If it says otherwise, it was laid out again after it was printed: print it again and tick none of it here.`;
export const cutFirst = (code: string): string => `${blocked} cut ${code} comes first`;
export const sheetAct = (name: string, n: number): string =>
  `${name} off the paper: ${counted(n, 'box', 'boxes')}`;
export const nextSheet = (name: string): string => `Next: ${name}`;
export const toSheet = 'The sheet itself';
export const toSheetSays = 'A cut that came out elsewhere, what is left over';
