import { trueReading } from '../../length/burned';
import { diagonal, rootSide, squareOf } from '../../length/diagonal';
import { equalParts, type PartsError } from '../../length/equal-parts';
import { inches, isZero, type Length, less, zero } from '../../length/length';
import { type Racking, type RackingError, squareUp } from '../../length/racking';
import { assertNever } from '../../length/result';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, grainOf, markAt, type Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import { Mixed, Remainder, Sign } from '../../ui/mixed';
import { counted } from '../shared/counted';
import type { SumRule } from './sum-rule';

export const Marked = ({
  value,
  tape,
  label,
}: {
  readonly value: Length;
  readonly tape: Tape;
  readonly label: string;
}) => <MarkedAs mark={markAt(value, tape)} tape={tape} label={label} />;

/** A figure already rounded, with what that left. */
function MarkedAs({
  mark,
  tape,
  label,
}: {
  readonly mark: Rounded;
  readonly tape: Tape;
  readonly label: string;
}) {
  return (
    <div class="marked">
      <span class="note">{label}</span>
      <Mixed value={mark.value} rest={mark.rest} size="arm" tape={tape} />
      <Remainder tape={tape} rest={mark.rest} />
    </div>
  );
}

const OtherEnd = ({ mark, tape }: { readonly mark: Rounded; readonly tape: Tape }) => (
  <>
    <Mixed value={mark.value} rest={mark.rest} tape={tape} />
    <Sign rest={mark.rest} tape={tape} />
  </>
);

export const Wrong = ({ children }: { readonly children: string }) => <p class="wrongline">{children}</p>;

export const otherEndSum: SumRule = {
  title: 'From the other end',
  sentence: [
    'A part ',
    { blank: 'length', label: 'Length of the part' },
    ' long, marked at ',
    { blank: 'mark', label: 'The mark' },
    ' from the one end, is marked from the other end at',
  ],
  result: ({ length }, tape) => {
    const [whole, mark] = [length('length'), length('mark')];
    if (!whole || !mark) return null;
    if (less(mark, zero)) return <Wrong>The mark lies before the end.</Wrong>;
    if (less(whole, mark))
      return <Wrong>{`The mark lies ${writeLength(mark.sub(whole) as Length)} past the end.`}</Wrong>;
    const at = markAt(mark, tape);
    return (
      <>
        <MarkedAs mark={fromOtherEnd(whole, at, tape)} tape={tape} label="" />
        <p class="note">
          Both figures meet at one knife line: the mark is rounded once, the rest is the length less it.
        </p>
      </>
    );
  },
};

