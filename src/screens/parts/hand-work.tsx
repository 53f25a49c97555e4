import { useState } from 'preact/hooks';
import { editWork } from '../../job/edits';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import { handMachineIds } from '../../trade/machines/machines';
import type { HandWork as Work } from '../../trade/setups/operations';
import { Button, Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { machineWords } from '../shared/machines/machine-words';

const machines = Object.entries(machineWords).flatMap(([value, { forHandWork: label }]) =>
  label ? [{ value, label }] : [],
);

const machineOf = (word: string) => handMachineIds.find((id) => id === word) ?? 'hand';

type HandProps = { readonly bench: Bench; readonly part: Part; readonly plan: Plan };

/** Operations of a part added by hand: a hole, a round-over, a cut-out; they stand in Cuts like all else. */
export function HandWork({ bench, part, plan }: HandProps) {
  const [open, setOpen] = useState<Ask>();
  const own = plan.job.work.filter((h) => h.part === part.id);
  return (
    <section aria-label="Added by hand">
      {own.map((h) => (
        <Sentence key={h.id} {...{ bench, part, plan, h, open }} onOpen={setOpen} />
      ))}
      <div class="pad-x adds">
        <Button
          label="Another operation"
          look="quiet"
          icon="plus"
          onTap={() =>
            void bench.act(
              'An operation by hand',
              editWork(bench.newId(), { part: part.id, name: 'Extra cut', machine: 'hand' }),
            )
          }
        />
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={plan.job.tape}
          onSave={(changes) => void bench.act(open.title, changes)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

type SentenceProps = HandProps & {
  readonly h: Work;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function Sentence({ bench, part, plan, h, open, onOpen }: SentenceProps) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const others = plan.job.work.filter((x) => x.id !== h.id);
  const nameOf = (id: string) => plan.parts.find((p) => p.id === id)?.name ?? 'a part';
  const after: Ask = {
    as: 'choice',
    title: `What comes before: ${h.name}`,
    now: h.after ?? '',
    choices: [
      { value: '', label: 'its length' },
      { value: 'rip', label: 'its rip' },
      ...others.map((x) => ({ value: x.id, label: x.name || 'another by hand', hint: nameOf(x.part) })),
    ],
    save: (value) => editWork(h.id, { after: value === '' ? undefined : value }),
  };
  return (
    <div class="fillin run">
      {blank({
        as: 'text',
        title: `What is done to the ${part.name.toLowerCase()}`,
        now: h.name,
        save: (name) => editWork(h.id, { name }),
      })}{' '}
      {blank({
        as: 'choice',
        title: `Where: ${h.name}`,
        now: h.machine,
        choices: machines,
        save: (machine) => editWork(h.id, { machine: machineOf(machine) }),
      })}
      , set at{' '}
      {blank({
        as: 'length',
        title: `Set at: ${h.name}`,
        now: h.figure,
        save: (figure) => editWork(h.id, { figure }),
      })}
      , after {blank(after)}.
      <span class="runacts">
        <Chip
          label="Remove"
          onTap={() => void bench.act(`${h.name} taken away`, editWork(h.id, { gone: true }))}
        />
      </span>
    </div>
  );
}
