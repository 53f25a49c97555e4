import { type Length, subtract } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, markAt, type Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import type { Stands } from '../../trade/fronts/stands';
import { Mixed, Sign } from '../../ui/mixed';
import * as words from './edge-words';
import './bank.css';

/** Which end of the opening figures are read from. */
export type From = 'top' | 'bottom';

/**
 * An edge at the tape. It is rounded once, from the end the fronts are fitted from; from the other end it is the
 * opening less that mark, so that the two always meet.
 */
export function edgeMark(
  exact: Length,
  at: { readonly bank: Bank; readonly opening: Length; readonly tape: Tape; readonly from: From },
): Rounded {
  const { bank, opening, tape, from } = at;
  const own = words.endFrom[bank.order];
  const fromOwn = own === 'top' ? exact : subtract(opening, exact);
  const mark = markAt(fromOwn, tape);
  if (own === from) return mark;
  return fromOtherEnd(opening, mark, tape);
}

type BesideProps = {
  readonly stands: readonly Stands[];
  readonly gap: number;
  readonly at: Parameters<typeof edgeMark>[1];
};

/** The two edges at a gap: where the front over it ends, and where the next one starts. */
export function MarksBeside({ stands, gap, at }: BesideProps) {
  const over = stands[gap - 1]?.bottom;
  const under = stands[gap]?.top;
  const [first, second] = at.from === 'top' ? [over, under] : [under, over];
  const end = words.ends[gap === 0 ? 'top' : 'bottom'];
  return (
    <span class="marks2">
      {first ? <One mark={edgeMark(first, at)} tape={at.tape} /> : <span class="s muted">{end}</span>}
      {second ? <One mark={edgeMark(second, at)} tape={at.tape} /> : <span class="s muted">{end}</span>}
    </span>
  );
}

function One({ mark, tape }: { readonly mark: Rounded; readonly tape: Tape }) {
  return (
    <span class="mk">
      <Mixed value={mark.value} rest={mark.rest} tape={tape} />
      <Sign rest={mark.rest} tape={tape} />
    </span>
  );
}

/** The same edges as a list: where text is large it stands in place of the drawing. */
export const MarkList = ({ stands, at }: Omit<BesideProps, 'gap'>) => (
  <ul class="marklist largetext pad-x">
    {stands.flatMap((s, k) =>
      (['top', 'bottom'] as const).map((edge) => (
        <li key={`${k}${edge}`}>
          <span>{words.edgeOfFront(k + 1, edge)}</span>
          <One mark={edgeMark(s[edge], at)} tape={at.tape} />
        </li>
      )),
    )}
  </ul>
);
