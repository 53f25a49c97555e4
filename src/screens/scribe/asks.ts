import type { GapRead } from '../../job/room';
import { editGap, editStand } from '../../job/room-edits';
import type { ScribeSide } from '../../plan/scribe-plan';
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
