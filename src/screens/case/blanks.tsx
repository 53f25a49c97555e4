import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import { stuffOf } from '../../plan/parts-of-job';
import type { Case, StockRole } from '../../trade/carcass/case';
import type { Worked } from '../../trade/carcass/parts';
import type { CaseField } from '../../trade/carcass/problems';
import { usualOf } from '../../trade/carcass/usual';
import { Icon } from '../../ui/icon';
import { type Ask, AskBlank } from '../shared/ask';
import * as asks from './asks';
import type { Fault } from './faults';
import type { Section } from './sections';

export type CasePart = {
  readonly c: Case;
  readonly job: Job;
  /** The case as it is kept, worked out where it can be. */
  readonly worked: Worked | undefined;
  readonly faults: readonly Fault[];
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly onMeasure: (stock: StockRole) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** The blanks of a sentence about this case. */
export const blanks = ({ c, job, faults, open, onOpen, onMeasure }: CasePart) => {
  const wrong = (ask: Ask) => faults.some((fault) => fault.stops && fault.blanks.includes(ask.title));
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} wrong={wrong(ask)} onOpen={onOpen} />;
  return {
    blank,
    /** What stands in while nothing is said. */
    usual: usualOf(c),
    length: (field: CaseField, stands?: Length) => blank(asks.caseLength(c, field, stands)),
    of: (stock: StockRole) => blank(asks.caseStock(c, stock, { job, onMeasure })),
    thick: (stock: StockRole) =>
      job.stock.filter((s) => s.id === (c.stocks[stock] ?? c.stocks.side)).flatMap(stuffOf)[0]?.thickness,
  };
};

type SaidProps = Pick<CasePart, 'faults'> & { readonly at: Section | 'whole' };

/** What is wrong, or worth a look, with the blanks of the sentence above. */
export function Said({ faults, at }: SaidProps) {
  const own = faults.filter((fault) => fault.at === at);
  if (own.length === 0) return null;
  return (
    <ul class="problems pad-x">
      {own.map(({ text, stops }) => (
        <li key={text} class={stops ? 'wrongline' : 'note'}>
          {stops && <Icon name="warn" />}
          {text}
        </li>
      ))}
    </ul>
  );
}
