import { checklistOf } from '../../plan/checklist';
import type { Bench } from '../bench';

/**
 * Does something, and stays at the setting in hand: its figure or its machine may be another by then, and another setup
 * has its pieces.
 *
 * @param op an operation of the setting in hand
 */
export async function stayingAt(
  bench: Pick<Bench, 'go' | 'plan' | 'folded' | 'route'>,
  op: string | undefined,
  act: () => Promise<unknown>,
): Promise<void> {
  const here = bench.route.value;
  await act();
  const plan = bench.plan.value;
  if (!op || !plan || here.at !== 'setup' || bench.route.value !== here) return;
  const { cards } = checklistOf(plan, bench.folded.value);
  const card = cards.find(({ operations }) => operations.some(({ id }) => id === op));
  if (card && card.id !== here.id) bench.go({ at: 'setup', id: card.id }, true);
}
