import { useState } from 'preact/hooks';
import { editPiece } from '../../job/edits';
import { equals, forDrawing } from '../../length/length';
import { writeLength } from '../../length/write';
import { type Checklist, checklistOf } from '../../plan/checklist';
import { recutsOf } from '../../plan/recuts';
import type { Part, Size } from '../../trade/carcass/part';
import { layOut } from '../../trade/grooves/lay-out';
import { piecesOf } from '../../trade/setups/part-operations';
import { Bar } from '../../ui/bar';
import { BoardLying } from '../../ui/board-lying';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import { sideWords, whatWords } from '../shared/cut-words';
import { drawn } from '../shared/drawn-board';
import { exactly as w } from '../shared/exact-words';
import { setupTitle } from '../shared/setup-title';
import { SpoiledDock } from '../shared/spoiled';
import { UndoButton } from '../shared/undo-button';
import { Why } from '../shared/why';
import { HandWork } from './hand-work';

/** One part: its drawing from the reference end, its sizes with their sums, and its own operations. */
export function PartScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const part = plan?.parts.find((p) => p.id === id);
  const leave = { label: 'Parts', onTap: () => bench.go({ at: 'parts' }) };
  if (!plan || !part) {
    return (
      <>
        <Bar title="Part" leave={leave} />
        <main class="page">
          <p class="pad-x empty-line">This part is not in the job as it stands.</p>
        </main>
      </>
    );
  }
  return <PartInHand {...{ bench, part, list: checklistOf(plan, bench.folded.value) }} />;
}

type PartInHandProps = { readonly bench: Bench; readonly part: Part; readonly list: Checklist };

