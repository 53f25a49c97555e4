import type { Job } from '../../job/job';
import { sheetOf } from '../../plan/measured-sheets';
import { BarButton } from '../../ui/bar';
import { Mixed } from '../../ui/mixed';
import { tapeInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { measureSheet } from '../shared/measure-sheet';
import * as words from './words';
import './job.css';

/** The sheets of the job, each with its thickness as measured or as planned. */
export const StockList = ({ bench, job }: { readonly bench: Bench; readonly job: Job }) => (
  <>
    <div class="sechead">
      <h2 class="sec">{words.stock}</h2>
      <BarButton icon="measure" label={words.measure} boxed onTap={() => void measureSheet(bench)} />
    </div>
    {job.stock.length === 0 ? (
      <p class="pad-x empty-line">{words.noStock}</p>
    ) : (
      <ul>
        {job.stock.map((stock) => (
          <li key={stock.id}>
            <StockLine stock={stock} onTap={() => bench.go({ at: 'stock', id: stock.id })} />
          </li>
        ))}
      </ul>
    )}
  </>
);

type LineProps = { readonly stock: Job['stock'][number]; readonly onTap: () => void };

function StockLine({ stock, onTap }: LineProps) {
  const [sheet] = sheetOf(stock, tapeInHand.value);
  return (
    <button type="button" class="mat" onClick={onTap}>
      <Edge solid={stock.kind === 'stick'} />
      <span>
        <b>{stock.name || words.sheet}</b>
        <span class="s muted dec">{sheet?.says ?? (stock.planned ? words.planned : words.noReading)}</span>
      </span>
      {sheet ? (
        <Mixed value={sheet.thickest} tape="0.001" />
      ) : (
        stock.planned && <Mixed value={stock.planned} tape="1/64" />
      )}
    </button>
  );
}

/** The edge of a sheet with its plies, or the end of a stick with its rings. */
const Edge = ({ solid }: { readonly solid: boolean }) => (
  <svg viewBox="-1 -1 66 40" aria-hidden="true">
    {[0, 1, 2, 3, 4, 5, 6].map((k) => (
      <rect
        key={k}
        class={k % 2 === 0 || solid ? 'f-birch' : 'f-birch2'}
        x="0"
        y={k * 5.4}
        width="64"
        height="5.6"
      />
    ))}
    {solid && <path class="k-onbirch" d="M0 12q32-12 64 0M0 22q32-12 64 0M0 32q32-12 64 0" />}
    <rect class="k-onbirch" x="0" y="0" width="64" height="38" stroke-width="1.25" />
  </svg>
);
