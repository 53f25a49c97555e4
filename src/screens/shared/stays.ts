import { useRef } from 'preact/hooks';
import type { Length } from '../../length/length';
import { fromStored, toStored } from '../../length/stored';
import { draftPlace, drafts, noteDraft } from '../../ui/drafts';

type Staying<T> = readonly [T, (value: T) => void];

/** What was given on a screen and belongs to no job: it outlives the screen, the page and a kill, as text. */
function useText(name: string, first: string): Staying<string> {
  const place = useRef(draftPlace(`= ${name}`)).current;
  return [drafts.value[place]?.text ?? first, (text) => noteDraft(place, '', text)];
}

/** A word of a few. */
export function useStays<T extends string>(name: string, words: readonly T[], first: T): Staying<T> {
  const [text, set] = useText(name, first);
  return [words.find((word) => word === text) ?? first, set];
}

/** Lengths, in the order they were given. */
export function useLengths(name: string, first: readonly Length[] = []): Staying<readonly Length[]> {
  const [text, set] = useText(name, first.map(toStored).join(' '));
  const lengths = text.split(' ').flatMap((one) => {
    const read = fromStored(one);
    return read.ok ? [read.value] : [];
  });
  return [lengths, (now) => set(now.map(toStored).join(' ') || 'none')];
}

/** A length, or none. */
export function useLength(name: string, first?: Length): Staying<Length | undefined> {
  const [[length], set] = useLengths(name, first ? [first] : []);
  return [length, (now) => set(now ? [now] : [])];
}
