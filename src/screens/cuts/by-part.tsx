import type { Checklist } from '../../plan/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Icon } from '../../ui/icon';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { partWord } from '../shared/part-words';
import * as words from './words';

/** The same ticks by part: what each still wants. */
export function ByPart({ list, go }: { readonly list: Checklist; readonly go: Bench['go'] }) {
  const byPart = new Map<string, Operation[]>(list.plan.parts.map(({ id }) => [id, []]));
  for (const op of list.plan.operations) byPart.get(op.part)?.push(op);
  return (
    <ul>
      {list.plan.parts.map((part) => {
        const ops = byPart.get(part.id) ?? [];
        if (ops.length === 0) return null;
        const done = ops.map((op) => list.doing.done(op.id));
        const cut = done.filter(Boolean).length;
        const says = words.partCut(cut, ops.length);
        return (
          <li key={part.id}>
            <button type="button" class="sect" onClick={() => go({ at: 'part', id: part.id })}>
              <b>{partWord(part.name)}</b>
              <span>
                {says} {cut === ops.length && <Icon name="tick" />}
              </span>
              <StoryStick done={done} label={says} />
            </button>
          </li>
        );
      })}
    </ul>
  );
}
