import { useState } from 'preact/hooks';
import type { Ratio } from '../../length/length';
import { isNegative } from '../../length/length';
import { writeMillimetres } from '../../length/write';
import { Button } from '../../ui/button';
import { calibrated } from './kept';
import * as words from './words';
import './rule.css';

type CalibrateProps = {
  /** Points down the screen there is room for. */
  readonly room: number;
  readonly onDone: (points: Ratio) => void;
};

/** Quarters of a point. */
const quarters = 4;

/** Where a line begins: about where a card ends on most phones. */
const begins = { long: 500 * quarters, short: 320 * quarters };

/** A card laid on the glass, its two edges met by a line one after the other. */
export function Calibrate({ room, onDone }: CalibrateProps) {
  const most = Math.floor(room) * quarters;
  const [long, setLong] = useState(Math.min(begins.long, most));
  const [short, setShort] = useState(Math.min(begins.short, most));
  const [edge, setEdge] = useState<'long' | 'short'>('long');
  const [wrong, setWrong] = useState<string>();
  const [at, setAt] = edge === 'long' ? [long, setLong] : [short, setShort];
  const move = (by: number) => setAt((now) => Math.min(most, Math.max(quarters, now + by)));
  const touches = () => {
    if (edge === 'long') return setEdge('short');
    const found = calibrated(long, short);
    if (found.ok) return onDone(found.value.points);
    setEdge('long');
    const { error } = found;
    const by =
      error.code === 'short-edge'
        ? `${writeMillimetres(error.off).replace('-', '')} ${isNegative(error.off) ? words.short : words.long}`
        : words.short;
    setWrong(words.disagrees(by));
  };
  return (
    <div class="calibrate">
      <div class="cardline" style={{ top: '0px' }} />
      <div class="cardline moves" style={{ top: `${at / quarters}px` }} />
      <div class="rulesays">
        <p>{words.lay[edge]}</p>
        {wrong && <p class="wrongline">{wrong}</p>}
        <div class="chips">
          <Button label={words.move.up10} onTap={() => move(-10 * quarters)} />
          <Button label={words.move.down10} onTap={() => move(10 * quarters)} />
          <Button label={words.move.up1} onTap={() => move(-1)} />
          <Button label={words.move.down1} onTap={() => move(1)} />
        </div>
        <Button look="main full" label={words.touches[edge]} onTap={touches} />
        <p class="note">{words.card}</p>
      </div>
    </div>
  );
}
