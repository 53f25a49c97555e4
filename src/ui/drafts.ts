import { signal } from '@preact/signals';

/** What is keyed or typed and not taken yet, as text. */
type Draft = { readonly title: string; readonly text: string };
/** By place: the address of the page, and the blank there. */
export type Drafts = Readonly<Record<string, Draft>>;

/** Kept as it is typed, so that it is there again when the page comes back, whatever ended it. */
export const drafts = signal<Drafts>({});

/** More than anyone leaves lying about; the oldest goes first. */
const most = 200;

/** The job in hand: a page of one job is not that of another. */
export const draftsOf = signal('');

/** The place of a blank: its job and page, and what it is called. */
export const draftPlace = (title: string): string => `${pageOfDrafts()} ${title}`;
export const pageOfDrafts = (): string => `${draftsOf.value} ${globalThis.location?.hash || '#/'}`;

/** Notes what a blank holds half done; empty, it holds nothing. */
export function noteDraft(place: string, title: string, text: string): void {
  const { [place]: before, ...others } = drafts.peek();
  if ((before?.text ?? '') === text) return;
  const all = text === '' ? others : { ...others, [place]: { title, text } };
  drafts.value = Object.fromEntries(Object.entries(all).slice(-most));
}

/** Drafts as kept, checked: anything else is none. */
export function readDrafts(kept: unknown): Drafts {
  if (typeof kept !== 'object' || kept === null) return {};
  const sound = Object.entries(kept).flatMap(([place, one]) => {
    const { title, text } = (one ?? {}) as Record<string, unknown>;
    return typeof title === 'string' && typeof text === 'string' ? [[place, { title, text }] as const] : [];
  });
  return Object.fromEntries(sound.slice(-most));
}
