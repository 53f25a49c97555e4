import type { Job } from '../../job/job';
import { add, isNegative, type Length, less, subtract } from '../../length/length';
import type { SideFillers } from '../../trade/room/fillers';
import { fillerWarning } from '../shared/in-room-words';
import { Drawn, Wrong } from './drawn';
import * as words from './words';

type StripProps = {
  readonly side: 'left' | 'right';
  readonly found: SideFillers;
  readonly isRipped: boolean;
  /** What it was ripped to, where that is done. */
  readonly was: Length | undefined;
  readonly tape: Job['tape'];
};

/** What a strip is ripped to, or was, and what comes off at each place; nothing comes off where it is too narrow. */
export function Strip({ side, found, isRipped, was, tape }: StripProps) {
  const { strip, off } = found;
  const over = strip && was ? subtract(was, strip) : undefined;
  const own = over ? off.map((spot) => ({ ...spot, value: add(spot.value, over) })) : off;
  const covers = own.every(({ value }) => !isNegative(value));
  return (
    <div class="rests">
      {isRipped && strip && (
        <>
          <p class="fact good">{was ? words.ripped(side, was) : words.strip(side, strip)}</p>
          {was && less(was, strip) && <Wrong says={words.tooNarrow(strip, subtract(strip, was), covers)} />}
          {covers && <Drawn side={side} off={own} tape={tape} />}
          {covers &&
            own.map(({ at, value }, k) => (
              <p key={k} class="s">
                {words.stripOff(at, value)}
              </p>
            ))}
        </>
      )}
      {found.warnings.map((warning, k) => (
        <Wrong key={k} says={fillerWarning(side, warning)} />
      ))}
    </div>
  );
}
