import { useState } from 'preact/hooks';
import { fromStored, toStored } from '../../length/stored';
import type { Tape } from '../../length/tape';
import { sheetsOf } from '../../plan/measured-sheets';
import { Bar, BarButton } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { useClose } from '../../ui/close';
import { ChoiceDock } from '../../ui/dock';
import { KeySheet } from '../../ui/key-sheet';
import { Given } from '../../ui/mixed';
import type { Desk } from './desk';
import { type FigureState, fillBlank, undoFigure } from './figure.model';
import { guideSum, stripsSum } from './sheet-sums';
import { burnedSum, diagonalSum, otherEndSum, partsSum, squareSum } from './sum-results';
import type { Blanks, Piece, SumRule } from './sum-rule';

export type Sum = 'other-end' | 'parts' | 'diagonal' | 'square' | 'burned' | 'strips' | 'guide';

const kinds: readonly { readonly value: Sum; readonly label: string; readonly hint: string }[] = [
  { value: 'other-end', label: 'From the other end', hint: 'the same mark, measured back' },
  { value: 'parts', label: 'Equal parts', hint: 'with dividers, or kerfs, between' },
  { value: 'diagonal', label: 'Diagonal', hint: 'of a width and a height' },
  { value: 'square', label: 'Square up', hint: 'two diagonals: push how much, till what' },
  { value: 'strips', label: 'Strips ripped from a sheet', hint: 'how many, and what is over' },
  { value: 'guide', label: 'Guide for the saw', hint: 'where its edge goes, on either side of the line' },
  { value: 'burned', label: 'Burned tape', hint: 'started at an inch, or the tape’s own body' },
];

export const SumsDock = ({
  onChoose,
  onClose,
}: {
  readonly onChoose: (kind: Sum) => void;
  readonly onClose: () => void;
}) => (
  <ChoiceDock title="Quick sums" choices={kinds} chosen={undefined} onChoose={onChoose} onClose={onClose} />
);

const rules: Record<Sum, SumRule> = {
  'other-end': otherEndSum,
  parts: partsSum,
  diagonal: diagonalSum,
  square: squareSum,
  burned: burnedSum,
  strips: stripsSum,
  guide: guideSum,
};

type SumPageProps = {
  readonly kind: Sum;
  readonly desk: Desk;
  readonly leave: () => void;
};

/** A quick sum as one sentence with blanks; the keys dock below a tapped blank. */
export function SumPage({ kind, desk: { state, bench, set }, leave }: SumPageProps) {
  const rule = rules[kind];
  const { tape } = bench.settings.value;
  const [open, setOpen] = useState<Exclude<Piece, string>>();
  const at = (name: string) => `${kind}.${name}`;
  const blanks = blanksOf(state, at);
  const put = (name: string, text: string | undefined) => set(fillBlank(state, at(name), text));
  useClose(leave);
  return (
    <>
      <Bar title={rule.title} leave={{ label: 'Figure', onTap: leave }}>
        <BarButton
          icon="undo"
          label="Undo"
          disabled={state.undo.length === 0}
          onTap={() => set(undoFigure(state))}
        />
      </Bar>
      <main class="page sum">
        <p class="fillin">
          {rule.sentence.map((piece) =>
            typeof piece === 'string' ? (
              piece
            ) : (
              <Blank
                key={piece.blank}
                label={piece.label}
                open={open?.blank === piece.blank}
                onTap={() => setOpen(piece)}
              >
                {shown(blanks, piece, tape)}
              </Blank>
            ),
          )}
        </p>
        <div class="pad-x result" aria-live="polite">
          {rule.result(blanks, tape)}
        </div>
      </main>
      {open && (
        <KeySheet
          key={open.blank}
          title={open.label}
          tape={tape}
          fill={open.count ? 'count' : 'length'}
          now={open.count ? undefined : blanks.length(open.blank)}
          nowCount={open.count ? blanks.count(open.blank) : undefined}
          sheets={sheetsOf(bench.job.value).map((s) => ({ name: s.name, thickness: s.thickest }))}
          onLength={(value) => put(open.blank, value && toStored(value))}
          onCount={(value) => put(open.blank, value === undefined ? undefined : `${value}`)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

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

function shown(blanks: Blanks, piece: Exclude<Piece, string>, _tape: Tape) {
  if (piece.count) return blanks.count(piece.blank);
  const value = blanks.length(piece.blank);
  return value && <Given value={value} />;
}
