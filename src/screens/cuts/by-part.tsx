import type { Checklist } from '../../plan/checklist';
import { workOn } from '../../plan/part-work';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import { Icon } from '../../ui/icon';
import { StoryStick } from '../../ui/story-stick';
import { NearRows } from '../../ui/when-near';
import type { Bench } from '../bench';
import { partWord } from '../shared/part-words';
import * as words from './words';

type ByPartProps = { readonly list: Checklist; readonly go: Bench['go'] };

/** The same ticks by part: what each still wants. */
export function ByPart({ list, go }: ByPartProps) {
  const { plan } = list;
  const cut = plan.parts.filter(({ id }) => workOn(plan, id).length > 0);
  return (
    <ul>
      <NearRows
        of={cut}
        id={({ id }) => id}
        high={rowHigh}
        draw={(part) => <PartRow part={part} ops={workOn(plan, part.id)} list={list} go={go} />}
      />
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
