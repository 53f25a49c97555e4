import type { Stock } from '../../job/job';
import { less } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Sheet } from '../../plan/measured-sheets';
import { readingTaken } from '../../plan/readings';
import { leastSpreadToWarn } from '../../trade/grooves/fit';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed } from '../../ui/mixed';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { closely, exactly } from '../shared/exact-words';
import * as words from './words';
import './stock.css';

/** A reading is kept by an id of its own: what is added or changed beside it is not touched. */
export type Reading = { readonly id: string; readonly no: number };

type ReadingsProps = {
  readonly stock: Stock;
  readonly newId: () => string;
  readonly onOpen: (reading: Reading) => void;
};

/** The readings of a sheet, each to be put right, and the way to one more. */
export const Readings = ({ stock: { readings, readingIds }, newId, onOpen }: ReadingsProps) => (
  <>
    <ol class="readings">
      {readings.map((reading, k) => (
        <li key={readingIds[k]}>
          <button
            type="button"
            class="nextset"
            onClick={() => onOpen({ id: readingIds[k] ?? '', no: k + 1 })}
          >
            <b class="grow">{words.reading(k + 1)}</b>
            <span class="dec reading-big">{closely(reading)}</span>
          </button>
        </li>
      ))}
    </ol>
    <div class="pad-x adds">
      <button
        type="button"
        class={readings.length < 4 ? 'btn main full' : 'btn full'}
        onClick={() => onOpen({ id: newId(), no: readings.length + 1 })}
      >
        <Icon name="measure" />
        {words.readOnce(readings.length)}
      </button>
    </div>
  </>
);

/** What the readings come to. */
export const Spread = ({ sheet, inUse }: { readonly sheet: Sheet; readonly inUse: boolean }) => (
  <section class="pad-x facts rests">
    <div class="marked">
      <span class="note">{inUse ? words.thickest : words.thickestNotInUse}</span>
      <Mixed value={sheet.thickest} size="arm" tape="0.001" />
    </div>
    <p class="fact">{words.thinnest(closely(sheet.thinnest), closely(sheet.spread))}</p>
    {less(figureIn(unitInHand(), leastSpreadToWarn), sheet.spread) && (
      <p class="fact warn">
        <Icon name="warn" />
        {words.twoLots(exactly(figureIn(unitInHand(), leastSpreadToWarn)))}
      </p>
    )}
  </section>
);

type SheetProps = {
  readonly stock: Stock;
  readonly reading: Reading;
  /** Something of it is cut. */
  readonly cut: boolean;
  readonly act: Bench['act'];
  readonly onClose: () => void;
};

/** Where a reading is keyed in. */
export function ReadingSheet({ stock, reading: { id, no }, cut, act, onClose }: SheetProps) {
  return (
    <KeySheet
      title={words.reading(no)}
      tape="1/64"
      fill="length"
      kind="thickness"
      now={stock.readings[stock.readingIds.indexOf(id)]}
      onLength={(size) => void act(words.reading(no), readingTaken(stock, { id, size }, cut))}
      onClose={onClose}
    />
  );
}
