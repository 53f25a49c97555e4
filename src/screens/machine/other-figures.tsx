import type { Rounded } from '../../length/round';
import { showsDecimals, type Tape } from '../../length/tape';
import type { Operation } from '../../trade/setups/operation';
import { Lens } from '../../ui/lens';
import { Inline, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { boardOf } from '../shared/board-of';
import { otherFiguresOf } from '../shared/other-figures';

type FiguresProps = { readonly bench: Bench; readonly op: Operation };

/** Further figures of a groove, each with its remainder: to its far teeth, and from the other end. */
export function OtherFigures({ bench, op: { groove } }: FiguresProps) {
  const tape = bench.job.value?.tape;
  const board = groove && boardOf(bench, groove.board);
  if (!board || !tape) return null;
  const told = otherFiguresOf(board, { shop: bench.shop.value, tape, setting: groove.setting });
  if (!told) return null;
  const { figures, notes, main } = told;
  return (
    <>
      <div class="pad-x seconds">
        {figures.map(({ label, figure }) => (
          <Second key={label} {...{ label, figure, tape }} />
        ))}
      </div>
      {notes.map((note) => (
        <p key={note} class="pad-x note">
          {note}
        </p>
      ))}
      {!showsDecimals(tape) && (
        <div class="lensbox">
          <Lens mark={main.value} rest={main.rest} tape={tape} />
        </div>
      )}
    </>
  );
}

type SecondProps = { readonly label: string; readonly figure: Rounded; readonly tape: Tape };

const Second = ({ label, figure, tape }: SecondProps) => (
  <p>
    {label} <br />
    <Inline value={figure.value} tape={tape === '0.001' ? '1/64' : tape} />{' '}
    <Remainder rest={figure.rest} tape={tape} by={false} />
  </p>
);
