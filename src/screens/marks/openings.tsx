import type { Length } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Board } from '../../trade/grooves/board';
import { layOut } from '../../trade/grooves/lay-out';
import { Mixed, Remainder } from '../../ui/mixed';
import * as words from './change-words';

/** What the spacing comes to: each opening, or what is left over. */
export const Openings = ({ board, tape }: { readonly board: Board; readonly tape: Tape }) => (
  <>
    {layOut(board).facts.map(({ run, opening, leftOver, nears: { length } }) => [
      opening && (
        <Row
          key={`${run}o`}
          label={words.eachOpening}
          note={words.openings(length + 1)}
          value={opening}
          tape={tape}
        />
      ),
      leftOver && (
        <Row
          key={`${run}l`}
          label={words.leftOver}
          note={words.groovesFit(length)}
          value={leftOver}
          tape={tape}
        />
      ),
    ])}
  </>
);

type RowProps = {
  readonly label: string;
  readonly note: string;
  readonly value: Length;
  readonly tape: Tape;
};

function Row({ label, note, value, tape }: RowProps) {
  const mark = markAt(value, tape);
  return (
    <div class="nextset rests">
      <div class="grow">
        <b>{label}</b>
        <p class="s muted">{note}</p>
      </div>
      <Mixed value={mark.value} rest={mark.rest} tape={tape} />
      <Remainder tape={tape} rest={mark.rest} by={false} />
    </div>
  );
}
