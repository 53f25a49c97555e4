import { useState } from 'preact/hooks';
import { editOffcut, spoilPiece } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Length } from '../../length/length';
import { writeLength } from '../../length/write';
import type { Checklist } from '../../plan/checklist';
import { keepMark } from '../../plan/kept-mark';
import { liesIn, roughAt } from '../../plan/rough-at';
import type { Part } from '../../trade/carcass/part';
import { copyOf } from '../../trade/grooves/copies';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { type Leftover, type Recut, recutOf } from '../../trade/setups/recut';
import { Button } from '../../ui/button';
import { Dock } from '../../ui/dock';
import type { Bench } from '../bench';
import { counted } from './counted';
import { partWord } from './part-words';
import { setupTitle } from './setup-title';
import './spoiled.css';
import { WhichPiece } from './which-piece';

type SpoiledProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Pick<Card, 'operations'>;
  readonly onClose: () => void;
};

/** Which piece is spoiled; then what making it again comes to, before it goes back on the list. */
export function SpoiledDock({ bench, list, card, onClose }: SpoiledProps) {
  const pieces = card.operations.filter((op, k) => op.part !== 'test' && firstOf(card.operations, op) === k);
  const [only] = pieces;
  const [chosen, setChosen] = useState<Operation | undefined>(pieces.length === 1 ? only : undefined);
  const part = list.plan.parts.find((p) => p.id === chosen?.part);
  if (chosen && part) return <Again {...{ bench, list, part, onClose }} copy={pieceOf(part, chosen.copy)} />;
  return <WhichPiece title="Which one is spoiled?" onChoose={setChosen} {...{ pieces, onClose }} />;
}

const firstOf = (ops: readonly Operation[], op: Operation): number =>
  ops.findIndex((x) => x.part === op.part && copyOf(x.copy) === copyOf(op.copy));

/** A partition's two faces are one piece. */
const pieceOf = (part: Part, copy: string): string => (part.board?.made === 'partition' ? '1' : copyOf(copy));

type AgainProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly part: Part;
  readonly copy: string;
  readonly onClose: () => void;
};

function Again({ bench, list, part, copy, onClose }: AgainProps) {
  const { job, operations } = list.plan;
  const recut = recutOf(part, copy, {
    operations,
    // one that lies in a plan of the sheets is spoken for
    offcuts: job.offcuts.filter((o) => !job.sheets.some((sheet) => sheet.left === o.id && !sheet.gone)),
    done: list.doing.done,
    rough: roughAt(job),
    lies: liesIn(job, part),
    standing: job.standing,
  });
  const w = (x: Length) => writeLength(x, job.tape);
  const mates = recut.mates.flatMap((id) =>
    list.plan.parts.filter((p) => p.id === id).map((p) => partWord(p.name)),
  );
  const making = (job.parts[part.id]?.pieces[copy]?.recuts ?? 0) + 1;
  const spoil = (from?: Leftover) => {
    const taken: readonly Change[] = from ? editOffcut(from.id, { gone: true }) : [];
    const again = [...keepMark(list, part, copy), ...spoilPiece(part.id, copy, making)];
    void bench.act(`Spoiled: ${partWord(part.name)}`, [...again, ...taken]);
    onClose();
  };
  return (
    <Dock title={`${partWord(part.name)} again`} onClose={onClose}>
      <div class="body spoil">
        <CutsAgain recut={recut} w={w} />
        <p>
          Rough piece {w(recut.rough.long)} × {w(recut.rough.wide)}.
          {recut.offcuts.length === 0 && ' No offcut of that sheet on the list is big enough.'}
        </p>
        {mates.length > 0 && <p>{matesText(part.id, mates)}</p>}
        {recut.offcuts.slice(0, 2).map((o) => (
          <button key={o.id} type="button" class="btn full" onClick={() => spoil(o)}>
            Spoiled. Recut from the offcut {o.length && w(o.length)} × {o.width && w(o.width)}
          </button>
        ))}
        <Button label="Spoiled. Put it back on the list" look="main full" onTap={() => spoil()} />
      </div>
    </Dock>
  );
}

type CutsProps = { readonly recut: Recut; readonly w: (x: Length) => string };

/** What of it is cut again, by the set-ups that takes. */
const CutsAgain = ({ recut: { operations, builds }, w }: CutsProps) => (
  <>
    <p>
      {operations.length === 0
        ? 'Nothing was cut on it yet: a fresh piece starts from its rip.'
        : `Its own ${operations.length === 1 ? 'cut' : `${operations.length} cuts`} again, ${builds.filter((b) => !b.stands).length} to set up:`}
    </p>
    <ul class="again">
      {builds.map(({ op, places, stands }) => (
        <li key={op.id}>
          {setupTitle(op)} {op.setup.figure ? w(op.setup.figure.value) : ''}
          {places > 1 && ` and ${counted(places - 1, 'more place', 'more places')}`}
          {stands && ', stands now'}
        </li>
      ))}
    </ul>
  </>
);

/** A mirrored piece is cut against its mate; a front out of a blank breaks the run of the grain below it. */
const matesText = (part: string, mates: readonly string[]): string =>
  /~c\d+d\d+front$/.test(part)
    ? `The grain runs through one blank: cut ${mates.join(' and ')} again too, or live with the break.`
    : `Cut it against ${mates.join(' and ')}, not by the figure alone.`;