function PartInHand({ bench, part, list }: PartInHandProps) {
  const [spoiling, setSpoiling] = useState(false);
  const { plan } = list;
  const ops = plan.operations.filter((op) => op.part === part.id);
  const stuff = plan.stuff.find((s) => s.id === part.stuff);
  return (
    <>
      <Bar
        title={part.name}
        sub={`${part.copies > 1 ? `${part.copies} of them, ` : ''}${stuff ? `${stuff.name}, ${w(stuff.thickness)}` : 'by hand'}`}
        leave={{ label: 'Parts', onTap: () => bench.go({ at: 'parts' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        <PartDrawing part={part} />
        <SizeRow
          words={part.end === 'bottom' ? 'Long, bottom to top' : 'Long'}
          size={part.length}
          list={list}
        />
        <SizeRow words="Wide" size={part.width} list={list} />
        {part.longPoint && (
          <p class="pad-x note">Long point {w(part.longPoint.value)}: cut to it, never to the short one.</p>
        )}
        {part.comesOff && <p class="pad-x note">Held by screws alone: it comes off again.</p>}
        {part.board && (
          <div class="pad-x adds">
            <Button
              label="Its grooves, marked out"
              icon="marks"
              onTap={() => bench.go({ at: 'marks', board: part.id })}
            />
          </div>
        )}
        <Joints part={part} />
        <AsCut bench={bench} part={part} list={list} />
        <h2 class="sec pad-x">Its cuts, in order</h2>
        <ul>
          {ops.slice(0, mostShown).map((op) => {
            const card = list.cards.find((c) => c.operations.includes(op));
            const was = op.what === 'test' ? undefined : list.cutTo(op.id)?.figure;
            const off = was && !equals(was, op.figure);
            return (
              <li key={op.id}>
                <button
                  type="button"
                  class="nextset"
                  onClick={() => card && bench.go({ at: 'setup', id: card.id })}
                >
                  <span class="grow">
                    <b>
                      {list.doing.done(op.id) && <Icon name="tick" />} {setupTitle(op)}
                    </b>
                    <span class="s muted block">
                      {part.copies > 1 ? `${op.name}: ` : ''}
                      {whatWords(op)}
                      {off && `; cut at ${w(was)}, now wants ${w(op.figure)}`}
                    </span>
                  </span>
                  {op.setup.figure && <Mixed value={op.setup.figure.value} tape={plan.job.tape} />}
                </button>
              </li>
            );
          })}
        </ul>
        {ops.length > mostShown && <p class="pad-x note">and {ops.length - mostShown} more, on Cuts.</p>}
        <HandWork bench={bench} part={part} plan={plan} />
      </main>
      <div class="fixedbar">
        <Button label="Spoiled" onTap={() => setSpoiling(true)} />
        <button type="button" class="btn main" onClick={() => bench.go({ at: 'cuts' })}>
          To the cuts <Icon name="next" />
        </button>
      </div>
      {spoiling && (
        <SpoiledDock
          bench={bench}
          list={list}
          card={{ operations: ops }}
          onClose={() => setSpoiling(false)}
        />
      )}
    </>
  );
}

const mostShown = 40;

/** The part lying, its reference end at the left against the blue block, to scale; what is cut in it shown. */
function PartDrawing({ part }: { readonly part: Part }) {
  const length = forDrawing(part.length.sum.value);
  if (length <= 0) return null;
  const grooves = part.board ? drawn(layOut(part.board).grooves) : [];
  const cuts = [...part.laps, ...part.notches].map((cut) => ({
    id: cut.id,
    near: forDrawing(cut.near),
    width: forDrawing(cut.long),
    done: false,
  }));
  const ends = part.rabbets
    .filter((r) => r.along.at === 'end')
    .map((r) => ({
      id: r.id,
      near: r.along.named === 'top' ? length - forDrawing(r.width) : 0,
      width: forDrawing(r.width),
      done: false,
    }));
  const edges = part.rabbets.filter((r) => r.along.at === 'edge' && !r.from);
  const [edge] = edges;
  return (
    <div class="pad-x drawing">
      <BoardLying
        length={length}
        grooves={[...grooves, ...cuts, ...ends]}
        edge={edge ? forDrawing(edge.width) / forDrawing(part.width.sum.value) : 0}
        label={`${part.name} to scale, ${part.end} end at the left`}
      />
      <p class="note">
        {part.end} end at the left, on the blue block.
        {edge && ` The back edge lies at the top, its rabbet ${w(edge.width)} wide.`}
      </p>
    </div>
  );
}

const modes = {
  floor: 'down: it must go in',
  ceil: 'up: it must take something in',
  halfExpand: 'to the nearest: a flush fit',
};

function SizeRow({
  words,
  size,
  list,
}: {
  readonly words: string;
  readonly size: Size;
  readonly list: Checklist;
}) {
  const [open, setOpen] = useState(false);
  const { tape } = list.plan.job;
  return (
    <div>
      <button type="button" class="nextset sizerow" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          <b>{words}</b>
          <span class="s muted block">why?</span>
        </span>
        <Mixed value={size.mark.value} rest={size.mark.rest} size="bench" tape={tape} />
        <Remainder rest={size.mark.rest} tape={tape} by={false} />
      </button>
      {open && (
        <div class="pad-x">
          <Why sum={size.sum} tape={tape} />
          <p class="note">
            {equals(size.sum.value, size.mark.value)
              ? 'Exactly on the mark.'
              : `Rounded ${modes[size.mode]}. Exact: ${w(size.sum.value)}.`}
          </p>
        </div>
      )}
    </div>
  );
}

function Joints({ part }: { readonly part: Part }) {
  const lines = [
    ...part.rabbets.map(
      (r) =>
        `Rabbet ${r.words}: ${w(r.width)} wide along the ${sideWords(r.along)}, ${w(r.depth)} deep${r.from && r.to ? `, stopped: ${w(r.from)} to ${w(r.to)} from the ${part.end} end` : ''}.`,
    ),
    ...part.notches.map(
      (n) =>
        `Notch ${w(n.near)} from the ${part.end} end: ${w(n.long)} long, ${w(n.deep)} deep; all partitions clamped as one.`,
    ),
    ...part.laps.map(
      (l) => `Lap ${w(l.near)} from the ${part.end} end: ${w(l.long)} long, ${w(l.deep)} deep.`,
    ),
  ];
  if (lines.length === 0) return null;
  return (
    <ul class="problems pad-x">
      {lines.map((line) => (
        <li key={line} class="note">
          {line}
        </li>
      ))}
    </ul>
  );
}

/** A piece that came out otherwise than wanted: its true size, and what to do about it. */
function AsCut({ bench, part, list }: PartInHandProps) {
  const [open, setOpen] = useState<{ readonly copy: string; readonly field: 'asLength' | 'asWidth' }>();
  const notes = list.plan.job.parts[part.id]?.pieces;
  const pieces = piecesOf(part, recutsOf(list.plan.job, part.id)).slice(0, 12);
  const off = pieces.flatMap((p) => {
    const own = notes?.[p.id];
    const long = own?.asLength && !equals(own.asLength, part.length.mark.value);
    const wide = own?.asWidth && !equals(own.asWidth, part.width.mark.value);
    return long || wide ? [p.name] : [];
  });
  return (
    <section aria-label="As cut">
      <h2 class="sec pad-x">As cut, where it differs</h2>
      {off.length > 0 && (
        <p class="pad-x wrongline">
          <Icon name="warn" />
          {off.join(', ')} came out otherwise than wanted. Recut, or make the mates match this one.
        </p>
      )}
      <ul>
        {pieces.map((piece) => (
          <li key={piece.id} class="nextset ascut">
            <span class="grow">{piece.name}</span>
            {(['asLength', 'asWidth'] as const).map((field) => {
              const value = notes?.[piece.id]?.[field];
              return (
                <button
                  key={field}
                  type="button"
                  class="chip"
                  aria-label={`${piece.name}, true ${field === 'asLength' ? 'length' : 'width'}`}
                  onClick={() => setOpen({ copy: piece.id, field })}
                >
                  {field === 'asLength' ? 'long ' : 'wide '}
                  {value ? <Given value={value} /> : '····'}
                </button>
              );
            })}
          </li>
        ))}
      </ul>
      {open && (
        <KeySheet
          key={`${open.copy}${open.field}`}
          title={open.field === 'asLength' ? 'True length' : 'True width'}
          tape="1/64"
          fill="length"
          now={notes?.[open.copy]?.[open.field]}
          onLength={(value) =>
            void bench.act(
              `As cut: ${part.name} ${value ? writeLength(value) : ''}`.trim(),
              editPiece(part.id, open.copy, { [open.field]: value }),
            )
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}
