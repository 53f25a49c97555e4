import { useState } from 'preact/hooks';
import { inches } from '../../length/length';
import { writeDecimal, writeLength } from '../../length/write';
import { lapPair } from '../../trade/joints/laps';
import { pileFor } from '../../trade/stacks/pile';
import { Bar } from '../../ui/bar';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { leave } from '../shared/leave';
import { ShimDrawer } from '../shared/shim-drawer';
import { listsOf } from '../shared/shop-lists';
import { pileErrorText } from '../shared/stack-words';
import { useLength } from '../shared/stays';

/** Within this of the gap is good enough under a foot. Common practice, no source. */
const tolerance = inches(20n, 1000n);

/** Two small sums of the bench: a pile of shims for a gap, and a half-lap put right. */
export function ShimsScreen({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<'gap' | 'thick' | 'deep'>();
  const [gap, setGap] = useLength('shims gap');
  const [thick, setThick] = useLength('lap thick');
  const [deep, setDeep] = useLength('lap deep');
  const pile = gap && pileFor(gap, listsOf(bench.settings.value).shims, tolerance);
  const lap = thick && deep && lapPair(thick, deep);
  const rows = { gap: [gap, setGap], thick: [thick, setThick], deep: [deep, setDeep] } as const;
  const row = (field: keyof typeof rows, words: string) => (
    <button type="button" class="nextset" onClick={() => setOpen(field)}>
      <span class="grow">{words}</span>
      {rows[field][0] ? <Given value={rows[field][0]} /> : <span class="muted">····</span>}
    </button>
  );
  return (
    <>
      <Bar title="Shims and laps" leave={{ label: 'Back', onTap: () => leave(bench, { at: 'job' }) }} />
      <main class={open ? 'page docked' : 'page'}>
        <h2 class="sec pad-x">Shims for a gap</h2>
        <Caution bench={bench} code="shims" />
        {row('gap', 'The gap')}
        {pile?.ok && (
          <div class="pad-x verdict">
            <Mixed value={pile.value.height} size="bench" tape="1/64" />
            <p>
              {pile.value.chosen.map((s) => `${s.count} × ${writeLength(s.size)}`).join(' + ') ||
                'No shim goes in'}
              {pile.value.short.n === 0n ? ', exactly' : `, short by ${writeDecimal(pile.value.short)}`}
              {!pile.value.within && ': no pile of these comes nearer without going over'}.
            </p>
          </div>
        )}
        {pile && !pile.ok && <p class="pad-x note">{pileErrorText(pile.error)}</p>}
        <ShimDrawer bench={bench} />
        <h2 class="sec pad-x">Half-lap, faces step</h2>
        <Caution bench={bench} code="lap" />
        {row('thick', 'Thickness of both')}
        {row('deep', 'Depth as cut')}
        {lap?.ok && (
          <p class="pad-x verdict">
            {lap.value.step.n === 0n
              ? 'The faces are flush.'
              : `The faces step by ${writeLength(lap.value.step)}${lap.value.warn ? ', enough to feel' : ''}. Both still uncut: ${lap.value.step.s > 0n ? 'deepen' : 'make shallower'} each by ${writeLength(lap.value.deepenEach).replace('-', '')}. One set cut: the other to ${writeLength(lap.value.otherDepth)}.`}
          </p>
        )}
        {lap && !lap.ok && <p class="pad-x note">That depth goes through: less than the thickness.</p>}
      </main>
      {open && (
        <KeySheet
          key={open}
          title={{ gap: 'The gap', thick: 'Thickness of both', deep: 'Depth as cut' }[open]}
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
