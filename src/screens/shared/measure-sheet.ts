import { editStock } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Bench } from '../bench';

type For = {
  /** The form it is measured for: the page comes back to it. */
  readonly of: string;
  readonly stick: boolean;
  /** What of the form is to be of the new stock. */
  readonly takes: (stock: string) => readonly Change[];
};

/** A new sheet or stick, named by the next free letter. */
export async function measureSheet(bench: Bench, form?: For): Promise<void> {
  const id = bench.newId();
  const letter = String.fromCharCode(65 + (bench.job.value?.stock.length ?? 0));
  const own = form?.stick ? { name: `Stick ${letter}`, kind: 'stick' as const } : { name: `Sheet ${letter}` };
  const label = form?.stick ? 'A stick to measure' : 'A sheet to measure';
  const done = await bench.act(label, [...editStock(id, own), ...(form?.takes(id) ?? [])]);
  if (done) bench.go({ at: 'stock', id, ...(form ? { of: form.of } : {}) });
}
