import { useState } from 'preact/hooks';
import { editBank, editFitted } from '../../job/edits';
import { equals, isNegative, type Length, negate, subtract } from '../../length/length';
import { fineOf, markAt, type Tape } from '../../length/tape';
import { type Bank, columnNo, fittedNo } from '../../trade/fronts/bank';
import { gapWarning } from '../../trade/fronts/fitted';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { ChoiceDock } from '../../ui/dock';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { askShims } from '../shared/stack-words';
import { goesChoices } from './asks';
import { plannedReach, readingOf, type Taken, takenOff, takenUp } from './column-of';
import { pileText, sidesText } from './gap-words';
import { noShims, pileBefore } from './piles';
import './bank.css';
import '../shared/change-list.css';

type FittedProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly column: WorkedColumn;
  /** The front in hand; undefined when all are on. */
  readonly no: number | undefined;
};

/** The as-built panel: calipers round the front just fitted, where its difference goes, and how much each gets. */
export function AsFitted({ bench, bank, column, no }: FittedProps) {
  if (no === undefined) return <AllOn bench={bench} bank={bank} column={column} />;
  if (!column.opening.measured) return <NotMeasured bench={bench} bank={bank} />;
  return <Calipers {...{ bench, bank, column, no }} />;
}

const NotMeasured = ({ bench, bank }: Pick<FittedProps, 'bench' | 'bank'>) => (
  <section class="asbuilt" aria-label="As built">
    <h2>Opening not measured yet</h2>
    <p class="pad8">High at both uprights, wide in front and at the back, once the case stands.</p>
    <button type="button" class="btn main full" onClick={() => bench.go({ at: 'opening', id: bank.id })}>
      <Icon name="measure" />
      Measure the opening
    </button>
  </section>
);

function AllOn({ bench, bank, column }: Pick<FittedProps, 'bench' | 'bank' | 'column'>) {
  const tape = bench.job.value?.tape ?? '1/32';
  const [left, right] = (['left', 'right'] as const).map((side) => lastGap(bank, column, side));
  return (
    <section class="asbuilt" aria-label="As built">
      <h2>{bank.count === 1 ? 'The front is on' : `All ${bank.count} fronts are on`}</h2>
      {bank.fit === 'inset' && left && right && <p>The last gap: {sidesText(left, right, tape)}.</p>}
      <button type="button" class="btn main full" onClick={() => bench.go({ at: 'cuts' })}>
        On to the pulls
      </button>
    </section>
  );
}

/** What is left between the last front and the end of the opening, held or not. */
function lastGap(bank: Bank, column: WorkedColumn, side: 'left' | 'right'): Length {
  const no = bank.order === 'down' ? bank.count : 1;
  return subtract(column.opening[side], plannedReach(bank, column, { no, side }));
}

type Open = 'left' | 'right' | 'goes' | undefined;

