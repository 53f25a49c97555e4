import type { Plan } from '../../plan/plan';
import type { LayNotes, RoughPiece } from '../../trade/sheets/pieces';
import { Chip } from '../../ui/button';
import { Inline } from '../../ui/mixed';
import { NearRows } from '../../ui/when-near';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { partWord } from '../shared/part-words';
import { liesAsk, shareAsk } from './asks';
import * as words from './words';
import './sheets.css';

type ListProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly plan: Plan;
  readonly pieces: readonly RoughPiece[];
  readonly stick: boolean;
  readonly onOpen: (ask: Ask) => void;
};

/** About how high a row is, px: of sticks, and of sheets, with how each lies. */
const [stickHigh, sheetHigh] = [72, 130];

/** The pieces part by part: rough size, and how they may lie. */
export function PieceList({ pieces, ...props }: ListProps) {
  const byPart = new Map<string, RoughPiece[]>();
  for (const piece of pieces) byPart.set(piece.part, [...(byPart.get(piece.part) ?? []), piece]);
  return (
    <ul aria-label={words.piecesTitle}>
      <NearRows
        of={[...byPart.values()]}
        id={([first]) => first?.part ?? ''}
        high={props.stick ? stickHigh : sheetHigh}
        draw={([first, ...others]) => first && <PartRow {...props} first={first} count={1 + others.length} />}
      />
    </ul>
  );
}

type RowProps = Omit<ListProps, 'pieces'> & {
  /** The first piece of a part, and how many there are. */
  readonly first: RoughPiece;
  readonly count: number;
};

function PartRow({ bench, plan, stick, onOpen, first, count }: RowProps) {
  const { tape } = plan.job;
  const { part } = first;
  const notes: LayNotes = plan.job.parts[part] ?? {};
  const name = partWord(first.name.of);
  return (
    <div class="piecerow">
      <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: part })}>
        <span class="grow">
          <b>{name}</b>
          <span class="s muted block">{words.rough(count)}</span>
        </span>
        <span class="roughsize">
          <Inline value={first.long} tape={tape} /> × <Inline value={first.wide} tape={tape} />
        </span>
      </button>
      {!stick && (
        <div class="runacts">
          <Chip label={words.liesWords[first.lies]} onTap={() => onOpen(liesAsk(part, name, first.lies))} />
          <Chip
            label={words.shareWords(first, notes.share)}
            onTap={() => onOpen(shareAsk(part, name, notes))}
          />
        </div>
      )}
    </div>
  );
}
