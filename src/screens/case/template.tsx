import { inches, isZero, type Length } from '../../length/length';
import { grainOf, type Tape } from '../../length/tape';
import type { Inside } from '../../trade/carcass/case';
import { holeRow } from '../../trade/shelves/hole-row';
import { type Pins, pinsOf } from '../../trade/shelves/pins';
import { driftOf, safeLength, tooShort, turnedOff } from '../../trade/shelves/template';
import { Icon } from '../../ui/icon';
import * as asks from './asks';
import { blanks, type CasePart } from './blanks';
import * as looseAsks from './loose-asks';
import * as words from './template-words';

/** What stands in for a template nobody measured. Common practice, no source. */
const usual = { error: inches(1n, 1000n), play: inches(3n, 1000n) };

/** The template rows of holes are bored in: what turning it does, and how far the last hole may come to be off. */
export function Template(part: CasePart & { readonly i: Inside }) {
  const { c, i, worked, job } = part;
  const pins = worked && pinsOf(worked.sizes, i);
  if (!pins || i.bore === 'press') return null;
  const { blank } = blanks(part);
  const length = (
    field: asks.InsideLengthAt['field'],
    title: asks.InsideLengthAt['title'],
    stands?: Length,
  ) => blank(asks.insideLength(c, i, { field, title, usual: stands }));
  const { count } = holeRow({ ...pins, span: worked.sizes.clearHeight.value });
  return (
    <>
      <p>
        {words.template({
          long: length('templateLong', 'templateLong'),
          first: length('templateFirst', 'templateFirst'),
          holes: blank(looseAsks.templateHoles(c, i)),
          error: length('templateError', 'templateError', usual.error),
          play: length('templatePlay', 'templatePlay', usual.play),
        })}
      </p>
      <ul class="problems pad-x">
        <Turned i={i} pins={pins} />
        <Drift i={i} count={count} tape={job.tape} />
      </ul>
    </>
  );
}

/** Whether it may be turned end for end on the other wall. */
function Turned({ i, pins: { pitch, dia } }: { readonly i: Inside; readonly pins: Pins }) {
  const { templateLong: long, templateFirst: first, templateHoles: holes } = i;
  if (!long || !first || !holes) return null;
  const own = { long, first, pitch, holes };
  const short = tooShort(own, dia);
  if (!isZero(short))
    return (
      <li class="wrongline">
        <Icon name="warn" />
        {words.short(short)}
      </li>
    );
  return <li class="note">{words.turned(turnedOff(own), safeLength(own))}</li>;
}

type DriftProps = { readonly i: Inside; readonly count: number; readonly tape: Tape };

/** How far the last hole may be off, all three ways: the choice is made before the first is bored. */
function Drift({ i, count, tape }: DriftProps) {
  const { templateHoles: template, templateError: error = usual.error, templatePlay: play = usual.play } = i;
  if (!template || count < 2) return null;
  const drift = driftOf({ holes: count, template, error, play, grain: grainOf(tape) });
  return <li class="note">{words.drift(drift, template)}</li>;
}
