import { editStock } from '../../job/edits';
import type { Bench } from '../bench';

/** A new sheet, named by the next free letter. */
export async function measureSheet(bench: Bench): Promise<void> {
  const id = bench.newId();
  const letter = String.fromCharCode(65 + (bench.job.value?.stock.length ?? 0));
  const done = await bench.act('A sheet to measure', editStock(id, { name: `Sheet ${letter}` }));
  if (done) bench.go({ at: 'stock', id });
}
