import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Stuff } from '../../trade/carcass/case';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import { whatWords } from './cut-words';
import { exactly as w } from './exact-words';
import { workWord } from './part-words';

/** How many of a part there are, and the stock it comes out of. */
export const madeOf = ({ copies }: Part, stuff: Pick<Stuff, 'name' | 'thickness'> | undefined): string =>
  `${copies > 1 ? `${copies} of them, ` : ''}${stuff ? `${stuff.name}, ${w(stuff.thickness)}` : 'by hand'}`;

export const long = ({ end }: Part): string => (end === 'bottom' ? 'Long, bottom to top' : 'Long');
export const wide = 'Wide';

type OperationAt = Pick<Part, 'copies'> & { readonly tape: Tape };

/** What an operation does, to which copy, and what it was cut to where that is no longer wanted. */
export function operation(op: Operation, at: OperationAt, was: Length | undefined): string {
  const which = at.copies > 1 ? `${workWord(op.name)}: ` : '';
  return `${which}${whatWords(op, at.tape)}${was ? `; cut at ${w(was)}, but should now be ${w(op.figure)}` : ''}`;
}
