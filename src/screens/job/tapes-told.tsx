import { longest } from '../../length/length';
import type { Shop } from '../../trade/machines/shop';
import { readTo, type TapeReadings, twoTapes } from '../../trade/tolerance/two-tapes';
import { Icon } from '../../ui/icon';
import { tapeInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import * as words from './tapes-words';

/** What the two boards say of two tapes, at the longest of the job in hand. */
export function TapesTold({ bench }: { readonly bench: Pick<Bench, 'shop' | 'plan'> }) {
  const readings = readingsIn(bench.shop.value);
  if (!readings) return <p class="pad-x note">{words.howTo}</p>;
  const [first, ...rest] = (bench.plan.value?.parts ?? []).map((part) => part.length.sum.value);
  const reach = first ? longest(first, ...rest) : readings.long;
  const told = twoTapes(readings, { reach, tape: readTo(readings, tapeInHand.value) });
  return (
    <p class={wants(told) ? 'pad-x wrongline rests' : 'pad-x note rests'} role="status">
      {wants(told) && <Icon name="warn" />}
      {told.ok
        ? words.tapesText(told.value, { reach, ofJob: first !== undefined })
        : words.tapesWrong(told.error, { ...readings, reach })}
    </p>
  );
}

/** Whether something is to be done. */
const wants = (told: ReturnType<typeof twoTapes>): boolean => !told.ok || told.value.verdict === 'apart';

function readingsIn({ tapeShort, otherShort, tapeLong, otherLong }: Shop): TapeReadings | undefined {
  return tapeShort && otherShort && tapeLong && otherLong
    ? { short: tapeShort, shortOther: otherShort, long: tapeLong, longOther: otherLong }
    : undefined;
}
