import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import { stuffOf } from '../../plan/plan';
import type { Case, StockRole } from '../../trade/carcass/case';
import type { CaseField } from '../../trade/carcass/problems';
import { type Ask, AskBlank } from '../shared/ask';
import * as asks from './asks';

export type CasePart = {
  readonly c: Case;
  readonly job: Job;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** The blanks of a sentence about this case. */
export const blanks = ({ c, job, open, onOpen }: CasePart) => {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return {
    blank,
    length: (field: CaseField, stands?: Length) => blank(asks.caseLength(c, field, stands)),
    of: (stock: StockRole) => blank(asks.caseStock(c, stock, job)),
    thick: (stock: StockRole) =>
      job.stock.filter((s) => s.id === (c.stocks[stock] ?? c.stocks.side)).flatMap(stuffOf)[0]?.thickness,
  };
};
