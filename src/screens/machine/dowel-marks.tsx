import type { Checklist } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import { whichWords } from '../shared/cut-words';
import { pieceName } from '../shared/piece-words';

/** Where the holes for dowels are along each end: pieces with the same marks stand together. */
export function DowelMarks({ list, card }: { readonly list: Checklist; readonly card: Card }) {
  const { tape } = list.plan.job;
  const rows = new Map<string, readonly string[]>();
  for (const op of card.operations) {
    if (op.which?.is !== 'dowels' && op.which?.is !== 'fasteners') continue;
    const says = whichWords(op, tape);
    rows.set(says, [...(rows.get(says) ?? []), pieceName(op, tape)]);
  }
  return (
    <>
      {[...rows].map(([says, names]) => (
        <p key={says} class="pad-x note">
          <b>{names.join('; ')}</b> {says}
        </p>
      ))}
    </>
  );
}
