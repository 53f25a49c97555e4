import { checklistOf } from '../../plan/checklist';
import { offersOf } from '../../plan/offers';
import type { Bench } from '../bench';
import { heldWords } from '../shared/held-words';

/** Why a step may not be ticked, and the way to the machine's screen, where it is told and let go ahead. */
export type Waits = (tick: {
  readonly op: string;
}) => { readonly says: string; readonly toMachine: () => void } | undefined;

/** What the machine's screen holds back is held back here. */
export function waitsOf({ plan, folded, go }: Pick<Bench, 'plan' | 'folded' | 'go'>): Waits {
  const made = plan.value;
  if (!made) return () => undefined;
  const list = checklistOf(made, folded.value);
  const offers = offersOf(list);
  return ({ op }) => {
    const offer = offers(op);
    const card = list.cards.find((c) => c.operations.some(({ id }) => id === op));
    const toMachine = () => go(card ? { at: 'setup', id: card.id } : { at: 'cuts' });
    return offer.ok ? undefined : { says: heldWords(list, offer.error), toMachine };
  };
}
