import { useState } from 'preact/hooks';
import type { Tape } from '../../length/tape';
import type { Change } from '../../trade/setups/changes';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import { whatWords } from './cut-words';
import './change-list.css';
import { workWord } from './part-words';

type ListProps = {
  readonly changes: readonly Change[];
  readonly tape: Tape;
  /** So many lines until the rest is asked for. */
  readonly most?: number;
};

/** Old to new for each figure of what is not cut yet. Like figures of like pieces stand in one line. */
export function ChangeList({ changes, tape, most = 10 }: ListProps) {
  const [all, setAll] = useState(false);
  if (changes.length === 0) return <p class="note">Nothing that is not cut yet changes by a mark.</p>;
  const lines = grouped(changes);
  const more = all ? 0 : lines.length - most;
  return (
    <>
      <ul class="changes">
        {lines.slice(0, all ? lines.length : most).map(({ change, more: alike }) => (
          <li key={change.op.id}>
            <span class="grow">
              {workWord(change.op.name)}, {whatWords(change.op, tape)}
              {change.width ? ', how wide' : change.depth ? ', how deep' : ''}
              {alike > 0 && ` and ${alike} like it`}
            </span>
            <span class="nb">
              <Inline value={change.was} tape={change.width ? '0.001' : tape} /> →{' '}
              <Inline value={change.now} tape={change.width ? '0.001' : tape} />
            </span>
          </li>
        ))}
      </ul>
      {more > 0 && (
        <button type="button" class="nextset more" onClick={() => setAll(true)}>
          <span class="grow">{more === 1 ? 'and one more' : `and ${more} more`}</span>
          <Icon name="down" />
        </button>
      )}
    </>
  );
}

function grouped(changes: readonly Change[]): readonly { readonly change: Change; readonly more: number }[] {
  const groups = new Map<string, { change: Change; more: number }>();
  for (const change of changes) {
    const key = `${change.op.part}|${change.was.toFraction()}|${change.now.toFraction()}`;
    const found = groups.get(key);
    if (found) found.more += 1;
    else groups.set(key, { change, more: 0 });
  }
  return [...groups.values()];
}
