import { computed, signal } from '@preact/signals';
import type { Copies } from '../screens/copies';
import { type Copied, copiedOut, finishedOne, isDue, putOff, readCopied } from '../store/copied';
import type { Store } from '../store/store';

/** A count written at every change would double the writing; a kill may lose a few of these, and no change. */
const every = 10;

type CopyCount = Pick<Copies, 'since' | 'at' | 'due' | 'putOff' | 'finished'> & {
  readonly add: (changes: number) => void;
  /** Everything up to a count went out. */
  readonly copied: (upTo: number) => Promise<void>;
};

/** Calls when the page is hidden: nobody says when it is ended. */
const onHidden = (then: () => void): void =>
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && then());

/** How much has changed since everything was last copied out, kept over restarts and added up over pages. */
export function copyCount(store: Store): CopyCount {
  const kept = signal<Copied>(readCopied(undefined));
  const more = signal(0);
  const now = computed((): Copied => ({ ...kept.value, since: kept.value.since + more.value }));
  let turn: Promise<unknown> = store.setting('copied').then((json) => {
    kept.value = readCopied(json);
  });

  /** One after the other, each from what stands by then: another page counts too. */
  function keep(change: (copied: Copied) => Copied): Promise<void> {
    const next = turn.then(async () => {
      const mine = more.peek();
      const there = readCopied(await store.setting('copied'));
      const copied = change({ ...there, since: there.since + mine });
      await store.keep('copied', { ...copied });
      kept.value = copied;
      more.value -= mine;
    });
    turn = next.catch(() => undefined);
    return next.catch(() => undefined); // a reminder that is not kept is no trouble worth a word
  }

  onHidden(() => more.peek() > 0 && void keep((copied) => copied));
  return {
    since: computed(() => now.value.since),
    at: computed(() => now.value.at),
    due: computed(() => isDue(now.value)),
    add: (changes) => {
      more.value = more.peek() + changes;
      if (changes > 0 && more.peek() % every === 0) void keep((copied) => copied);
    },
    putOff: () => void keep(putOff),
    finished: () => {
      if (!now.peek().finished) void keep(finishedOne);
    },
    copied: (upTo) =>
      keep((copied) => ({
        ...copiedOut(copied, new Date().toISOString()),
        since: Math.max(0, copied.since - upTo),
      })),
  };
}
