import { editJob } from '../../job/edits';
import type { Job } from '../../job/job';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import * as words from './last-notes-words';
import './rows.css';

type NotesProps = { readonly bench: Pick<Bench, 'shelf' | 'folded' | 'act'>; readonly job: Job };

/**
 * What the job before noted for next time, while nothing of this one is cut: each is taken over by a tap into what
 * failed last time, and stands there then.
 */
export function LastNotes({ bench, job }: NotesProps) {
  const before = bench.shelf.jobs.value.find(
    (line) => line.id !== job.id && line.deleted === undefined && line.next,
  );
  const failed = job.year.failed ?? '';
  const open = (before?.next ?? []).filter((note) => !failed.includes(note));
  if (!before || open.length === 0 || bench.folded.value.ticks.size > 0) return null;
  return (
    <section class="pad-x" aria-label={words.fromLast(before.name)}>
      <h2 class="sec">{words.fromLast(before.name)}</h2>
      <ul class="problems">
        {open.map((note) => (
          <li key={note}>
            {note}{' '}
            <Chip
              label={words.takeOver}
              onTap={() => void bench.act(words.takenOver, editJob({ failed: words.withNote(failed, note) }))}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}
