import { useState } from 'preact/hooks';
import { forDrawing, isPositive, zero } from '../../length/length';
import type { View } from '../../plan/board-layout';
import type { Board } from '../../trade/grooves/board';
import { fenceMarkShift } from '../../trade/grooves/fence-marks';
import { thinnestWeb } from '../../trade/grooves/lands';
import { spacerFor } from '../../trade/grooves/lay-out';
import { centredStart } from '../../trade/grooves/place';
import { machineFor } from '../../trade/machines/groove-machines';
import { Blank } from '../../ui/blank';
import { Given } from '../../ui/given';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { OpenBook } from '../../ui/open-book';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { boardWord } from '../shared/part-words';
import { useLength } from '../shared/stays';
import { warningText } from '../shared/warning-words';
import * as words from './facts-words';
import { Stepping } from './stepping';

type FactsProps = {
  readonly view: View;
  readonly bench: Pick<Bench, 'shop' | 'keepShop'>;
  readonly show: 'marks' | 'stops';
};

/** What is worth knowing of a layout: what was left out, thin wood, which end is safe, how stepping would drift. */
export function Facts({ view, bench, show }: FactsProps) {
  const { board, layout } = view;
  const { still } = machineFor(board.machine);
  return (
    <section class="facts pad-x" aria-label={words.worthKnowing}>
      {layout.dropped.map((d) => (
        <p key={d.groove.id} class="fact">
          {words.droppedText(d)}
        </p>
      ))}
      {layout.warnings.map((warning, k) => (
        <p key={k} class="fact warn">
          <Icon name="warn" />
          {warningText(warning, layout)}
        </p>
      ))}
      <OneStop board={board} />
      {board.made === 'pair' && <Pair view={view} />}
      <WebLeft view={view} />
      <EndForEnd view={view} />
      {still === 'pencil' && <Rebuilt view={view} />}
      {(still || show === 'marks') && (
        <Stepping view={view} stepError={bench.shop.value.stepError} keepShop={bench.keepShop} />
      )}
    </section>
  );
}

/** A board and its facing part cut on one stop: where a spacer goes, and how thick it is. */
function OneStop({ board }: { readonly board: Board }) {
  const found = board.mate && spacerFor(board.datum ?? zero, board.mate);
  if (!found || !isPositive(found.spacer)) return null;
  const [own, mate] = [words.partName(boardWord(board)), board.mateName];
  const spacer = <Given value={found.spacer} />;
  return (
    <p class="fact">
      {found.at === 'mate' ? words.oneStop(own, mate, spacer) : words.oneStop(mate, own, spacer)}
    </p>
  );
}

/** The thinnest wood left, also where it is sound; a warning says it where it is not. */
function WebLeft({ view: { board, layout } }: { readonly view: View }) {
  const found = board.thickness && thinnestWeb(layout.grooves, board.thickness);
  if (!found || !board.thickness || !isPositive(found.web)) return null;
  if (layout.warnings.some(({ code }) => code === 'web')) return null;
  return <p class="fact">{words.webText(found, { layout, thickness: board.thickness })}</p>;
}

/** Whether the board may be turned round; for a single run, where it would have to start for that. */
function EndForEnd({ view: { board, layout } }: { readonly view: View }) {
  if (layout.endForEndSafe) return <p class="fact good">{words.endForEnd}</p>;
  const [run, ...others] = [...board.runs, ...board.wides];
  const [facts] = layout.facts;
  if (others.length > 0 || !run?.width || !facts?.pitch || !board.length) return null;
  const start = centredStart(board.length, facts.pitch, { n: facts.nears.length, width: run.width });
  if (!isPositive(start)) return null;
  return <p class="fact">{words.notEndForEnd(start)}</p>;
}

/** The pair as an open book, and what changes between left and right. */
function Pair({ view }: { readonly view: View }) {
  const { board, layout } = view;
  const stopped = layout.grooves.some((g) => g.stopped);
  const across = board.across ? forDrawing(board.across) : 12;
  const grooves = layout.grooves.map((g) => ({
    id: g.id,
    near: forDrawing(g.near),
    width: forDrawing(g.width),
    done: true,
    ...(g.stopped ? { stopped: forDrawing(g.stopped) } : {}),
  }));
  return (
    <div class="fact">
      <OpenBook
        length={board.length ? forDrawing(board.length) : 1}
        across={across}
        grooves={grooves}
        label={words.openBook}
      />
      <p class="note">{words.pair(stopped)}</p>
    </div>
  );
}

/** Fence pencil marks belong to one stack: how far they all move for another. */
function Rebuilt({ view }: { readonly view: View }) {
  const [open, setOpen] = useState(false);
  const [next, setNext] = useLength(`next stack ${view.board.id}`);
  const { board } = view;
  const now = board.cutter ?? view.marks[0]?.groove.width;
  if (!now) return null;
  const shift = next && fenceMarkShift(now, next, board.grows);
  return (
    <div class="fact stepping">
      <p>
        {words.rebuilt(
          now,
          <Blank length label={words.nextStackTitle} open={open} onTap={() => setOpen(true)}>
            {next && closely(next)}
          </Blank>,
          words.marksMove(shift, board.end),
        )}
      </p>
      {open && (
        <KeySheet
          title={words.nextStackTitle}
          tape="1/64"
          fill="length"
          now={next}
          onLength={setNext}
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}
