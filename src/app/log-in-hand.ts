import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Change, Entry } from '../job/entry';
import { extend, type Folded, fold, merge, over, withChanges } from '../job/log';
import type { NewAct, Store } from '../store/store';
import { makeUnsaved, type UnsavedBox } from './unsaved';

/** The log of the job in hand, as it is kept and as it grows. */
export type LogInHand = {
  readonly jobId: Signal<string | undefined>;
  readonly entries: Signal<readonly Entry[]>;
  /** What the log comes to, and over it what is on its way: shown at once, and said to be on its way. */
  readonly folded: ReadonlySignal<Folded>;
  /** Goes up with each edit: a tick changes nothing that is worked out from the job. */
  readonly decided: Signal<number>;
  /** Acts written to storage and not yet confirmed, in order. */
  readonly underWay: ReadonlySignal<readonly NewAct[]>;
  /** Ends when nothing is under way any more. */
  readonly settled: () => Promise<void>;
  readonly unsaved: UnsavedBox;
  readonly setAside: Signal<number>;
  /** Goes up with each act of this page. */
  readonly acted: Signal<number>;
  /** @param coming the job, where it has been asked for already */
  readonly load: (id: string, coming?: ReturnType<Store['load']>) => Promise<void>;
  /** Takes in what another page has added since. */
  readonly catchUp: () => Promise<void>;
  readonly write: (label: string, changes: readonly Change[], undoes?: string) => Promise<boolean>;
  readonly append: (act: NewAct) => Promise<boolean>;
};

/** The log's own signals; `kept` is what the log comes to, without what is on its way. */
type Log = Pick<LogInHand, 'jobId' | 'entries' | 'folded' | 'decided' | 'unsaved' | 'setAside' | 'acted'> & {
  readonly kept: Signal<Folded>;
  readonly underWay: Signal<readonly NewAct[]>;
};

/** @param at rows set aside before, and what is done when another job is opened */
export function logInHand(
  store: Store,
  at: { readonly setAside: number; readonly onOther: () => void },
): LogInHand {
  const log = logSignals(at.setAside);
  const { append, settled } = appending(log, store);

  async function write(label: string, changes: readonly Change[], undoes?: string): Promise<boolean> {
    const id = log.jobId.value;
    if (id === undefined || changes.length === 0) return false;
    // over what this page shows: what another page took in meanwhile was not seen, and stands beside it
    const seen = undoes === undefined ? { changes: over(log.kept.value, changes) } : { changes, undoes };
    return append({ job: id, label, ...seen });
  }

  return {
    ...log,
    settled,
    load: async (id, coming = store.load(id)) => {
      const loaded = await coming;
      if (id !== log.jobId.value) at.onOther();
      opened(log, id, loaded);
    },
    catchUp: () => catchUp(log, store),
    write,
    append,
  };
}

function logSignals(before: number): Log {
  const jobId = signal<string | undefined>(undefined);
  const entries = signal<readonly Entry[]>([]);
  const kept = signal<Folded>(fold([]));
  const underWay = signal<readonly NewAct[]>([]);
  const folded = computed<Folded>(() => {
    const edits = underWay.value.flatMap(({ job, changes }) => (job === jobId.value ? changes : []));
    return edits.some(({ kind }) => kind === 'edit') ? withChanges(kept.value, edits) : kept.value;
  });
  const unsaved = makeUnsaved();
  const [decided, setAside, acted] = [signal(0), signal(before), signal(0)];
  return { jobId, entries, kept, underWay, folded, unsaved, decided, setAside, acted };
}

/** The log goes on with entries that were kept. */
function took({ kept, entries, decided }: Log, fresh: readonly Entry[]): void {
  const next = extend(kept.value, fresh);
  const all = next ? [...entries.value, ...fresh] : merge(entries.value, fresh);
  batch(() => {
    entries.value = all;
    kept.value = next ?? fold(all);
    if (!next || fresh.some((e) => e.kind === 'edit')) decided.value += 1;
  });
}

type Loaded = Awaited<ReturnType<Store['load']>>;

/** A job is in hand as it was read. */
function opened({ jobId, entries, kept, decided, setAside }: Log, id: string, loaded: Loaded): void {
  batch(() => {
    // what was acknowledged while it was read, or is in the journal alone, stays
    const all = id === jobId.peek() ? merge(loaded.entries, entries.peek()) : loaded.entries;
    jobId.value = id;
    entries.value = all;
    kept.value = fold(all);
    decided.value += 1;
    setAside.value += loaded.setAside;
  });
}

const placeOf = ({ count, device }: Entry): string => `${count}.${device}`;

async function catchUp(log: Log, store: Store): Promise<void> {
  const { jobId, entries } = log;
  const id = jobId.value;
  if (id === undefined) return;
  const have = new Set(entries.value.map(placeOf));
  const from = Math.max(1, (entries.value[entries.value.length - 1]?.count ?? 0) - 200);
  const fresh = (await store.since(id, from)).filter((e) => !have.has(placeOf(e)));
  if (fresh.length > 0 && jobId.value === id) took(log, fresh);
}

/** Acts on their way to storage: shown at once, then kept, or named among what could not be. */
function appending(log: Log, store: Store): Pick<LogInHand, 'append' | 'settled'> {
  const { underWay, decided, unsaved, jobId, acted } = log;
  const flying = new Set<Promise<unknown>>();

  async function append(act: NewAct): Promise<boolean> {
    const decides = act.changes.some(({ kind }) => kind === 'edit');
    const mark = (acts: readonly NewAct[]) => {
      underWay.value = acts;
      if (decides) decided.value += 1;
    };
    batch(() => mark([...underWay.value, act]));
    const going = store.append(act);
    flying.add(going);
    const done = await going;
    flying.delete(going);
    batch(() => {
      mark(underWay.value.filter((one) => one !== act));
      if (done.ok) unsaved.saved({ act });
      else unsaved.failed({ label: act.label, why: done.error, act, again: () => append(act) });
      if (done.ok && jobId.value === act.job) took(log, done.value);
      if (done.ok) acted.value += 1;
    });
    return done.ok;
  }

  async function settled(): Promise<void> {
    while (flying.size > 0) await Promise.allSettled(flying);
  }
  return { append, settled };
}
