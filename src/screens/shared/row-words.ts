import type { Length } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeLength, writeMark } from '../../length/write';
import type { Face } from '../../trade/grooves/layout';
import { type Bore, rowTape } from '../../trade/shelves/bore';
import { counted } from './counted';
import { exactly } from './exact-words';

type Row = { readonly bore: Bore; readonly face?: Face; readonly short?: Length };

/** Numbers in a row. @example numbersOf([3, 8]) // '3 and 8' */
export const numbersOf = (numbers: readonly number[]): string =>
  numbers.length < 2
    ? numbers.join('')
    : `${numbers.slice(0, -1).join(', ')} and ${numbers[numbers.length - 1]}`;

/** @example rowName({ row: 'rear' }) // 'rear row' */
export const rowName = ({ row }: Pick<Bore, 'row'>): string =>
  row === 'own' ? 'row added by hand' : `${row} row`;

/** The edge a row stands off. */
export const standsOff = ({ edge = 'front' }: Pick<Bore, 'edge'>): string => edge;

export const markedFrom = ({ end = 'bottom' }: Pick<Bore, 'end'>): string => end;

/** A row of holes: which, how many, from where to where, how far apart, and what is left out. */
export function rowWords({ bore, face, short }: Row, tape: Tape): string {
  const marks = rowTape(bore, tape);
  const [first, last] = [bore.holes[0], bore.holes[bore.holes.length - 1]];
  const at = (hole: typeof first) => (hole ? writeLength(markAt(hole.at, marks).value, marks) : '');
  const out = bore.leftOut.length > 0 ? `; without no. ${numbersOf(bore.leftOut)}` : '';
  const apart = bore.metric ? '32 mm' : exactly(bore.pitch);
  const count = counted(bore.holes.length, 'hole', 'holes');
  return `${rowName(bore)}${face ? `, face ${face}` : ''}: ${count}, ${at(first)} to ${at(last)} from the ${markedFrom(bore)} end, every ${apart}${out}${short ? `; the drill press is ${exactly(short)} short of it` : ''}`;
}

/** Every hole as it is marked, with what its mark leaves. */
export const holeMarks = (bore: Bore, tape: Tape): readonly string[] =>
  bore.holes.map(({ no, at }) => `${no}: ${writeMark(markAt(at, rowTape(bore, tape)), rowTape(bore, tape))}`);
