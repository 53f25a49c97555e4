import { useState } from 'preact/hooks';
import { equals, subtract } from '../../length/length';
import type { Checklist } from '../../plan/checklist';
import { recutsOf } from '../../plan/recuts';
import type { Part } from '../../trade/carcass/part';
import { piecesToCut } from '../../trade/setups/part-pieces';
import { Dots } from '../../ui/blank';
import { Given } from '../../ui/given';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { MatchDock, type Out } from '../shared/came-out';
import { cameOut, matchOrRecut, trueSize } from '../shared/came-out-words';
import { workWord } from '../shared/part-words';
import { type Asked, fieldOf, TrueSizeDock } from '../shared/true-size';
import * as words from './words';

const mostShown = 12;
const ways = ['length', 'width'] as const;

type AsCutProps = { readonly bench: Bench; readonly part: Part; readonly list: Checklist };

/** A piece that came out otherwise than wanted: its true size, and what to do about it. */
export function AsCut({ bench, part, list }: AsCutProps) {
  const [asked, setAsked] = useState<Asked>();
  const [out, setOut] = useState<Out>();
  const { job } = list.plan;
  const notes = job.parts[part.id]?.pieces;
  const pieces = piecesToCut(part, recutsOf(job, part.id))
    .slice(0, mostShown)
    .map(({ id, name }) => ({ part, copy: id, piece: workWord(name), sizes: notes?.[id] }));
  const off = pieces.flatMap((piece) => ways.flatMap((way) => outOf(piece, way)));
  return (
    <section aria-label={words.asCut}>
      <h2 class="sec pad-x">{words.asCutTitle}</h2>
      {off.map((one) => (
        <CameOut key={`${one.copy}${one.way}`} out={one} onTap={() => setOut(one)} />
      ))}
      <ul>
        {pieces.map((piece) => (
          <PieceRow key={piece.copy} {...piece} onTap={(way) => setAsked({ ...piece, way })} />
        ))}
      </ul>
      {asked && (
        <TrueSizeDock
          key={`${asked.copy}${asked.way}`}
          {...{ bench, list, asked }}
          onClose={() => setAsked(undefined)}
        />
      )}
      {out && <MatchDock {...{ bench, list, out }} onClose={() => setOut(undefined)} />}
    </section>
  );
}

/** The sizes a piece was found to have. */
type TrueSizes = { readonly [K in (typeof fieldOf)[keyof typeof fieldOf]]?: Out['size'] | undefined };

type OfPiece = Omit<Asked, 'way'> & { readonly sizes: TrueSizes | undefined };

/** A piece found to have another size than its part is cut to. */
function outOf({ part, copy, piece, sizes }: OfPiece, way: Out['way']): readonly Out[] {
  const size = sizes?.[fieldOf[way]];
  return size && !equals(size, part[way].mark.value) ? [{ part, copy, piece, way, size }] : [];
}

const CameOut = ({ out, onTap }: { readonly out: Out; readonly onTap: () => void }) => (
  <button type="button" class="nextset" onClick={onTap}>
    <span class="grow">
      <span class="wrongline">
        <Icon name="warn" />
        {cameOut(out.piece, out.way, subtract(out.size, out.part[out.way].mark.value))}
      </span>
      <span class="s muted block">{matchOrRecut}</span>
    </span>
    <Icon name="next" />
  </button>
);

type PieceProps = OfPiece & { readonly onTap: (way: Out['way']) => void };

const PieceRow = ({ piece, sizes, onTap }: PieceProps) => (
  <li class="nextset ascut">
    <span class="grow">{piece}</span>
    {ways.map((way) => {
      const value = sizes?.[fieldOf[way]];
      return (
        <button
          key={way}
          type="button"
          class="chip"
          aria-label={`${piece}, ${trueSize[way].says}`}
          onClick={() => onTap(way)}
        >
          {trueSize[way].chip} {value ? <Given value={value} /> : <Dots />}
        </button>
      );
    })}
  </li>
);
