import type { Plan } from '../../plan/plan';
import type { LayNotes, RoughPiece } from '../../trade/sheets/pieces';
import { Chip } from '../../ui/button';
import { Inline } from '../../ui/mixed';
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

/** The pieces part by part: rough size, and how they may lie. */
export const PieceList = ({ pieces, ...props }: ListProps) => (
  <ul aria-label={words.piecesTitle}>
    {[...new Set(pieces.map((p) => p.part))].map((part) => {
      const own = pieces.filter((p) => p.part === part);
      return own[0] && <PartRow key={part} {...props} part={part} first={own[0]} count={own.length} />;
    })}
  </ul>
);

type RowProps = Omit<ListProps, 'pieces'> & {
  readonly part: string;
  /** The first piece of the part, and how many there are. */
  readonly first: RoughPiece;
  readonly count: number;
};

function PartRow({ bench, plan, stick, onOpen, part, first, count }: RowProps) {
  const { tape } = plan.job;
  const notes: LayNotes = plan.job.parts[part] ?? {};
  const name = partWord(first.name.of);
  return (
    <li class="piecerow">
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
    </li>
  );
}
