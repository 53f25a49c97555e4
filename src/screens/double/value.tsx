import { fromStored } from '../../length/stored';
import type { Entry, Json } from '../../store/entry';
import { said } from '../../store/heads';
import type { Job } from '../../store/job';
import { fieldAt } from '../../store/paths';
import { Given } from '../../ui/mixed';

type SaidProps = { readonly entry: Entry; readonly job: Job };

/** What one phone said of a place, as large as it can be read by: a figure, a list of them, or words. */
export function Said({ entry, job }: SaidProps) {
  const json = said(entry);
  if (json === null) return <span class="word">{entry.kind === 'edit' ? 'taken away' : 'not cut'}</span>;
  if (entry.kind === 'edit' && entry.path.endsWith('/gone'))
    return <span class="word">{json === true ? 'taken away' : 'stays'}</span>;
  if (Array.isArray(json)) return <List items={json} />;
  return <One json={json} job={job} words={entry.kind === 'edit' && isText(entry.path, json)} />;
}

/** Whether a text of the log is one to a reader too; a length is kept as text. */
const isText = (path: string, json: Json): boolean => typeof fieldAt(path)?.read(json) === 'string';

function One({ json, job, words }: { readonly json: Json; readonly job: Job; readonly words: boolean }) {
  if (typeof json === 'boolean') return <span class="word">{json ? 'yes' : 'no'}</span>;
  const length = typeof json === 'string' && !words ? fromStored(json) : undefined;
  if (length?.ok) return <Given value={length.value} />;
  const text = String(json);
  return <span class="word">{job.stock.find((s) => s.id === text)?.name || text || 'nothing'}</span>;
}

function List({ items }: { readonly items: readonly Json[] }) {
  if (items.length === 0) return <span class="word">none</span>;
  return (
    <span class="saidlist">
      {items.map((item, k) => {
        const length = fromStored(String(item));
        return length.ok ? <Given key={k} value={length.value} /> : <span key={k}>–</span>;
      })}
    </span>
  );
}
