import { useState } from 'preact/hooks';
import { inches, type Length, subtract, zero } from '../../length/length';
import { markAt } from '../../length/tape';
import { writeLength } from '../../length/write';
import { viewOf } from '../../plan/board-layout';
import { trayFor } from '../../trade/grooves/tray';
import { Bar } from '../../ui/bar';
import { Blank } from '../../ui/blank';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { NoBoard } from '../shared/no-board';
import { useLength } from '../shared/stays';
import { trayErrorText } from './fit-words';

type Name = 'opening' | 'slack' | 'bow' | 'part';
const titles: Record<Name, string> = {
  opening: 'Clear opening between the sides',
  slack: 'Slack, both sides together',
  bow: 'Bow: extra opening at the worst place',
  part: 'Thickness of the trays',
};

/** A loose tray for the grooves of a board: its width, and what still sits in the groove when all goes one way. */
export function TrayScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const stays = {
    opening: useLength(`tray opening ${id}`),
    slack: useLength(`tray slack ${id}`, inches(3n, 64n)),
    bow: useLength(`tray bow ${id}`),
    part: useLength(`tray thick ${id}`),
  };
  const given = { opening: stays.opening[0], slack: stays.slack[0], bow: stays.bow[0], part: stays.part[0] };
  const [open, setOpen] = useState<Name>();
  const job = bench.job.value;
  const board = job?.boards.find((b) => b.id === id);
  if (!job || !board) return <NoBoard bench={bench} />;
  const view = viewOf(board, bench.shop.value, job.tape);
  const run = board.runs.find((r) => r.depth);
  const pitch = view.layout.facts.find((f) => f.run === run?.id)?.pitch;
  const tray =
    given.opening && run?.depth
      ? trayFor(given.opening, run.depth, {
          slack: given.slack ?? zero,
          bow: given.bow ?? zero,
          tape: job.tape,
        })
      : undefined;
  const blank = (name: Name) => (
    <Blank label={titles[name]} open={open === name} onTap={() => setOpen(name)}>
      {given[name] && <Given value={given[name]} />}
    </Blank>
  );
  return (
    <>
      <Bar
        title="Tray for these grooves"
        sub={board.name}
        leave={{ label: 'Back', onTap: () => bench.go({ at: 'change', board: id }) }}
      />
      <main class={open ? 'page docked' : 'page'}>
        <div class="fillin">
          Between sides {blank('opening')} apart, in grooves {run?.depth ? writeLength(run.depth) : '—'} deep,
          a tray {blank('part')} thick with {blank('slack')} of slack, the sides bowed out by {blank('bow')}.
        </div>
        {!run?.depth && <p class="pad-x wrongline">Say how deep the grooves are first.</p>}
        {tray?.ok && (
          <section class="pad-x facts" aria-live="polite">
            <div class="marked">
              <span class="note">Tray wide, down to the tape: it must enter</span>
              <Mixed value={tray.value.cut.value} rest={tray.value.cut.rest} size="arm" tape={job.tape} />
              <Remainder tape={job.tape} rest={tray.value.cut.rest} />
            </div>
            <p class={tray.value.thinBearing ? 'fact warn' : 'fact'}>
              Shoved to one side it still sits {writeLength(tray.value.bearing)} in the far groove
              {tray.value.thinBearing ? ': under 1/8 it may drop out.' : '.'}
            </p>
            {pitch && given.part && <ClearBetween pitch={pitch} part={given.part} />}
          </section>
        )}
        {tray && !tray.ok && <p class="pad-x wrongline">{trayErrorText(tray.error)}</p>}
      </main>
      {open && (
        <KeySheet
          key={open}
          title={titles[open]}
          tape={job.tape}
          fill="length"
          now={given[open]}
          onLength={stays[open][1]}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

/** Loose trays drop to the lower edge of their grooves: clear between them is pitch less tray, whatever the groove. */
function ClearBetween({ pitch, part }: { readonly pitch: Length; readonly part: Length }) {
  const clear = subtract(pitch, part);
  const mark = markAt(clear, '1/64');
  return (
    <p class="fact">
      They drop to the lower edge: {writeLength(mark.value)} clear between trays, however wide the grooves.
    </p>
  );
}
