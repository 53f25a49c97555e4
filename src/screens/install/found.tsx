import { figureIn } from '../../length/metric-figures';
import { markAt, type Tape } from '../../length/tape';
import type { Units } from '../../length/units';
import { writeMark } from '../../length/write';
import type { ScrewPlace } from '../../plan/screw-plan';
import { leastWall, type ScrewWall } from '../../trade/install/wall';
import { Icon } from '../../ui/icon';
import { rowFails } from '../shared/row-fails';
import * as words from './screw-words';

export const Wrong = ({ says }: { readonly says: string }) => (
  <p class="wrongline">
    <Icon name="warn" />
    {says}
  </p>
);

function Beside({ wall, units }: { readonly wall: ScrewWall; readonly units: Units }) {
  const says = words.beside(wall, figureIn(units, leastWall));
  return wall.short ? <Wrong says={says} /> : <p class="s muted">{says}</p>;
}

type FoundProps = {
  readonly place: ScrewPlace;
  readonly tape: Tape;
  /** How what is not said is asked for. */
  readonly missing: Readonly<Record<ScrewPlace['missing'][number], string>>;
};

/** The screw, its row and its holes; or what keeps them from being said. */
export function Found({ place, tape, missing: ask }: FoundProps) {
  const { screw, row, missing, holes, count, isWall, units, screws, wall } = place;
  const at = row?.ok ? row.value.marks.map((x) => writeMark(markAt(x, tape), tape)) : [];
  return (
    <div class="pad-x">
      {missing.map((blank) => (
        <p key={blank} class="note">
          {ask[blank]}
        </p>
      ))}
      {screw?.pick && <p>{words.takes(screw, units, isWall)}</p>}
      {screw?.fails && <Wrong says={words.fails(screw, place)} />}
      {screw?.deep && <p class="lit">{words.deep(screw.deep, units)}</p>}
      {wall && <Beside {...{ wall, units }} />}
      {row?.ok && <p>{words.row(row.value, at, screws.rows ?? 1)}</p>}
      {row && !row.ok && <Wrong says={rowFails(row.error)} />}
      {screw?.pick && <p class="s muted">{words.holes(holes)}</p>}
      {screw?.pick && <p class="s muted">{words.many(count)}</p>}
    </div>
  );
}
