import { useState } from 'preact/hooks';
import { editRecipe } from '../../job/edits';
import type { Recipe as Kept } from '../../job/job';
import type { Length } from '../../length/length';
import { type MachineId, machineAt } from '../../trade/machines/machines';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { TextDock } from '../shared/ask-dock';
import { recipeFields, stackBetween } from '../shared/setup-words';
import { sizeWords } from '../shared/stack-words';
import * as words from './words';

type Field = keyof typeof recipeFields;
type Open = Field | 'note';

type RecipeProps = {
  readonly bench: Bench;
  readonly id: string;
  /** Where the stack is kept: it serves every figure it is set to. */
  readonly build?: string;
  /** Where nothing is found out, nothing is asked. */
  readonly machine?: MachineId;
};

/** What was found out at a setup: it stays on the card for ever. */
export function Recipe({ bench, id, build = id, machine }: RecipeProps) {
  const [open, setOpen] = useState<Open>();
  const job = bench.job.value;
  if (!job || (machine && machineAt(machine).noRecipe)) return null;
  const recipe = job.recipes[id] ?? {};
  return (
    <section class="recipe" aria-label={words.kept}>
      <h2 class="sec pad-x">{words.kept}</h2>
      <Findings recipe={recipe} stack={job.recipes[build]?.stack} onOpen={setOpen} />
      {open && <RecipeDock {...{ bench, id, recipe, open }} onClose={() => setOpen(undefined)} />}
    </section>
  );
}

type FindingsProps = {
  readonly recipe: Kept;
  readonly stack: readonly Length[] | undefined;
  readonly onOpen: (field: Open) => void;
};

const Findings = ({ recipe, stack, onOpen }: FindingsProps) => (
  <ul>
    {(['scale', 'height', 'got'] as const).map((field) => {
      const value = recipe[field];
      return (
        <li key={field}>
          <button type="button" class="nextset" onClick={() => onOpen(field)}>
            <span class="grow">{recipeFields[field]}</span>
            {value ? <Given value={value} /> : <span class="muted">{words.notNoted}</span>}
          </button>
        </li>
      );
    })}
    {stack && (
      <li class="nextset">
        <span class="grow">{stackBetween}</span>
        <span class="dec">{stack.map(sizeWords).join(' + ') || words.noStack}</span>
      </li>
    )}
    <li>
      <button type="button" class="nextset" onClick={() => onOpen('note')}>
        <span class="grow">{words.note}</span>
        <span class="muted">{recipe.note ?? words.noNote}</span>
      </button>
    </li>
  </ul>
);

type RecipeDockProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly recipe: Kept;
  readonly open: Open;
  readonly onClose: () => void;
};

const RecipeDock = ({ bench, id, recipe, open, onClose }: RecipeDockProps) =>
  open === 'note' ? (
    <TextDock
      title={words.noteTitle}
      now={recipe.note ?? ''}
      most={400}
      onDone={(note) => void bench.act(words.noteAct, editRecipe(id, { note }))}
      onClose={onClose}
    />
  ) : (
    <KeySheet
      key={open}
      title={recipeFields[open]}
      tape="1/64"
      fill="length"
      now={recipe[open]}
      onLength={(value) => void bench.act(recipeFields[open], editRecipe(id, { [open]: value }))}
      onClose={onClose}
    />
  );
