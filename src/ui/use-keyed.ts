import { useEffect, useRef, useState } from 'preact/hooks';
import type { SlotKey } from '../length/keypad-slot';
import { isPositive, type Length } from '../length/length';
import { readLength } from '../length/read';
import { unitsOf } from '../length/tape';
import { draftPlace, drafts, noteDraft } from './drafts';
import type { Came, TypedReading } from './in-hand';
import {
  begun,
  draftOf,
  figureOf,
  givenBy,
  type Keyed,
  leftOver,
  pressed,
  typed,
  type Wanted,
} from './keyed';

export type KeyedProps = Wanted & {
  readonly title: string;
  /** Shown until a key is pressed. */
  readonly now?: Length | undefined;
  readonly nowCount?: number | undefined;
  readonly onLength?: (value: Length | undefined) => void;
  readonly onCount?: (value: number | undefined) => void;
  /** Called with each keystroke, so that the drawing above can follow. */
  readonly onTry?: (value: Length | number | undefined) => void;
  readonly onClose: () => void;
};

/** What a blank is being filled with. However it is left, what reads as a figure is taken once. */
export function useKeyed(props: KeyedProps) {
  const draft = useDraft(props.title);
  const [keyed, set] = useState(() => begun(props, draft.found));
  const given = useRef(false);
  const press = (key: SlotKey) => {
    const next = pressed(keyed, key, { wanted: props, draft: draft.found });
    if (next) set(next);
    if (!next || next.slot === keyed.slot) return;
    draft.note(draftOf(next, props));
    props.onTry?.(figureOf(next, props));
  };
  const type = (text: string) => {
    set((now) => typed(now, text));
    draft.note(text);
  };
  /** Takes what is there; false where it does not read. What was typed and not used stays a draft. */
  const give = (): boolean => {
    if (given.current) return true;
    const found = givenBy(keyed, props);
    if (found.is === 'unread') return false;
    given.current = true;
    draft.note(leftOver(keyed));
    if (found.is === 'length') props.onLength?.(found.value);
    if (found.is === 'count') props.onCount?.(found.value);
    return true;
  };
  const take = (value: Length) => {
    given.current = true;
    draft.note('');
    props.onLength?.(value);
    props.onClose();
  };
  const leaving = useRef(give);
  leaving.current = give;
  useEffect(() => () => void leaving.current(), []);
  return { keyed, set, press, type, give, take };
}

/** Where a draft was left, and where it is noted: at the page the panel was opened on. */
function useDraft(title: string) {
  const place = useRef(draftPlace(title));
  return {
    found: drafts.peek()[place.current]?.text ?? '',
    note: (text: string) => noteDraft(place.current, title, text),
  };
}

type Hands = Pick<ReturnType<typeof useKeyed>, 'set' | 'type' | 'take'>;

/**
 * What becomes of a reading that calipers typed. They say what a hand would say and then Done: what is wanted is taken
 * at once, what looks odd stays to be seen.
 *
 * @param before what stood before its first stroke
 */
export function cameBy(props: KeyedProps, before: Keyed, { set, type, take }: Hands) {
  return ({ text, unit }: TypedReading): Came => {
    const read = readLength(text, { unit: unit ?? unitsOf(props.tape) });
    if (props.fill !== 'length' || !read.ok) {
      set(before);
      type(before.typing);
      props.onTry?.(before.touched ? figureOf(before, props) : (props.now ?? props.nowCount));
      return 'no-length-wanted';
    }
    if (isPositive(read.value.value)) {
      take(read.value.value);
      return 'taken';
    }
    type(text);
    return 'not-above-zero';
  };
}
