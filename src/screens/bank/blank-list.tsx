import { markAt, type Tape } from '../../length/tape';
import { type Blank, blankFor } from '../../trade/fronts/blank';
import { usualBank } from '../../trade/fronts/usual-bank';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { InlineMark, MarkAndRest } from '../shared/mark-and-rest';
import * as words from './blank-words';
import './bank.css';

type BlankProps = {
  readonly bench: Pick<Bench, 'shop'>;
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly tape: Tape;
};

/** All fronts of a column out of one blank: where each starts, and how far the figure slips at a joint. */
export function BlankList({ bench, fronts, column, tape }: BlankProps) {
  const { bank, reveals } = fronts;
  if (!bank.fromBlank) return null;
  const blank = blankFor(column.heights, {
    trim: bank.trim ?? usualBank(bank).trim,
    kerf: bench.shop.value.kerf ?? bench.shop.value.single,
    band: bank.band ?? usualBank(bank).band,
    between: reveals.between,
  });
  return (
    <section aria-label={words.label}>
      <h2 class="sec pad-x">{words.heading}</h2>
      {blank.ok ? (
        <LaidOut blank={blank.value} width={column.width} tape={tape} />
      ) : (
        <p class="pad-x wrongline">{words.blankErrorText(blank.error)}</p>
      )}
    </section>
  );
}

type LaidOutProps = {
  readonly blank: Blank;
  readonly width: WorkedColumn['width'];
  readonly tape: Tape;
};

const LaidOut = ({ blank, width, tape }: LaidOutProps) => (
  <>
    <p class="pad-x note">
      {words.size(
        <InlineMark mark={markAt(blank.length, tape, 'ceil')} tape={tape} />,
        <InlineMark mark={width.mark} tape={tape} />,
      )}
    </p>
    <ul class="marklist pad-x">
      {blank.cores.map((core) => (
        <Core key={core.no} core={core} tape={tape} />
      ))}
    </ul>
    <p class="note pad-x">{words.slips(blank.slip)}</p>
  </>
);

function Core({ core, tape }: { readonly core: Blank['cores'][number]; readonly tape: Tape }) {
  return (
    <li>
      <span>
        {words.front(core.no)}
        <span class="s muted block">{words.high(core.high)}</span>
      </span>
      <MarkAndRest mark={markAt(core.near, tape)} tape={tape} />
    </li>
  );
}