export const partsSum: SumRule = {
  title: 'Equal parts',
  sentence: [
    'Divide ',
    { blank: 'length', label: 'Length to divide' },
    ' into ',
    { blank: 'n', label: 'How many parts', count: true },
    ' equal parts, with dividers ',
    { blank: 'divider', label: 'Divider thickness, or kerf' },
    ' thick between.',
  ],
  result: ({ length, count }, tape) => {
    const [whole, n] = [length('length'), count('n')];
    if (!whole || n === undefined) return null;
    const parts = equalParts(whole, n, length('divider') ?? zero);
    if (!parts.ok) return <Wrong>{partsText(parts.error)}</Wrong>;
    return (
      <>
        <Marked value={parts.value.each} tape={tape} label="Each part" />
        {parts.value.nears.length > 0 && (
          <p class="note">Near edge of each divider, from one end, and from the other</p>
        )}
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

function partsText(error: PartsError): string {
  switch (error.code) {
    case 'count-not-whole':
      return 'Parts are counted in whole numbers, one to a thousand.';
    case 'length-not-positive':
      return 'The length must be more than nothing.';
    case 'divider-negative':
      return 'A divider has no less than no thickness.';
    case 'dividers-fill-it':
      return isZero(error.over)
        ? `The dividers alone fill the length. ${counted(error.most, 'part', 'parts')} would fit.`
        : `The dividers alone run ${writeLength(error.over)} over the length. ${counted(error.most, 'part', 'parts')} would fit.`;
    default:
      return assertNever(error);
  }
}

export const diagonalSum: SumRule = {
  title: 'Diagonal',
  sentence: [
    'A frame ',
    { blank: 'w', label: 'Width' },
    ' wide and ',
    { blank: 'h', label: 'Height' },
    ' high is square when each diagonal reads',
  ],
  result: ({ length }, tape) => {
    const [w, h] = [length('w'), length('h')];
    if (!w || !h) return null;
    const mark = diagonal(w, h, grainOf(tape));
    const side = rootSide(squareOf(w, h), mark);
    return (
      <div class="marked">
        <Mixed value={mark} size="arm" tape={tape} />
        <span class="rem">{side === 0 ? '' : side > 0 ? 'strong' : 'scant'}</span>
      </div>
    );
  },
};

export const squareSum: SumRule = {
  title: 'Square up',
  sentence: [
    'A case ',
    { blank: 'w', label: 'Width, the side that slides' },
    ' wide and ',
    { blank: 'h', label: 'Height' },
    ' high reads ',
    { blank: 'a', label: 'One diagonal' },
    ' on one diagonal and ',
    { blank: 'b', label: 'The other diagonal' },
    ' on the other.',
  ],
  result: ({ length }, tape) => {
    const [w, h, a, b] = [length('w'), length('h'), length('a'), length('b')];
    if (!w || !h || !a || !b)
      return <p class="note">Measure all four: equal diagonals alone do not prove square.</p>;
    const found = squareUp({ w, h, a, b }, grainOf(tape));
    return found.ok ? <Push racking={found.value} tape={tape} /> : <Wrong>{rackingText(found.error)}</Wrong>;
  },
};

function Push({ racking, tape }: { readonly racking: Racking; readonly tape: Tape }) {
  const cannotBe = !racking.agree && (
    <Wrong>These four figures cannot all be right: measure again, and measure all four sides.</Wrong>
  );
  if (racking.long === 'neither') {
    return (
      cannotBe || (
        <p class="note">
          The diagonals are equal. With both widths and both heights equal too, it is square.
        </p>
      )
    );
  }
  return (
    <>
      {cannotBe}
      <Marked
        value={racking.push}
        tape={tape}
        label="Push the top, squeezing the corners on the long diagonal, by"
      />
      <Marked value={racking.until} tape={tape} label="until each diagonal reads" />
    </>
  );
}

function rackingText(error: RackingError): string {
  switch (error.code) {
    case 'not-positive':
      return 'Each of the four is more than nothing.';
    case 'cannot-be':
      return `That diagonal cannot be: with this width and height it lies between ${writeLength(error.least)} and ${writeLength(error.most)}.`;
    default:
      return assertNever(error);
  }
}

export const burnedSum: SumRule = {
  title: 'Burned tape',
  sentence: [
    'The tape reads ',
    { blank: 'reading', label: 'What the tape reads' },
    ', started at ',
    { blank: 'burned', label: 'Where the tape was started' },
    ', with the tape’s own body adding ',
    { blank: 'body', label: 'Length of the tape’s body, for an inside measure' },
    '.',
  ],
  result: ({ length }, tape) => {
    const reading = length('reading');
    if (!reading)
      return (
        <p class="note">
          A tape burned at 1 starts at {writeLength(inches(1n))}. Leave blank what does not apply.
        </p>
      );
    const found = trueReading(reading, { burned: length('burned') ?? zero, body: length('body') ?? zero });
    if (!found.ok)
      return <Wrong>{`That is ${writeLength(found.error.by)} less than where the tape was started.`}</Wrong>;
    return (
      <>
        <Marked value={found.value.value} tape={tape} label="It is really" />
        {found.value.both && (
          <Wrong>Both are on: a burned start and the tape’s body. Seldom both are meant.</Wrong>
        )}
      </>
    );
  },
};
