import type { Entry, Json } from '../../job/entry';
import type { Job } from '../../job/job';
import { amount } from '../../job/kinds';
import { said } from '../../job/merge';
import { ownNameIn } from '../../job/own-names';
import { fieldAt } from '../../job/paths';
import { fromStored } from '../../length/stored';
import { Bare, Given } from '../../ui/given';
import * as words from './words';

type SaidProps = { readonly entry: Entry; readonly job: Job };

/** What one phone said of a place, as large as it can be read by: a figure, a list of them, or words. */
export function Said({ entry, job }: SaidProps) {
  const json = said(entry);
  if (json === null)
    return <span class="word">{entry.kind === 'edit' ? words.takenAway : words.notCut}</span>;
  if (entry.kind === 'edit' && entry.path.endsWith('/gone'))
    return <span class="word">{json === true ? words.takenAway : words.stays}</span>;
  if (Array.isArray(json)) return <List items={json} />;
  const field = entry.kind === 'edit' ? fieldAt(entry.path) : undefined;
  const number = field === amount ? amount.read(json) : undefined;
  if (number) return <Bare value={number} />;
  return <One json={json} job={job} isText={typeof field?.read(json) === 'string'} />;
}

type OneProps = { readonly json: Json; readonly job: Job; readonly isText: boolean };

/** A text of the log is words to a reader too, or a length: a length is kept as text. */
function One({ json, job, isText }: OneProps) {
  if (typeof json === 'boolean') return <span class="word">{json ? words.yes : words.no}</span>;
  const length = typeof json === 'string' && !isText ? fromStored(json) : undefined;
  if (length?.ok) return <Given value={length.value} />;
  const text = String(json);
  const name = job.stock.find((s) => s.id === text)?.name || ownNameIn(job, text);
  return <span class="word">{name || text || words.nothing}</span>;
}

function List({ items }: { readonly items: readonly Json[] }) {
  if (items.length === 0) return <span class="word">{words.noItems}</span>;
  return (
    <span class="saidlist">
      {items.map((item, k) => {
        const length = fromStored(String(item));
        return length.ok ? <Given key={k} value={length.value} /> : <span key={k}>–</span>;
      })}
    </span>
  );
}
