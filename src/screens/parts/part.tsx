import { useState } from 'preact/hooks';
import type { Tape } from '../../length/tape';
import { type Checklist, checklistOf } from '../../plan/checklist';
import { workOn } from '../../plan/part-work';
import type { Part } from '../../trade/carcass/part';
import { Bar } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import type { Bench } from '../bench';
import { GonePage } from '../shared/gone-page';
import { Noted } from '../shared/noted';
import { OneMark } from '../shared/one-mark';
import { partWord } from '../shared/part-words';
import { SpoiledDock } from '../shared/spoiled';
import { UndoButton } from '../shared/undo-button';
import { AsCut } from './as-cut';
import { HandJoints } from './hand-joints';
import { HandWork } from './hand-work';
import { PartDrawing } from './part-drawing';
import { PartOperations } from './part-operations';
import { SizeRow } from './size-row';
import * as words from './words';

/** One part: its drawing from the reference end, its sizes with their sums, and its own operations. */
export function PartScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const part = plan?.parts.find((p) => p.id === id);
  const leave = { label: words.parts, onTap: () => bench.go({ at: 'parts' }) };
  if (!plan || !part) return <GonePage title={words.part} leave={leave} says={words.gone} />;
  return <PartInHand {...{ bench, part, leave, list: checklistOf(plan, bench.folded.value) }} />;
}

type PartInHandProps = {
  readonly bench: Bench;
  readonly part: Part;
  readonly leave: { readonly label: string; readonly onTap: () => void };
  readonly list: Checklist;
};

function PartInHand({ bench, part, leave, list }: PartInHandProps) {
  const [spoiling, setSpoiling] = useState(false);
  const { plan } = list;
  const operations = workOn(plan, part.id);
  const stuff = plan.stuff.find((s) => s.id === part.stuff);
  return (
    <>
      <Bar title={partWord(part.name)} sub={words.madeOf(part, stuff)} leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        <PartDrawing part={part} />
        <SizeRow label={words.long(part)} size={part.length} tape={plan.job.tape} />
        <SizeRow label={words.wide} size={part.width} tape={plan.job.tape} />
        <OneMark {...{ bench, plan, operations }} answered />
        <Notes bench={bench} part={part} tape={plan.job.tape} />
        <Noted bench={bench} place={{ of: 'part', id: part.id }} />
        <AsCut bench={bench} part={part} list={list} />
        <PartOperations {...{ bench, part, list, operations }} />
        <HandJoints bench={bench} part={part} plan={plan} />
        <HandWork bench={bench} part={part} plan={plan} />
      </main>
      <div class="fixedbar">
        <Button label={words.spoiled} onTap={() => setSpoiling(true)} />
        <Onward label={words.toCuts} onTap={() => bench.go({ at: 'cuts' })} />
      </div>
      {spoiling && (
        <SpoiledDock {...{ bench, list }} card={{ operations }} onClose={() => setSpoiling(false)} />
      )}
    </>
  );
}

type NotesProps = { readonly bench: Pick<Bench, 'go'>; readonly part: Part; readonly tape: Tape };

/** What is to know of a part beside its sizes: its long point, its grooves, what else is cut in it. */
function Notes({ bench, part, tape }: NotesProps) {
  const joints = words.joints(part, tape);
  return (
    <>
      {part.mitres && <p class="pad-x note">{words.mitred(part.mitres)}</p>}
      {part.longPoint && <p class="pad-x note">{words.longPoint(part.longPoint.value)}</p>}
      {part.comesOff && <p class="pad-x note">{words.comesOff}</p>}
      {part.board && (
        <div class="pad-x adds">
          <Button
            label={words.grooves}
            icon="marks"
            onTap={() => bench.go({ at: 'marks', board: part.id })}
          />
        </div>
      )}
      {joints.length > 0 && (
        <ul class="problems pad-x">
          {joints.map((line) => (
            <li key={line} class="note">
              {line}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
