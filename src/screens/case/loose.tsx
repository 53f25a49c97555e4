import type { ComponentChildren } from 'preact';
import { add, isPositive, type Length, times, zero } from '../../length/length';
import type { Inside } from '../../trade/carcass/case';
import type { Sizes } from '../../trade/carcass/sizes';
import { holeRow } from '../../trade/shelves/hole-row';
import { usualPlay } from '../../trade/shelves/loose';
import { type Pins, pinsOf, usualPins } from '../../trade/shelves/pins';
import { stripsOf, usualStripRoom } from '../../trade/shelves/strips';
import { woodEdging } from '../../trade/shelves/wood-edging';
import * as asks from './asks';
import { blanks, type CasePart } from './blanks';
import * as looseAsks from './loose-asks';
import * as words from './loose-words';

type LoosePart = CasePart & { readonly i: Inside };

/** Loose shelves: what holds them, and where that is laid out its holes and what the shelves are short of their bay. */
export function looseSentence(part: LoosePart, bay: ComponentChildren): ComponentChildren {
  const { c, i } = part;
  const { blank, of } = blanks(part);
  const length = (field: asks.InsideLengthAt['field'], title: asks.InsideLengthAt['title'], usual?: Length) =>
    blank(asks.insideLength(c, i, { field, title, usual }));
  const stands = usualPins(c, i);
  const strips = i.heldBy === 'strips';
  return words.loose({
    i,
    bay,
    count: blank(asks.insideCount(c, i)),
    by: blank(looseAsks.looseHeld(c, i)),
    at: {
      wide: length('width', strips ? 'stripWide' : 'holeWide', strips ? undefined : stands.dia),
      deep: length('depth', strips ? 'stripDeep' : 'holeDeep', strips ? undefined : stands.deep),
      thick: length('stripThick', 'stripThick'),
      room: length('stripRoom', 'stripRoom', usualStripRoom(c)),
      first: length('first', i.heldBy === 'lines' ? 'least' : 'holeFirst', stands.first),
      pitch: length('pitch', 'holePitch'),
      top: length('endRoom', strips ? 'stripTop' : 'holeTop', strips ? zero : i.first),
      front: length('front', 'front', stands.front),
      behind: length('behind', 'behind', stands.behind),
      bore: blank(looseAsks.looseBore(c, i)),
      sold: length('stripSold', 'stripSold'),
    },
    size: {
      flange: length('flange', 'flange', zero),
      play: length('play', 'play', usualPlay(c)),
      frontPlay: length('frontPlay', 'frontPlay', zero),
      backPlay: length('backPlay', 'backPlay', zero),
      band: length('band', 'band', zero),
      edge: i.band && isPositive(i.band) ? of('shelfedge') : null,
      spares: blank(looseAsks.looseSpares(c, i)),
    },
  });
}

/** What the rows of holes come to, or the strips. */
export function Rows({ i, sizes }: { readonly i: Inside; readonly sizes: Sizes }) {
  const strips = stripsOf(sizes, i);
  const pins = pinsOf(sizes, i);
  const edging = woodEdging(sizes, i);
  const says = [
    strips ? words.stripsSay(strips) : pins && rowsSay(pins, sizes),
    edging && isPositive(edging.past) ? words.edgingSays(edging.past) : undefined,
  ].filter((line) => line !== undefined);
  return says.length > 0 ? (
    <ul class="problems pad-x">
      {says.map((line) => (
        <li key={line} class="note">
          {line}
        </li>
      ))}
    </ul>
  ) : null;
}

function rowsSay(pins: Pins, { clearHeight }: Sizes): string {
  const { first, pitch, metric } = pins;
  const { count, left } = holeRow({ ...pins, span: clearHeight.value });
  const last = add(first, times(pitch, BigInt(Math.max(0, count - 1))));
  return words.rowsSay({ count: count - pins.leftOut.length, last, left, metric });
}
