import type { PlanSheet } from '../../job/job';
import { forDrawing } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Breakdown, PoolView } from '../../plan/breakdown';
import { placesOf } from '../../trade/sheets/tree';
import { SheetDrawing, SheetThumb } from '../../ui/sheet-drawing';
import type { Bench } from '../bench';
import { workWord } from '../shared/part-words';
import type { Cuts } from './use-cuts';
import * as words from './words';
import './layout.css';
import './sheets.css';

type DrawnProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly found: Breakdown;
  readonly sheet: PlanSheet;
  readonly view: PoolView;
  readonly tape: Tape;
  readonly stick: boolean;
  readonly cuts: Cuts;
};

/** The sheet to scale with its cuts, the other sheets of its pool beside it. */
export function SheetDrawn(props: DrawnProps) {
  const { found, sheet, view, tape, stick, cuts } = props;
  const others = view.sheets.filter((s) => s.id !== sheet.id);
  const title = words.sheetTitle(sheet, found.stocks.get(sheet.stock), tape);
  return (
    <div class="sheetwrap">
      <SheetDrawing
        size={sheet.size}
        places={placesOf(sheet, sheet.kerf)}
        cuts={cuts.steps.map((step) => ({ path: step.path, no: step.no, state: stateOf(cuts, step) }))}
        tape={tape}
        label={words.drawn(title, cuts.steps.length)}
        piece={(piece) => {
          const own = found.pieces.get(piece);
          return own && { name: workWord(own.name), long: own.long };
        }}
        wide={drawnWide(sheet, { stick, alone: others.length === 0 })}
        stick={stick}
      />
      {others.length > 0 && <Others {...props} others={others} />}
    </div>
  );
}

const stateOf = ({ now, done }: Cuts, step: Cuts['steps'][number]) =>
  done(step) ? 'done' : step === now ? 'now' : 'planned';

type OthersProps = DrawnProps & { readonly others: readonly PlanSheet[] };

const Others = ({ bench, found, tape, stick, others }: OthersProps) => (
  <div class="sidethumbs">
    {others.map((other) => (
      <button
        key={other.id}
        type="button"
        class="thumb"
        onClick={() => bench.go({ at: 'layout', id: other.id }, true)}
      >
        <SheetThumb size={other.size} places={placesOf(other, other.kerf)} stick={stick} />
        <span>{words.sheetTitle(other, found.stocks.get(other.stock), tape)}</span>
      </button>
    ))}
  </div>
);

/**
 * So wide the sheet is drawn, pixels: what the phone has beside the other sheets, and so that most of it is in sight.
 */
function drawnWide(
  { size }: PlanSheet,
  { stick, alone }: { readonly stick: boolean; readonly alone: boolean },
): number {
  const room = Math.min(innerWidth, 560) - 32 - (alone ? 20 : 104);
  if (stick) return Math.min(room, 150);
  const inSight = 0.58 * innerHeight * (forDrawing(size.wide) / Math.max(forDrawing(size.long), 0.01));
  return Math.max(Math.min(room, 200), Math.min(room, inSight));
}
