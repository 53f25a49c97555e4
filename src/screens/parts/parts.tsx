import { editBoard } from '../../job/edits';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { UndoButton } from '../shared/undo-button';

/** Every part of the job by the stock it comes out of, at the size it is cut to. */
export function PartsScreen({ bench }: { readonly bench: Bench }) {
  const plan = bench.plan.value;
  return (
    <>
      <Bar
        title="Parts"
        sub={plan?.job.name ?? ''}
        leave={{ label: 'Job', onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {plan && plan.parts.length > 0 ? (
          byStock(plan).map(({ name, parts }) => (
            <section key={name} aria-label={name}>
              <h2 class="sec pad-x">{name}</h2>
              <ul>
                {parts.map((part) => (
                  <PartRow key={part.id} part={part} plan={plan} bench={bench} />
                ))}
              </ul>
            </section>
          ))
        ) : (
          <p class="pad-x empty-line">
            No parts yet. Give a case its outside sizes, or lay out a board by hand.
          </p>
        )}
        <div class="pad-x adds">
          <Button label="A part by hand" look="quiet" icon="plus" onTap={() => void byHand(bench)} />
        </div>
      </main>
    </>
  );
}

/** A part with nothing cut in it yet: its sizes are asked for first, grooves may follow. */
async function byHand(bench: Bench): Promise<void> {
  const id = bench.newId();
  const made = await bench.act('A part by hand', editBoard(id, { name: 'Part', made: 'alike' }));
  if (made) bench.go({ at: 'change', board: id });
}

function byStock(plan: Plan): readonly { readonly name: string; readonly parts: readonly Part[] }[] {
  const groups = new Map<string, Part[]>();
  for (const part of plan.parts) {
    const name = plan.stuff.find((s) => s.id === part.stuff)?.name ?? 'By hand';
    groups.set(name, [...(groups.get(name) ?? []), part]);
  }
  return [...groups].map(([name, parts]) => ({ name, parts }));
}

type RowProps = { readonly part: Part; readonly plan: Plan; readonly bench: Bench };

function PartRow({ part, plan, bench }: RowProps) {
  const ticks = bench.folded.value.ticks;
  const ops = plan.operations.filter((op) => op.part === part.id);
  const cut = ops.filter((op) => ticks.has(op.id)).length;
  const state = cut === 0 ? '' : cut === ops.length ? ' · all cut' : ` · ${cut} of ${ops.length} cut`;
  const { tape } = plan.job;
  return (
    <li>
      <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: part.id })}>
        <span class="grow">
          <b>{part.name}</b>
          <span class="s muted block">
            {part.copies > 1 ? `${part.copies} of them` : 'one'}
            {state}
          </span>
        </span>
        <span class="pairsize">
          <Mixed value={part.length.mark.value} rest={part.length.mark.rest} tape={tape} />
          <span aria-hidden="true">×</span>
          <Mixed value={part.width.mark.value} rest={part.width.mark.rest} tape={tape} />
        </span>
      </button>
    </li>
  );
}
