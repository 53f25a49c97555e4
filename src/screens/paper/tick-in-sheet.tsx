import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Breakdown } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import { cutBefore, cutsMade, type SheetCode, type SheetCuts } from '../../plan/sheet-codes';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { Blank } from '../../ui/blank';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import { LetterTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { Sentence } from '../shared/sentence';
import { nameIn } from '../shared/sheet-words';
import { tickCut } from '../shared/tick-cut';
import { cutSays, keeps, sheetName, sheetSize } from './list-words';
import * as words from './tick-in-words';
import './tick-in.css';

type SheetsProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly codes: readonly SheetCode[];
};

type SheetTickInProps = SheetsProps & {
  /** Where it is chosen of what the page is. */
  readonly which: ComponentChildren;
};

const cutsIn = (bench: Pick<Bench, 'folded'>, { sheet, steps }: SheetCode): SheetCuts => {
  const { ticks } = bench.folded.value;
  return { steps, done: ({ path }) => ticks.has(layOp(sheet.id, path)) };
};

/** The sheet after one that is not cut yet, else the first such. */
function nextOpen(bench: Bench, codes: readonly SheetCode[], after: number): SheetCode | undefined {
  const isOpen = (code: SheetCode) => {
    const { steps, done } = cutsIn(bench, code);
    return !steps.every(done);
  };
  return codes.slice(after + 1).find(isOpen) ?? codes.find(isOpen);
}

/** A page of a sheet: which one, a row for each of its cuts. */
export function SheetTickIn({ which, ...at }: SheetTickInProps) {
  const { bench, plan, found, codes } = at;
  const [id, setId] = useState(() => nextOpen(bench, codes, -1)?.sheet.id);
  const [asking, setAsking] = useState(false);
  const code = codes.find(({ sheet }) => sheet.id === id) ?? codes[0];
  if (!code) return null;
  const { tape } = plan.job;
  const nameOf = ({ sheet }: SheetCode) => sheetName(sheet, found.stocks.get(sheet.stock), tape);
  return (
    <>
      <main class={asking ? 'page docked' : 'page'}>
        {which}
        <Sentence label={words.whichSheet}>
          <p>
            {words.sheetOf}{' '}
            <Blank choice label={words.whichSheet} open={asking} onTap={() => setAsking(true)}>
              {nameOf(code)}
            </Blank>
          </p>
        </Sentence>
        <SheetInHand key={code.sheet.id} {...at} code={code} name={nameOf(code)} />
      </main>
      {!asking && <AllOfIt {...at} code={code} name={nameOf(code)} onNext={setId} nameOf={nameOf} />}
      {asking && (
        <ChoiceDock
          title={words.whichSheet}
          choices={codes.map((one) => ({
            value: one.sheet.id,
            label: nameOf(one),
            hint: words.signs(one.check),
          }))}
          chosen={code.sheet.id}
          onChoose={(value) => {
            setId(value);
            setAsking(false);
          }}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}

type CodeProps = SheetsProps & { readonly code: SheetCode; readonly name: string };

/** What stands on the page, to compare, and a row for each box. */
function SheetInHand({ bench, plan, found, code, name }: CodeProps) {
  const [says, setSays] = useState<string>();
  const { sheet, check, steps } = code;
  const stock = found.stocks.get(sheet.stock);
  const cuts = cutsIn(bench, code);
  const tick = async (step: CutStep) => {
    setSays(undefined);
    const { refused } = await tickCut({ bench, plan, sheet, stock, cuts }, step);
    if (refused) setSays(refused);
  };
  return (
    <section aria-label={name}>
      <h2 class="sec pad-x">{name}</h2>
      <p class="pad-x note">{sheetSize(sheet, stock, plan.job.tape)}</p>
      <p class="pad-x note pagesays">{words.compareSheet(check)}</p>
      {says && (
        <p class="pad-x wrongline" role="alert">
          {says}
        </p>
      )}
      <ul>
        {steps.map((step) => (
          <CutRow key={step.path} {...{ bench, plan, found, code, cuts, step }} onTick={tick} />
        ))}
      </ul>
      <button type="button" class="nextset" onClick={() => bench.go({ at: 'layout', id: sheet.id })}>
        <span class="grow">
          <b>{words.toSheet}</b>
          <span class="s muted block">{words.toSheetSays}</span>
        </span>
      </button>
    </section>
  );
}

type RowProps = Omit<CodeProps, 'codes' | 'name'> & {
  readonly cuts: SheetCuts;
  readonly step: CutStep;
  readonly onTick: (step: CutStep) => Promise<void>;
};

const CutRow = ({ bench, plan, found, code, cuts, step, onTick }: RowProps) => {
  const { tape } = plan.job;
  const own = code.codes.get(step.path) ?? '';
  const before = cutBefore(cuts, step);
  const says = cutSays(step, tape);
  return (
    <li class="nextset">
      <LetterTick
        letter={own}
        label={`${own}, ${says}`}
        ticked={cuts.done(step)}
        blocked={before !== undefined}
        saving={bench.saving.value.has(layOp(code.sheet.id, step.path))}
        onTap={() => !before && void onTick(step)}
      />
      <span class="grow">
        <b>{says}</b>
        <span class="s muted block">{keeps(step, { tape, name: nameIn(found) })}</span>
        {before && <span class="s block">{words.cutFirst(code.codes.get(before.path) ?? '')}</span>}
      </span>
    </li>
  );
};

type AllProps = CodeProps & {
  readonly nameOf: (code: SheetCode) => string;
  readonly onNext: (sheet: string) => void;
};

/** Every cut of the page at a tap, in their order, as one act. Then the next sheet. */
function AllOfIt({ bench, codes, code, name, nameOf, onNext }: AllProps) {
  const { steps, done } = cutsIn(bench, code);
  const open = steps.filter((step) => !done(step));
  const next = nextOpen(bench, codes, codes.indexOf(code));
  if (open.length > 0)
    return (
      <div class="fixedbar">
        <Button
          look="main full"
          label={words.all(open.length)}
          onTap={() => void bench.act(words.sheetAct(name, open.length), cutsMade(code.sheet, open))}
        />
      </div>
    );
  return (
    <div class="fixedbar">
      {next ? (
        <Button look="main full" label={words.nextSheet(nameOf(next))} onTap={() => onNext(next.sheet.id)} />
      ) : (
        <p class="note">{words.allDone}</p>
      )}
    </div>
  );
}
