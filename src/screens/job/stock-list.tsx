import type { Job } from '../../job/job';
import { sheetOf } from '../../plan/measured-sheets';
import { BarButton } from '../../ui/bar';
import { Mixed } from '../../ui/mixed';
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
  const [sheet] = sheetOf(stock);
  return (
    <button type="button" class="mat" onClick={onTap}>
      {stock.kind === 'stick' ? <Solid /> : <Plies />}
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

const Plies = () => (
  <svg viewBox="-1 -1 66 40" aria-hidden="true">
    {[0, 1, 2, 3, 4, 5, 6].map((k) => (
      <rect key={k} class={k % 2 === 0 ? 'f-birch' : 'f-birch2'} x="0" y={k * 5.4} width="64" height="5.6" />
    ))}
    <rect class="k-onbirch" x="0" y="0" width="64" height="38" stroke-width="1.25" />
  </svg>
);

/** The end of a stick, its rings across it. */
const Solid = () => (
  <svg viewBox="-1 -1 66 40" aria-hidden="true">
    <rect class="f-birch" x="0" y="0" width="64" height="38" />
    <path
      class="k-onbirch"
      d="M0 12Q32 0 64 12M0 22Q32 10 64 22M0 32Q32 20 64 32M12 38Q32 30 52 38"
      stroke-width="1"
    />
    <rect class="k-onbirch" x="0" y="0" width="64" height="38" stroke-width="1.25" />
  </svg>
);
