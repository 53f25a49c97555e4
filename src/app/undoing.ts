import { computed, signal } from '@preact/signals';
import type { LogInHand } from './log-in-hand';

type Rules = Pick<typeof import('../job/undo'), 'undoable' | 'undoOf'>;

/**
 * What can be taken back of the log in hand, and which of its ticks are on their way.
 *
 * @param coming what says what an act is taken back by; it comes in a file of its own
 */
export function undoingOf(
  { entries, underWay, settled, write }: LogInHand,
  own: (name: string) => boolean,
  coming: Promise<Rules>,
) {
  const rules = signal<Rules | undefined>(undefined);
  coming.then(
    (there) => {
      rules.value = there;
    },
    () => undefined, // did not come: the page says so
  );
  const acts = computed(() => rules.value?.undoable(entries.value, own) ?? []);
  let before: Promise<unknown> = Promise.resolve();
  return {
    /** Name of the act that undo would take back. */
    label: computed(() => {
      const going = underWay.value.filter(({ undoes }) => undoes === undefined);
      return (going[going.length - 1] ?? acts.value[0])?.label;
    }),
    /** One at a time, after all that is on its way: a second tap takes back the act before. */
    undo: (): Promise<void> => {
      const next = before.then(async () => {
        await settled();
        const { undoOf } = await coming;
        const act = acts.value[0];
        if (act) await write(`Undo: ${act.label}`, undoOf(entries.value, act), act.act);
      });
      before = next;
      return next;
    },
    saving: computed<ReadonlySet<string>>(
      () =>
        new Set(
          underWay.value.flatMap(({ changes }) => changes.flatMap((c) => (c.kind === 'edit' ? [] : [c.op]))),
        ),
    ),
  };
}
