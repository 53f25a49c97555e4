import type { Checklist } from '../../plan/checklist';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import { Icon } from '../../ui/icon';
import { StoryStick } from '../../ui/story-stick';
import { WhenNear } from '../../ui/when-near';
import type { Bench } from '../bench';
import { partWord } from '../shared/part-words';
import * as words from './words';

type ByPartProps = { readonly list: Checklist; readonly go: Bench['go'] };

/** The same ticks by part: what each still wants. */
export function ByPart({ list, go }: ByPartProps) {
  const byPart = new Map<string, Operation[]>(list.plan.parts.map(({ id }) => [id, []]));
  for (const op of list.plan.operations) byPart.get(op.part)?.push(op);
  const cut = list.plan.parts.filter(({ id }) => byPart.get(id)?.length);
  return (
    <ul>
      {cut.map((part, k) => (
        <WhenNear
          key={part.id}
          as="li"
          of={part}
          high={rowHigh}
          before={k}
          rows={cut.length}
          draw={() => <PartRow part={part} ops={byPart.get(part.id) ?? []} list={list} go={go} />}
        />
      ))}
    </ul>
  );
}

/** About how high a row is, px: it says so much and no more. */
const rowHigh = 79;

type RowProps = ByPartProps & { readonly part: Part; readonly ops: readonly Operation[] };

function PartRow({ part, ops, list, go }: RowProps) {
  const done = ops.map((op) => list.doing.done(op.id));
  const cut = done.filter(Boolean).length;
  const says = words.partCut(cut, ops.length);
  return (
    <button type="button" class="sect" onClick={() => go({ at: 'part', id: part.id })}>
      <b>{partWord(part.name)}</b>
      <span>
        {says} {cut === ops.length && <Icon name="tick" />}
      </span>
      <StoryStick done={done} label={says} />
    </button>
  );
}
