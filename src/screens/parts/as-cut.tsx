import { useState } from 'preact/hooks';
import { editPiece } from '../../job/edits';
import type { Job } from '../../job/job';
import { equals, type Length } from '../../length/length';
import { recutsOf } from '../../plan/recuts';
import type { Part } from '../../trade/carcass/part';
import { piecesToCut } from '../../trade/setups/part-operations';
import { Dots } from '../../ui/blank';
import { Given } from '../../ui/given';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { exactly } from '../shared/exact-words';
import { workWord } from '../shared/part-words';
import * as words from './words';

const mostShown = 12;

type Field = keyof typeof words.trueSize;
type Open = { readonly copy: string; readonly field: Field };

type AsCutProps = { readonly bench: Pick<Bench, 'act'>; readonly part: Part; readonly job: Job };

/** A piece that came out otherwise than wanted: its true size, and what to do about it. */
export function AsCut({ bench, part, job }: AsCutProps) {
  const [open, setOpen] = useState<Open>();
  const notes = job.parts[part.id]?.pieces;
  const pieces = piecesToCut(part, recutsOf(job, part.id)).slice(0, mostShown);
  const off = pieces.filter((p) => isOff(part, notes?.[p.id])).map((p) => workWord(p.name));
  const save = ({ copy, field }: Open, value: Length | undefined) =>
    void bench.act(
      words.measured(part, value ? exactly(value) : ''),
      editPiece(part.id, copy, { [field]: value }),
    );
  return (
    <section aria-label={words.asCut}>
      <h2 class="sec pad-x">{words.asCutTitle}</h2>
      {off.length > 0 && <CameOut pieces={off} />}
      <ul>
        {pieces.map(({ id, name }) => (
          <PieceRow
            key={id}
            name={workWord(name)}
            sizes={notes?.[id]}
            onTap={(field) => setOpen({ copy: id, field })}
          />
        ))}
      </ul>
      {open && (
        <KeySheet
          key={`${open.copy}${open.field}`}
          title={words.trueSize[open.field].asks}
          tape="1/64"
          fill="length"
          now={notes?.[open.copy]?.[open.field]}
          onLength={(value) => save(open, value)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

const CameOut = ({ pieces }: { readonly pieces: readonly string[] }) => (
  <p class="pad-x wrongline">
    <Icon name="warn" />
    {words.cameOut(pieces)}
  </p>
);

/** The sizes a piece was found to have. */
type TrueSizes = { readonly [K in Field]?: Length | undefined };

/** Whether a piece was found to have another size than its part is cut to. */
const isOff = ({ length, width }: Part, sizes: TrueSizes | undefined): boolean =>
  (sizes?.asLength !== undefined && !equals(sizes.asLength, length.mark.value)) ||
  (sizes?.asWidth !== undefined && !equals(sizes.asWidth, width.mark.value));

type PieceProps = {
  readonly name: string;
  readonly sizes: TrueSizes | undefined;
  readonly onTap: (field: Field) => void;
};

const PieceRow = ({ name, sizes, onTap }: PieceProps) => (
  <li class="nextset ascut">
    <span class="grow">{name}</span>
    {(['asLength', 'asWidth'] as const).map((field) => {
      const value = sizes?.[field];
      return (
        <button
          key={field}
          type="button"
          class="chip"
          aria-label={`${name}, ${words.trueSize[field].says}`}
          onClick={() => onTap(field)}
        >
          {words.trueSize[field].chip} {value ? <Given value={value} /> : <Dots />}
        </button>
      );
    })}
  </li>
);
