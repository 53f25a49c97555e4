import type { Tape } from '../../length/tape';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { Icon } from '../../ui/icon';
import { NearRows } from '../../ui/when-near';
import { InlineMark } from '../shared/mark-and-rest';
import * as words from './words';
import './sheets.css';

type CutListProps = {
  readonly steps: readonly CutStep[];
  readonly now: CutStep | undefined;
  readonly done: (step: CutStep) => boolean;
  readonly tape: Tape;
  readonly onCut: (path: string) => void;
};

/** About how high a row is, px. */
const rowHigh = 72;

/** Every cut of a sheet in order; a tap stands at it. */
export function CutList({ steps, ...row }: CutListProps) {
  return (
    <section aria-label={words.cutsOfSheet}>
      <h2 class="sec pad-x">{words.cutsInOrder}</h2>
      <ol>
        <NearRows
          of={steps}
          id={({ path }) => path}
          high={rowHigh}
          draw={(step) => <CutRow {...row} step={step} />}
        />
      </ol>
    </section>
  );
}

type RowProps = Omit<CutListProps, 'steps'> & { readonly step: CutStep };

const CutRow = ({ step, now, done, tape, onCut }: RowProps) => (
  <button
    type="button"
    class={step === now ? 'nextset now' : 'nextset'}
    aria-current={step === now ? 'step' : undefined}
    onClick={() => onCut(step.path)}
  >
    <b class="cutrank">{done(step) ? <Icon name="tick" /> : step.no}</b>
    <span class="grow">{words.cutTitle(step)}</span>
    <InlineMark mark={step.figure} tape={tape} />
    {done(step) && <span class="sr">{words.isCut}</span>}
  </button>
);
