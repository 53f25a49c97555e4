import { isNegative, isPositive, zero } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import { guidePlaces } from '../../trade/sheets/guide';
import { type StripsError, stripsOf } from '../../trade/sheets/strips';
import { Marked, Wrong } from './sum-results';
import type { SumRule } from './sum-rule';

export const stripsSum: SumRule = {
  title: 'Strips ripped from a sheet',
  sentence: [
    'A sheet ',
    { blank: 'across', label: 'Across the sheet' },
    ' across, ',
    { blank: 'trim', label: 'Trimmed off each edge' },
    ' trimmed off each edge, cut with a kerf of ',
    { blank: 'kerf', label: 'Kerf of the saw' },
    ', gives strips ',
    { blank: 'strip', label: 'Width of a ripped strip, rough' },
    ' wide:',
  ],
  result: ({ length }, tape) => {
    const [across, strip] = [length('across'), length('strip')];
    if (!across || !strip) return null;
    const found = stripsOf({ across, strip, trim: length('trim') ?? zero, kerf: length('kerf') });
    if (!found.ok) return <Wrong>{stripsText(found.error, tape)}</Wrong>;
    const { count, usable, offcut } = found.value;
    return (
      <>
        <p class="marked">
          <span class="mx arm">
            <span class="w">{count}</span>
          </span>
          <span class="note">{count === 1 ? 'strip' : 'strips'}</span>
        </p>
        <Marked value={offcut} tape={tape} label="Over" />
        <p class="note">
          {writeLength(usable, tape)} is usable. Rough widths, where a final rip follows; the last strip needs
          no kerf.
        </p>
      </>
    );
  },
};

function stripsText(error: StripsError, tape: Tape): string {
  switch (error.code) {
    case 'kerf-missing':
      return 'Every cut takes the kerf. Measure a cut in scrap.';
    case 'no-width':
      return 'A ripped strip is wider than nothing.';
    case 'trim-negative':
      return `A trim takes wood off: ${writeLength(error.trim, tape)} would add some.`;
    case 'trim-eats-it':
      return `Trimming ${writeLength(error.trim, tape)} off both edges leaves nothing of ${writeLength(error.most, tape)}.`;
    case 'wider-than-sheet':
      return `The ripped strip is ${writeLength(error.by, tape)} wider than the ${writeLength(error.usable, tape)} that is usable.`;
    default:
      return assertNever(error);
  }
}

export const guideSum: SumRule = {
  title: 'Guide for the saw',
  sentence: [
    'What is kept ends ',
    { blank: 'line', label: 'The line, from the edge' },
    ' from the edge. The saw’s kerf is ',
    { blank: 'kerf', label: 'Kerf of the saw' },
    '; from its teeth to the shoe’s edge it is ',
    { blank: 'keep', label: 'Shoe edge to the teeth, guide on what is kept' },
    ' on the side that is kept and ',
    { blank: 'waste', label: 'Shoe edge to the teeth, guide on the waste' },
    ' on the other.',
  ],
  result: ({ length }, tape) => {
    const [line, kerf] = [length('line'), length('kerf')];
    if (!line || !kerf || !isPositive(kerf))
      return <p class="note">The line and the kerf, and one side of the shoe.</p>;
    const shop = { shoeKeep: length('keep'), shoeWaste: length('waste') };
    const { onKeep, onWaste } = guidePlaces(line, { keep: 'near', kerf, shop });
    return (
      <>
        {onKeep && !isNegative(onKeep) && (
          <Marked value={onKeep} tape={tape} label="Guide’s edge, lying on what is kept" />
        )}
        {onKeep && isNegative(onKeep) && (
          <Wrong>{`On what is kept the guide would lie ${writeLength(onKeep.neg() as typeof onKeep, tape)} off the edge.`}</Wrong>
        )}
        {onWaste && <Marked value={onWaste} tape={tape} label="Guide’s edge, lying on the waste" />}
        <p class="note">Both from the same edge. Two marks: the line, and the guide.</p>
      </>
    );
  },
};
