import { useState } from 'preact/hooks';
import { absolute, inches, isPositive, isZero, type Length } from '../../length/length';
import { type LapPair, lapPair } from '../../trade/joints/laps';
import { pileFor, type Shim } from '../../trade/stacks/pile';
import { Bar } from '../../ui/bar';
import { Dots } from '../../ui/blank';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { closely, exactly } from '../shared/exact-words';
import { leave } from '../shared/leave';
import { ShimDrawer } from '../shared/shim-drawer';
import { listsOf } from '../shared/shop-lists';
import { pileErrorText } from '../shared/stack-words';
import { useLength } from '../shared/stays';
import * as words from './words';
import './stack.css';

/** Within this of the gap is good enough under a foot. Common practice, no source. */
const tolerance = inches(20n, 1000n);

type Field = 'gap' | 'thick' | 'deep';

/** Two small sums of the bench: a pile of shims for a gap, and a half-lap put right. */
export function ShimsScreen({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<Field>();
  const rows = {
    gap: useLength('shims gap'),
    thick: useLength('lap thick'),
    deep: useLength('lap deep'),
  };
  const { shims } = listsOf(bench.settings.value);
  const row = (field: Field) => (
    <Row label={words.asks[field]} value={rows[field][0]} onTap={() => setOpen(field)} />
  );
  return (
    <>
      <Bar title={words.shimsTitle} leave={{ label: words.back, onTap: () => leave(bench, { at: 'job' }) }} />
      <main class={open ? 'page docked' : 'page'}>
        <h2 class="sec pad-x">{words.shimsForGap}</h2>
        <Caution bench={bench} code="shims" />
        {row('gap')}
        {rows.gap[0] && <PileFor gap={rows.gap[0]} shims={shims} />}
        <ShimDrawer bench={bench} />
        <h2 class="sec pad-x">{words.halfLap}</h2>
        <Caution bench={bench} code="lap" />
        {row('thick')}
        {row('deep')}
        {rows.thick[0] && rows.deep[0] && <Lap thick={rows.thick[0]} deep={rows.deep[0]} />}
      </main>
      {open && (
        <KeySheet
          key={open}
          title={words.asks[open]}
          tape="1/64"
          fill="length"
          now={rows[open][0]}
          onLength={rows[open][1]}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

type RowProps = {
  readonly label: string;
  readonly value: Length | undefined;
  readonly onTap: () => void;
};

const Row = ({ label, value, onTap }: RowProps) => (
  <button type="button" class="nextset" onClick={onTap}>
    <span class="grow">{label}</span>
    {value ? <Given value={value} /> : <Dots />}
  </button>
);

type PileProps = { readonly gap: Length; readonly shims: readonly Shim[] };

/** The pile that fills a gap nearest without going over. */
function PileFor({ gap, shims }: PileProps) {
  const found = pileFor(gap, shims, tolerance);
  if (!found.ok) return <p class="pad-x note">{pileErrorText(found.error)}</p>;
  const { height, chosen, short, within } = found.value;
  const pieces = chosen.map((s) => words.shims(s.count, exactly(s.size)));
  return (
    <div class="pad-x verdict">
      <Mixed value={height} size="bench" tape="1/64" />
      <p>{words.pile({ pieces, within, short: isZero(short) ? undefined : closely(short) })}</p>
    </div>
  );
}

/** A half-lap whose faces step, put right. */
function Lap({ thick, deep }: { readonly thick: Length; readonly deep: Length }) {
  const lap = lapPair(thick, deep);
  return lap.ok ? (
    <p class="pad-x verdict">{lapText(lap.value)}</p>
  ) : (
    <p class="pad-x note">{words.goesThrough}</p>
  );
}

function lapText({ step, warn, deepenEach, otherDepth }: LapPair): string {
  if (isZero(step)) return words.flush;
  return words.step({
    by: exactly(step),
    felt: warn,
    deepen: isPositive(step),
    each: exactly(absolute(deepenEach)),
    other: exactly(otherDepth),
  });
}
