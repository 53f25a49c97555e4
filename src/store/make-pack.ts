import type { Entry, Json } from '../job/entry';
import { type Columns, kinds, type Pack, type Table } from './pack';

/** Packs entries of a job, at least one. */
export function packOf(job: string, no: number, entries: readonly Entry[]): Pack {
  const columns: Columns = {
    device: tableOf(entries.map(({ device }) => device)),
    count: entries.map(({ count }) => count),
    at: tableOf(entries.map(({ at }) => at)),
    label: tableOf(entries.map(({ label }) => label)),
    act: entries.map(({ act, device, count }) => (act === `${device}.${count}` ? 0 : act)),
    kind: entries.map(({ kind }) => kinds.indexOf(kind)),
    place: tableOf(entries.map((entry) => (entry.kind === 'edit' ? entry.path : entry.op))),
    said: entries.map(saidIn),
    over: entries.map(({ over }) => over ?? 0),
    undoes: entries.map(({ undoes }) => undoes ?? 0),
  };
  const counts = columns.count;
  const [from, to] = [Math.min(...counts), Math.max(...counts)];
  return { job, no, size: entries.length, from, to, text: JSON.stringify(columns) };
}

const saidIn = (entry: Entry): Json =>
  entry.kind === 'edit' ? entry.value : entry.kind === 'tick' ? entry.figure : 0;

function tableOf(texts: readonly string[]): Table {
  const places = new Map<string, number>();
  const which = texts.map((text) => {
    const place = places.get(text) ?? places.size;
    places.set(text, place);
    return place;
  });
  return [[...places.keys()], which];
}
