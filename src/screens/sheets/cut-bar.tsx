import type { Tape } from '../../length/tape';
import type { Breakdown } from '../../plan/breakdown';
import { cutBefore } from '../../plan/sheet-codes';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { cutCaution } from '../shared/cut-caution';
import { CutPanel } from './cut-panel';
import type { Cuts } from './use-cuts';
import * as words from './words';
import './layout.css';

type BarProps = {
  readonly bench: Bench;
  readonly found: Breakdown;
  readonly tape: Tape;
  readonly stick: boolean;
  readonly cuts: Cuts;
  /** What came of the last tap, where that is to be said. */
  readonly says: string | undefined;
  readonly at: (path: string | undefined) => void;
  readonly onTick: (step: CutStep) => Promise<void>;
  readonly onWrong: (step: CutStep) => void;
};

/** The cut in hand, docked below the sheet: what it is, what can hurt, and what is done with a tap. */
export function CutBar(props: BarProps) {
  const { bench, found, tape, stick, cuts, says } = props;
  const { steps, now, done } = cuts;
  const name = words.nameIn(found);
  return (
    <div class="cutbar">
      {says && (
        <p class="pad-x saysline" role="alert">
          {says}
        </p>
      )}
      {now ? (
        <CutPanel {...{ step: now, done: done(now), tape, name, saws: found.saws, stick }} />
      ) : (
        <p class="pad-x empty-line">{steps.length === 0 ? words.nothingToCut : words.allCut}</p>
      )}
      <div class="fixedbar three">
        <Caution bench={bench} code={cutCaution(now, found, stick)} />
        <Actions {...props} />
      </div>
    </div>
  );
}

/** Back, a cut gone wrong, and the one big action. */
function Actions({ bench, cuts, at, onTick, onWrong }: BarProps) {
  const { steps, now, next, done } = cuts;
  const k = now ? steps.indexOf(now) : 0;
  const before = now && cutBefore(cuts, now);
  return (
    <>
      <button type="button" class="btn" disabled={k === 0} onClick={() => at(steps[k - 1]?.path)}>
        {words.back}
      </button>
      {now && !done(now) && !before && <Button label={words.wrongCut} onTap={() => onWrong(now)} />}
      {now ? (
        <Button
          label={mainAction(cuts, now)}
          look="main"
          onTap={() => {
            if (before) at(before.path);
            else if (done(now) && next) at(undefined);
            else void onTick(now);
          }}
        />
      ) : (
        <Button label={words.toSheets} look="main" onTap={() => bench.go({ at: 'sheets' })} />
      )}
    </>
  );
}

/** What the big button says. */
function mainAction(cuts: Cuts, now: CutStep): string {
  const before = cutBefore(cuts, now);
  if (before) return words.firstCut(before.no);
  if (!cuts.done(now)) return words.cutAndNext(now);
  return cuts.next ? words.toNextCut : words.notAfterAll;
}
