import type { Tape } from '../../length/tape';
import type { Change } from '../../trade/setups/changes';
import { Inline } from '../../ui/mixed';
import { whatWords } from './cut-words';
import './change-list.css';
import { workWord } from './part-words';

const mostShown = 10;

/** Old to new for each figure of what is not cut yet. Like figures of like pieces stand in one line. */
export function ChangeList({ changes, tape }: { readonly changes: readonly Change[]; readonly tape: Tape }) {
  if (changes.length === 0) return <p class="note">Nothing that is not cut yet would change by a mark.</p>;
  const lines = grouped(changes);
  return (
    <>
      <ul class="changes">
        {lines.slice(0, mostShown).map(({ change, more }) => (
          <li key={change.op.id}>
            <span class="grow">
              {workWord(change.op.name)}, {whatWords(change.op, tape)}
              {change.width ? ', how wide' : change.depth ? ', how deep' : ''}
              {more > 0 && ` and ${more} like it`}
            </span>
            <span class="nb">
              <Inline value={change.was} tape={change.width ? '0.001' : tape} /> →{' '}
              <Inline value={change.now} tape={change.width ? '0.001' : tape} />
            </span>
          </li>
        ))}
      </ul>
      {lines.length > mostShown && <p class="note">and {lines.length - mostShown} more.</p>}
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
