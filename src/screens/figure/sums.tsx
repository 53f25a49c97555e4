import { useState } from 'preact/hooks';
import type { Length } from '../../length/length';
import { fromStored, toStored } from '../../length/stored';
import type { Tape } from '../../length/tape';
import { sheetsOf } from '../../plan/measured-sheets';
import { Bar, BarButton } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { useClose } from '../../ui/close';
import { ChoiceDock } from '../../ui/dock';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Desk } from './desk';
import { fillBlank, undoFigure } from './figure.model';
import type { FigureState } from './figure.state';
import { guideSum, stripsSum } from './sheet-sums';
import { burnedSum, diagonalSum, otherEndSum, partsSum, squareSum } from './sum-results';
import type { Blanks, Piece, SumRule } from './sum-rule';
import { back, list } from './sum-words';
import { undo } from './words';
import './sums.css';

const kinds = ['other-end', 'parts', 'diagonal', 'square', 'strips', 'guide', 'burned'] as const;
export type Sum = (typeof kinds)[number];

const rules: Record<Sum, SumRule> = {
  'other-end': otherEndSum,
  parts: partsSum,
  diagonal: diagonalSum,
  square: squareSum,
  burned: burnedSum,
  strips: stripsSum,
  guide: guideSum,
};

const choices = kinds.map((value) => ({ value, label: rules[value].title, hint: rules[value].hint }));

type SumsDockProps = { readonly onChoose: (kind: Sum) => void; readonly onClose: () => void };

export const SumsDock = ({ onChoose, onClose }: SumsDockProps) => (
  <ChoiceDock title={list} choices={choices} chosen={undefined} onChoose={onChoose} onClose={onClose} />
);

type SumPageProps = {
  readonly kind: Sum;
  readonly desk: Desk;
  readonly leave: () => void;
};

/** A quick sum as one sentence with blanks; the keys dock below a tapped blank. */
export function SumPage({ kind, desk: { state, bench, set }, leave }: SumPageProps) {
  const rule = rules[kind];
  const { tape } = bench.settings.value;
  const [open, setOpen] = useState<BlankPiece>();
  const at = (name: string) => `${kind}.${name}`;
  const blanks = blanksOf(state, at);
  useClose(leave);
  return (
    <>
      <Bar title={rule.title} leave={{ label: back, onTap: leave }}>
        <BarButton
          icon="undo"
          label={undo}
          disabled={state.undo.length === 0}
          onTap={() => set(undoFigure(state))}
        />
      </Bar>
      <main class="page sum">
        <Sentence sentence={rule.sentence} blanks={blanks} open={open} onOpen={setOpen} />
        <div class="pad-x result rests" aria-live="polite">
          {rule.result(blanks, tape)}
        </div>
      </main>
      {open && (
        <BlankSheet
          key={open.blank}
          {...{ open, blanks, tape }}
          sheets={sheetsOf(bench.job.value).map((s) => ({ name: s.name, thickness: s.thickest }))}
          put={(text) => set(fillBlank(state, at(open.blank), text))}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type BlankPiece = Exclude<Piece, string>;

type SentenceProps = {
  readonly sentence: readonly Piece[];
  readonly blanks: Blanks;
  readonly open: BlankPiece | undefined;
  readonly onOpen: (piece: BlankPiece) => void;
};

const Sentence = ({ sentence, blanks, open, onOpen }: SentenceProps) => (
  <p class="fillin">
    {sentence.map((piece) =>
      typeof piece === 'string' ? (
        piece
      ) : (
        <Blank
          key={piece.blank}
          length={!piece.count}
          label={piece.label}
          open={open?.blank === piece.blank}
          onTap={() => onOpen(piece)}
        >
          {shown(blanks, piece)}
        </Blank>
      ),
    )}
  </p>
);

type BlankSheetProps = {
  readonly open: BlankPiece;
  readonly blanks: Blanks;
  readonly tape: Tape;
  readonly sheets: readonly { readonly name: string; readonly thickness: Length }[];
  readonly put: (text: string | undefined) => void;
  readonly onClose: () => void;
};

/** The keys a blank is filled by. */
const BlankSheet = ({ open, blanks, tape, sheets, put, onClose }: BlankSheetProps) => (
  <KeySheet
    title={open.label}
    tape={tape}
    fill={open.count ? 'count' : 'length'}
    now={open.count ? undefined : blanks.length(open.blank)}
    nowCount={open.count ? blanks.count(open.blank) : undefined}
    sheets={sheets}
    onLength={(value) => put(value && toStored(value))}
    onCount={(value) => put(value === undefined ? undefined : `${value}`)}
    onClose={onClose}
  />
);

function blanksOf(state: FigureState, at: (name: string) => string): Blanks {
  return {
    length: (name) => {
      const found = fromStored(state.sums[at(name)] ?? '');
      return found.ok ? found.value : undefined;
    },
    count: (name) => {
      const text = state.sums[at(name)];
      return text === undefined ? undefined : Number(text);
    },
  };
}

function shown(blanks: Blanks, { blank, count }: BlankPiece) {
  if (count) return blanks.count(blank);
  const value = blanks.length(blank);
  return value && <Given value={value} />;
}
