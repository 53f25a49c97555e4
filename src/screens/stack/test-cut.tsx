import { useState } from 'preact/hooks';
import { editRecipe } from '../../job/edits';
import type { Job } from '../../job/job';
import { type Length, subtract, zero } from '../../length/length';
import type { StackStock } from '../../trade/stacks/pieces';
import { type Stack, stackFor } from '../../trade/stacks/stack';
import { correct, learnCorrection, type TestCut } from '../../trade/stacks/test-cut';
import { Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { keepLists, listsOf } from '../shared/shop-lists';
import { correctionText } from '../shared/stack-words';
import { useLength, useStays } from '../shared/stays';
import * as words from './words';
import './stack.css';

const cuts: readonly TestCut[] = ['stack', 'one-wall', 'slot-both-sides', 'wood-both-sides', 'depth'];

type TestProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly build: string;
  /** Width wanted, inches. */
  readonly want: Length;
  readonly set: StackStock;
  /** Depth of the cut, inches. */
  readonly height: Length | undefined;
};

/** Reads X, wants Y: how much, and which way. */
export function Test({ bench, job, build, want, set, height }: TestProps) {
  const own = `${job.id} ${build}`;
  const [cut, setCut] = useStays(`test cut ${own}`, cuts, 'stack');
  const [open, setOpen] = useState<'got' | 'want'>();
  const [got, setGot] = useLength(`test cut measures ${own}`);
  const [other, setOther] = useLength(`test cut wanted ${own}`);
  const wanted = other ?? (cut === 'depth' ? (height ?? want) : want);
  const measured = (value: Length | undefined) => {
    setGot(value);
    void bench.act(words.measured, editRecipe(build, { got: value }));
  };
  return (
    <section class="testcut" aria-label={words.testCut}>
      <h2 class="sec pad-x">{words.inScrap}</h2>
      <CutKind cut={cut} onCut={setCut} />
      <button type="button" class="nextset" onClick={() => setOpen('want')}>
        <span class="grow">{words.want}</span>
        <Given value={wanted} />
      </button>
      <button type="button" class="nextset" onClick={() => setOpen('got')}>
        <span class="grow">{words.measures}</span>
        {got ? <Given value={got} /> : <span class="muted">{words.notMeasured}</span>}
      </button>
      {got && <Verdict {...{ bench, cut, set }} want={want} wanted={wanted} got={got} />}
      {open && (
        <KeySheet
          key={`${open}${cut}`}
          title={words.asked[open]}
          tape="0.001"
          fill="length"
          now={open === 'got' ? got : wanted}
          onLength={open === 'want' ? setOther : measured}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

type KindProps = { readonly cut: TestCut; readonly onCut: (cut: TestCut) => void };

const CutKind = ({ cut, onCut }: KindProps) => (
  <div class="pad-x segs">
    <Segment
      label={words.measuredWhat}
      choices={cuts.map((value) => ({
        label: words.testCuts[value],
        chosen: cut === value,
        onTap: () => onCut(value),
      }))}
    />
  </div>
);

type VerdictProps = Pick<TestProps, 'bench' | 'want' | 'set'> & {
  readonly cut: TestCut;
  readonly wanted: Length;
  readonly got: Length;
};

/** What to do after a test cut, and what there is to learn of the set. */
function Verdict({ bench, cut, want, set, wanted, got }: VerdictProps) {
  const found = correct(cut, { want: wanted, got });
  const stack = stackFor(set, want);
  if (!found.ok) return null;
  return (
    <>
      <p class="pad-x verdict rests">{correctionText(found.value)}</p>
      {cut === 'stack' && found.value.direction !== 'leave-it' && stack.ok && (
        <Learn bench={bench} stack={stack.value.fewest} got={got} />
      )}
    </>
  );
}

type LearnProps = { readonly bench: Bench; readonly stack: Stack; readonly got: Length };

/** A set that always cuts wide or narrow is told apart once, and every later stack is reckoned with it. */
function Learn({ bench, stack, got }: LearnProps) {
  const found = learnCorrection(stack, got);
  if (!found.ok) return null;
  const lists = listsOf(bench.settings.value);
  const now = lists.stack.correction ?? zero;
  const says = `${found.value.s < 0n ? '−' : '+'}${closely(found.value).replace('-', '')}`;
  if (subtract(now, found.value).n === 0n) return <p class="pad-x note">{words.reckoned(says)}</p>;
  return (
    <div class="pad-x adds">
      <Button
        label={words.remember(says)}
        onTap={() => keepLists(bench, { stack: { ...lists.stack, correction: found.value } })}
      />
    </div>
  );
}
