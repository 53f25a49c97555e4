import { editCase } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import type { GapRead } from '../../job/room';
import { editGap, editStand } from '../../job/room-edits';
import type { ScribeSide } from '../../plan/scribe-plan';
import type { Case } from '../../trade/carcass/case';
import { likeOf, stockOf } from '../../trade/carcass/sizes';
import type { Ask } from '../shared/ask';
import * as words from './words';

type Side = ScribeSide['side'];

/** The blanks of one gap; `no` counts from 1. */
export const gapAsks = (
  id: string,
  side: Side,
  gap: GapRead,
  no: number,
): Readonly<Record<'at' | 'gap', Ask>> => ({
  at: {
    as: 'length',
    title: words.gapAt(side, no),
    kind: 'place',
    now: gap.at,
    save: (at) => editGap(id, gap.id, { at }),
  },
  gap: {
    as: 'length',
    title: words.gapWide(side, no),
    kind: 'place',
    now: gap.gap,
    save: (value) => editGap(id, gap.id, { gap: value }),
  },
});

/** How far the edge hangs over; as the face frame does where nothing is said. */
export const hangAsk = (id: string, { side, said, hang }: ScribeSide): Ask => ({
  as: 'length',
  title: words.hang(side),
  kind: 'place',
  now: said,
  usual: hang,
  word: words.asFrame,
  save: (value) => editStand(id, { [side === 'left' ? 'hangLeft' : 'hangRight']: value }),
});

/** The strips of a case out of that stock; none: out of that of what they stand beside. */
export const stripsOf = (id: string, stock: string): readonly Change[] =>
  editCase(id, { fillerStock: stock === '' ? undefined : stock });

type StockFrom = { readonly job: Job; readonly onMeasure: () => void };

/** Which stock the strips are of: any of the job, one to be measured now, or as what they stand beside. */
export const fillerStock = (c: Case, { job, onMeasure }: StockFrom): Ask => {
  const named = (id: string | undefined) => job.stock.find((s) => s.id === id)?.name;
  const like = likeOf(c, 'filler') ?? 'side';
  const usual = named(stockOf(c, like));
  return {
    as: 'choice',
    title: words.stripsOf,
    now: c.stocks.filler ?? '',
    choices: [
      { value: '', label: words.asThat(like === 'frame', usual) },
      ...job.stock.map((s) => ({ value: s.id, label: s.name || words.aSheet })),
    ],
    more: { label: words.measureStick, onTap: onMeasure },
    save: (stock) => stripsOf(c.id, stock),
  };
};
