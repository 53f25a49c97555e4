import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';

/** A board that is not there: removed, or an address from another job. */
export const NoBoard = ({ bench }: { readonly bench: Bench }) => (
  <>
    <Bar title="Marks" leave={{ label: 'Boards', onTap: () => bench.go({ at: 'boards' }) }} />
    <main class="page nothing">
      <p>This board is not in the job in hand. Undo brings a removed one back.</p>
      <Button label="To the boards" look="main" onTap={() => bench.go({ at: 'boards' })} />
    </main>
  </>
);
