import { useState } from 'preact/hooks';
import { editRecipe } from '../../job/edits';
import type { Length } from '../../length/length';
import { KeySheet } from '../../ui/key-sheet';
import { Given } from '../../ui/mixed';
import type { Bench } from '../bench';
import { TextDock } from '../shared/ask-dock';
import { sizeWords } from '../shared/stack-words';

const fields = {
  scale: 'What the scale read',
  height: 'Height it was set to',
  got: 'What the test cut measured',
} as const;

type RecipeProps = {
  readonly bench: Bench;
  readonly id: string;
  /** Where the stack is kept: it serves every figure it is set to. */
  readonly build?: string;
};

/** What was found out at a setup: it stays on the card for ever. */
export function Recipe({ bench, id, build = id }: RecipeProps) {
  const [open, setOpen] = useState<keyof typeof fields | 'note'>();
  const job = bench.job.value;
  if (!job) return null;
  const recipe = job.recipes[id] ?? {};
  const stack = job.recipes[build]?.stack;
  const given = (field: keyof typeof fields): Length | undefined => recipe[field];
  return (
    <section class="recipe" aria-label="Kept with this setup">
      <h2 class="sec pad-x">Kept with this setup</h2>
      <ul>
        {(['scale', 'height', 'got'] as const).map((field) => {
          const value = given(field);
          return (
            <li key={field}>
              <button type="button" class="nextset" onClick={() => setOpen(field)}>
                <span class="grow">{fields[field]}</span>
                {value ? <Given value={value} /> : <span class="muted">not noted</span>}
              </button>
            </li>
          );
        })}
        {stack && (
          <li class="nextset">
            <span class="grow">Stack between the outers</span>
            <span class="dec">{stack.map(sizeWords).join(' + ') || 'nothing'}</span>
          </li>
        )}
        <li>
          <button type="button" class="nextset" onClick={() => setOpen('note')}>
            <span class="grow">Note</span>
            <span class="muted">{recipe.note ?? 'none'}</span>
          </button>
        </li>
      </ul>
      {open && open !== 'note' && (
        <KeySheet
          key={open}
          title={fields[open]}
          tape="1/64"
          fill="length"
          now={given(open)}
          onLength={(value) => void bench.act(fields[open], editRecipe(id, { [open]: value }))}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'note' && (
        <TextDock
          title="Note at this setup"
          now={recipe.note ?? ''}
          most={400}
          onDone={(note) => void bench.act('Note at a setup', editRecipe(id, { note }))}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}
