import { isNegative, isPositive, negate, zero } from '../../length/length';
import { writeLength } from '../../length/write';
import { guidePlaces } from '../../trade/sheets/guide';
import { stripsOf } from '../../trade/sheets/strips';
import { Marked, Wrong } from './sum-results';
import type { SumRule } from './sum-rule';
import * as words from './sum-words';

export const stripsSum: SumRule = {
  ...words.strips,
  result: ({ length }, tape) => {
    const [across, strip] = [length('across'), length('strip')];
    if (!across || !strip) return null;
    const found = stripsOf({ across, strip, trim: length('trim') ?? zero, kerf: length('kerf') });
    if (!found.ok) return <Wrong>{words.stripsText(found.error, tape)}</Wrong>;
    const { count, usable, offcut } = found.value;
    return (
      <>
        <p class="marked">
          <span class="mx arm">
            <span class="w">{count}</span>
          </span>
          <span class="note">{words.stripWord(count)}</span>
        </p>
        <Marked value={offcut} tape={tape} label={words.over} />
        <p class="note">{words.usable(writeLength(usable, tape))}</p>
      </>
    );
  },
};

export const guideSum: SumRule = {
  ...words.guide,
  result: ({ length }, tape) => {
    const [line, kerf] = [length('line'), length('kerf')];
    if (!line || !kerf || !isPositive(kerf)) return <p class="note">{words.guideWants}</p>;
    const shop = { shoeKeep: length('keep'), shoeWaste: length('waste') };
    const { onKeep, onWaste } = guidePlaces(line, { keep: 'near', kerf, shop });
    return (
      <>
        {onKeep && !isNegative(onKeep) && <Marked value={onKeep} tape={tape} label={words.onKeep} />}
        {onKeep && isNegative(onKeep) && <Wrong>{words.offEdge(writeLength(negate(onKeep), tape))}</Wrong>}
        {onWaste && <Marked value={onWaste} tape={tape} label={words.onWaste} />}
        <p class="note">{words.twoMarks}</p>
      </>
    );
  },
};
