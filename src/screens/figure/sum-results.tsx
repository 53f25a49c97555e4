import { trueReading } from '../../length/burned';
import { diagonal, rootSide, squareOf } from '../../length/diagonal';
import { equalParts } from '../../length/equal-parts';
import { inches, type Length, less, subtract, zero } from '../../length/length';
import { type Racking, squareUp } from '../../length/racking';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, grainOf, markAt, type Tape } from '../../length/tape';
import { Mixed, Remainder, Sign } from '../../ui/mixed';
import { exactly } from '../shared/exact-words';
import * as squareWords from '../shared/square-words';
import type { SumRule } from './sum-rule';
import * as words from './sum-words';
import './figure.css';
import './sums.css';

type MarkedProps = { readonly value: Length; readonly tape: Tape; readonly label: string };

/** A result as it is marked, with what rounding left. */
export const Marked = ({ value, tape, label }: MarkedProps) => (
  <MarkedAs mark={markAt(value, tape)} tape={tape} label={label} />
);

type MarkedAsProps = { readonly mark: Rounded; readonly tape: Tape; readonly label: string };

/** A figure already rounded, with what that left. */
const MarkedAs = ({ mark, tape, label }: MarkedAsProps) => (
  <div class="marked">
    <span class="note">{label}</span>
    <Mixed value={mark.value} rest={mark.rest} size="arm" tape={tape} />
    <Remainder tape={tape} rest={mark.rest} />
  </div>
);

const OtherEnd = ({ mark, tape }: { readonly mark: Rounded; readonly tape: Tape }) => (
  <>
    <Mixed value={mark.value} rest={mark.rest} tape={tape} />
    <Sign rest={mark.rest} tape={tape} />
  </>
);

export const Wrong = ({ children }: { readonly children: string }) => <p class="wrongline">{children}</p>;

export const otherEndSum: SumRule = {
  ...words.otherEnd,
  result: ({ length }, tape) => {
    const [whole, mark] = [length('length'), length('mark')];
    if (!whole || !mark) return null;
    if (less(mark, zero)) return <Wrong>{words.beforeEnd}</Wrong>;
    if (less(whole, mark)) return <Wrong>{words.pastEnd(exactly(subtract(mark, whole)))}</Wrong>;
    const at = markAt(mark, tape);
    return (
      <>
        <MarkedAs mark={fromOtherEnd(whole, at, tape)} tape={tape} label="" />
        <p class="note">{words.meet}</p>
      </>
    );
  },
};

export const partsSum: SumRule = {
  ...words.parts,
  result: ({ length, count }, tape) => {
    const [whole, n] = [length('length'), count('n')];
    if (!whole || n === undefined) return null;
    const parts = equalParts(whole, n, length('divider') ?? zero);
    if (!parts.ok) return <Wrong>{words.partsText(parts.error)}</Wrong>;
    return (
      <>
        <Marked value={parts.value.each} tape={tape} label={words.eachPart} />
        {parts.value.nears.length > 0 && <p class="note">{words.dividers}</p>}
        <ol class="edges">
          {parts.value.nears.slice(0, 60).map((near, k) => {
            const mark = markAt(near, tape);
            return (
              <li key={k}>
                <b>{k + 1}</b>
                <Mixed value={mark.value} rest={mark.rest} tape={tape} />
                <Remainder tape={tape} rest={mark.rest} by={false} />
                <span class="back">
                  <OtherEnd mark={fromOtherEnd(whole, mark, tape)} tape={tape} />
                </span>
              </li>
            );
          })}
        </ol>
      </>
    );
  },
};

export const diagonalSum: SumRule = {
  ...words.diagonal,
  result: ({ length }, tape) => {
    const [w, h] = [length('w'), length('h')];
    if (!w || !h) return null;
    const mark = diagonal(w, h, grainOf(tape));
    const side = rootSide(squareOf(w, h), mark);
    return (
      <div class="marked">
        <Mixed value={mark} size="arm" tape={tape} />
        <span class="rem">{words.markIs(side)}</span>
      </div>
    );
  },
};

export const squareSum: SumRule = {
  ...words.square,
  result: ({ length }, tape) => {
    const [w, h, a, b] = [length('w'), length('h'), length('a'), length('b')];
    if (!w || !h || !a || !b) return <p class="note">{words.allFour}</p>;
    const found = squareUp({ w, h, a, b }, grainOf(tape));
    return found.ok ? (
      <Push racking={found.value} tape={tape} />
    ) : (
      <Wrong>{squareWords.rackingText(found.error)}</Wrong>
    );
  },
};

function Push({ racking, tape }: { readonly racking: Racking; readonly tape: Tape }) {
  const cannotBe = !racking.agree && <Wrong>{squareWords.cannotAgree}</Wrong>;
  if (racking.long === 'neither') {
    return cannotBe || <p class="note">{squareWords.equalDiagonals}</p>;
  }
  return (
    <>
      {cannotBe}
      <Marked value={racking.push} tape={tape} label={words.push} />
      <Marked value={racking.until} tape={tape} label={words.until} />
    </>
  );
}

export const burnedSum: SumRule = {
  ...words.burned,
  result: ({ length }, tape) => {
    const reading = length('reading');
    if (!reading) return <p class="note">{words.startsAt(exactly(inches(1n)))}</p>;
    const found = trueReading(reading, { burned: length('burned') ?? zero, body: length('body') ?? zero });
    if (!found.ok) return <Wrong>{words.lessThanStart(exactly(found.error.by))}</Wrong>;
    return (
      <>
        <Marked value={found.value.value} tape={tape} label={words.really} />
        {found.value.both && <Wrong>{words.bothOn}</Wrong>}
      </>
    );
  },
};