function Calipers({ bench, bank, column, no }: FittedProps & { readonly no: number }) {
  const [open, setOpen] = useState<Open>();
  const tape = bench.job.value?.tape ?? '1/32';
  const reading = readingOf(bank, column.no, no);
  const end = bank.order === 'down' ? 'top' : 'bottom';
  const edge = bank.order === 'down' ? 'lower' : 'upper';
  const [planned, atRight] = (['left', 'right'] as const).map(
    (side) => markAt(plannedReach(bank, column, { no, side }), tape).value,
  );
  const fresh = isFresh(bank, column.no, no);
  const on = fitOrder(bank).indexOf(no) < column.fitted;
  const taken = fresh ? takenUp(bench, bank, { column: column.no, no }) : undefined;
  const at = { bank: bank.id, column: column.no, front: no };
  return (
    <>
      <section class="asbuilt" aria-label={`Front ${no}, as built`}>
        <h2>
          Front {no}, {edge} edge from the {end}
        </h2>
        <p class="s muted pad8">
          planned {planned && <Inline value={planned} tape={tape} />}
          {planned && atRight && !equals(planned, atRight) && (
            <>
              {' '}
              left, <Inline value={atRight} tape={tape} /> right
            </>
          )}
          {!taken && (on ? ', in use' : <Piles {...{ bench, bank, column, no }} />)}
        </p>
        <div class="jaws">
          {(['left', 'right'] as const).map((side) => (
            <button key={side} type="button" class="val" onClick={() => setOpen(side)}>
              <span class="s">{side === 'left' ? 'Left' : 'Right'}</span>
              {reading[side] ? <Given value={reading[side]} /> : <span class="dots">····</span>}
            </button>
          ))}
        </div>
        {taken ? (
          <Difference {...{ bench, bank, taken, tape }} onGoes={() => setOpen('goes')} />
        ) : (
          <span class="runacts">
            {on && (
              <button
                type="button"
                class="btn"
                onClick={() =>
                  void bench.act(`Front ${no} taken off`, takenOff(bank, { column: column.no, no }))
                }
              >
                Take it off again
              </button>
            )}
            <button
              type="button"
              class="btn main grow"
              onClick={() => bench.go({ at: 'one', id: bank.id, what: 'fit' })}
            >
              Fit one at a time
            </button>
          </span>
        )}
      </section>
      {(open === 'left' || open === 'right') && (
        <KeySheet
          key={open}
          title={`Front ${no}, ${open}: ${edge} edge from the ${end}`}
          tape={tape}
          fill="length"
          now={reading[open]}
          onLength={(value) =>
            void bench.act(`Front ${no} measured, ${open}`, editFitted(at, { [open]: value }))
          }
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'goes' && (
        <ChoiceDock
          title="Where the difference goes"
          choices={goesChoices}
          chosen={bank.goes}
          onChoose={(goes: Bank['goes']) => {
            void bench.act('Where the difference goes', editBank(bank.id, { goes }));
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

/** Whether what was read is not in use yet. */
function isFresh(bank: Bank, column: number, no: number): boolean {
  const { left, right, usedLeft, usedRight } = fittedNo(columnNo(bank, column), no);
  const differs = (now: Length | undefined, then: Length | undefined) =>
    now !== undefined && !(then && equals(now, then));
  return differs(left, usedLeft) || differs(right, usedRight);
}

function Piles({ bench, bank, column, no }: FittedProps & { readonly no: number }) {
  const piles = pileBefore(bench, bank, column, no);
  if (!piles) return noShims(bench.settings.value) ? askShims.beside : null;
  return <>. Shims before it: {pileText(piles)}</>;
}

const refusals = {
  'past-the-end': 'That lies past the opening: read it again.',
  behind: 'That lies before the front already on: read it again.',
  'no-front':
    'So much cannot come off: nothing of a front would be left. Read it again, or let the gaps give.',
} as const;

type DifferenceProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly taken: Taken;
  readonly tape: Tape;
  readonly onGoes: () => void;
};

/** What is left for the gaps, what would hold them as wanted, and the one tap that uses it. */
function Difference({ bench, bank, taken, tape, onGoes }: DifferenceProps) {
  const { ahead, heights } = taken.column;
  const left = ahead?.left;
  const right = ahead?.right;
  const toGo = bank.count - taken.column.fitted;
  const shown = goesChoices.find((c) => c.value === bank.goes)?.label;
  const worst = left && gapWarning(left.each);
  const worstRight = right && gapWarning(right.each);
  return (
    <>
      {left && (
        <p class={worst || worstRight ? 'lit' : ''}>
          {toGo > 0 ? `${left.gaps} ${left.gaps === 1 ? 'gap' : 'gaps'} to go: ` : 'The last gap: '}
          {sidesText(left.each, right?.each ?? left.each, tape)}.
        </p>
      )}
      {taken.trims.off.size > 0 && bank.goes === 'fronts' && (
        <ul class="changes">
          {[...taken.trims.off].map(([no, off]) => (
            <li key={no}>
              <span class="grow">
                Front {no} {isNegative(off) ? 'taller by' : 'gives'} {w(isNegative(off) ? negate(off) : off)}
              </span>
              <span class="nb">
                <Inline value={heights[no - 1] ?? off} tape={fineOf(tape)} /> →{' '}
                <Inline value={taken.trims.heights.get(no) ?? off} tape={fineOf(tape)} />
              </span>
            </li>
          ))}
        </ul>
      )}
      {taken.trims.off.size > 0 && bank.goes !== 'fronts' && ahead && (worst || worstRight) && (
        <p class="s">
          {isNegative(ahead.trim)
            ? `The fronts left may be ${w(negate(ahead.trim))} taller in all.`
            : `To keep the gaps as wanted, take ${w(ahead.trim)} in all off the fronts left.`}
        </p>
      )}
      {toGo > 0 && (
        <button type="button" class="share" onClick={onGoes}>
          <span>
            Difference goes to <b>{shown}</b>
          </span>
          <Icon name="down" />
        </button>
      )}
      {taken.refused ? (
        <p class="wrongline">
          <Icon name="warn" />
          {refusals[taken.refused]}
        </p>
      ) : (
        <button
          type="button"
          class="btn main full"
          onClick={() => void bench.act(`Front fitted, ${bank.name || 'drawers'}`, taken.changes)}
        >
          {toGo > 0 ? 'Use it, next front' : 'Use it, all are on'}
        </button>
      )}
    </>
  );
}
