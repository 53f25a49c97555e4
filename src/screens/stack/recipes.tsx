import { editRecipe } from '../../job/edits';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import type { StackStock } from '../../trade/stacks/pieces';
import { spreadShims } from '../../trade/stacks/spread';
import { type Stack, stackFor } from '../../trade/stacks/stack';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { askSet, errorWords, pieceWords, sizeWords, stackErrorText } from '../shared/stack-words';
import * as words from './words';
import '../shared/set-rows.css';

type RecipesProps = {
  readonly job: Job;
  readonly act: Bench['act'];
  /** Of the setups this stack is for. */
  readonly build: string;
  /** Width wanted, inches. */
  readonly want: Length;
  readonly set: StackStock;
};

/** The stacks that cut the width wanted, and the one kept as the recipe. */
export function Recipes({ job, act, build, want, set }: RecipesProps) {
  const kept = job.recipes[build]?.stack;
  const keep = ({ chosen }: Stack) => {
    const stack = chosen.flatMap(({ size, count }) => Array.from({ length: count }, () => size));
    void act(words.kept, editRecipe(build, { stack }));
  };
  return (
    <>
      <div class="setting">
        <Mixed value={want} size="result" tape="0.001" />
        <div class="side s muted">{words.wanted}</div>
      </div>
      <Found want={want} set={set} onKeep={keep} />
      {!set.arbor && <p class="pad-x note">{askSet.noArbor}</p>}
      {kept && (
        <p class="pad-x note">
          <Icon name="tick" /> {words.recipe(kept.map(sizeWords))}
        </p>
      )}
    </>
  );
}

type FoundProps = Pick<RecipesProps, 'want' | 'set'> & { readonly onKeep: (stack: Stack) => void };

/** The stacks found; where none fits, why, and the nearest. */
function Found({ want, set, onKeep }: FoundProps) {
  const found = stackFor(set, want);
  if (!found.ok) {
    const { error } = found;
    return (
      <>
        <p class="pad-x wrongline">
          <Icon name="warn" />
          {stackErrorText(error)}
        </p>
        {error.code === 'none-fits' && (
          <StackRows title={words.nearest} stack={error.nearest} onKeep={onKeep} />
        )}
      </>
    );
  }
  const { fewest, closest } = found.value;
  return (
    <>
      <StackRows title={words.fewest(closest !== undefined)} stack={fewest} onKeep={onKeep} />
      {closest && <StackRows title={words.closest} stack={closest} onKeep={onKeep} />}
    </>
  );
}

type RowsProps = {
  readonly title: string;
  readonly stack: Stack;
  readonly onKeep: (stack: Stack) => void;
};

/** One stack: its pieces, and how they lie on the arbor. */
function StackRows({ title, stack, onKeep }: RowsProps) {
  const { order, ridges } = spreadShims(stack);
  return (
    <section class="stackbox" aria-label={title}>
      <div class="sechead">
        <h2 class="sec">{title}</h2>
        <span class="muted">{words.cuts(closely(stack.width), errorWords(stack.error))}</span>
      </div>
      <p class="pad-x">{stack.chosen.map(pieceWords).join(', ') || words.outersAlone}</p>
      <ol class="arbor pad-x" aria-label={words.onArbor}>
        {order.map((piece, k) => (
          <li key={k} class={piece.kind}>
            <span>{piece.kind === 'outer' ? words.outer : sizeWords(piece.size)}</span>
          </li>
        ))}
      </ol>
      {ridges.length > 0 && <p class="pad-x note">{words.ridges(ridges.map((r) => r.gap))}</p>}
      <div class="pad-x adds">
        <Button label={words.keep} onTap={() => onKeep(stack)} />
      </div>
    </section>
  );
}
