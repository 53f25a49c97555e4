import { useEffect, useRef, useState } from 'preact/hooks';
import { type BandKind, type Doubt, doubtOf } from '../length/bands';
import type { SlotKey } from '../length/keypad-slot';
import { isPositive, type Length } from '../length/length';
import { readLength } from '../length/read';
import { unitsOf } from '../length/tape';
import { writeShown } from '../length/write';
import { draftPlace, drafts, noteDraft } from './drafts';
import type { Came, TypedReading } from './in-hand';
import { begun, figureOf, givenBy, type Keyed, pressed, shownIn, typed, type Wanted } from './keyed';

export type KeyedProps = Wanted & {
  readonly title: string;
  /** What the blank is for, as far as it says how large a figure can be meant there. */
  readonly kind?: BandKind | undefined;
  /** Shown until a key is pressed. */
  readonly now?: Length | undefined;
  readonly nowCount?: number | undefined;
  /** Why a figure cannot be, and what would do: it is not taken. */
  readonly refuse?: ((value: Length | number) => string | undefined) | undefined;
  readonly onLength?: (value: Length | undefined) => void;
  readonly onCount?: (value: number | undefined) => void;
  /** Called with each keystroke, so that the drawing above can follow. */
  readonly onTry?: (value: Length | number | undefined) => void;
  readonly onClose: () => void;
};

/** What a blank is being filled with. However it is left, what can be meant is taken once. */
export function useKeyed(props: KeyedProps) {
  const draft = useDraft(props.title);
  const [keyed, set] = useState(() => begun(props, draft.found));
  const [asked, setAsked] = useState(draft.found !== '');
  const given = useRef(false);
  const doubt = doubtIn(keyed, props);
  const refused = doubt ? undefined : refusedIn(keyed, props);
  const stands = (next: Keyed) => {
    set(next);
    setAsked(false);
    draft.note(shownIn(next));
    // what cannot be meant leaves the drawing as it was
    if (!isOdd(next, props)) props.onTry?.(figureOf(next, props));
  };
  const press = (key: SlotKey) => {
    const next = pressed(keyed, key, props);
    if (next) stands(next);
  };
  const type = (text: string) => stands(typed(keyed, text));
  /** Takes what is there; false where it does not read or cannot be meant: it stays in its blank, half done. */
  const give = (): boolean => {
    if (given.current) return true;
    const found = givenBy(keyed, props);
    if (found.is === 'unread' || doubt || refused) {
      setAsked(true);
      return false;
    }
    given.current = true;
    draft.note('');
    if (found.is === 'length') props.onLength?.(found.value);
    if (found.is === 'count') props.onCount?.(found.value);
    return true;
  };
  const take = (value: Length) => {
    if (props.refuse?.(value)) return stands(typed(keyed, writeShown(value, unitsOf(props.tape))));
    given.current = true;
    draft.note('');
    props.onLength?.(value);
    props.onClose();
  };
  const leaving = useRef(give);
  leaving.current = give;
  useEffect(() => () => void leaving.current(), []);
  const shown = doubt && (asked || tooLarge(doubt, keyed, props)) ? doubt : undefined;
  const says = asked || isMore(keyed, props) ? refused : undefined;
  return { keyed, set: stands, press, type, give, take, doubt: shown, refused: says };
}

function doubtIn(keyed: Keyed, props: KeyedProps): Doubt | undefined {
  const given = givenBy(keyed, props);
  if (props.fill !== 'length' || given.is !== 'length' || !given.figure) return undefined;
  return doubtOf(given.figure, props.kind);
}

const isOdd = (keyed: Keyed, props: KeyedProps): boolean =>
  doubtIn(keyed, props) !== undefined || refusedIn(keyed, props) !== undefined;

function refusedIn(keyed: Keyed, props: KeyedProps): string | undefined {
  const value = figureOf(keyed, props);
  return value === undefined ? undefined : props.refuse?.(value);
}

/** Nothing so far may only be half keyed: `0` of `0.5`. */
function isMore(keyed: Keyed, props: KeyedProps): boolean {
  const value = figureOf(keyed, props);
  return typeof value === 'number' ? value > 0 : value !== undefined && isPositive(value);
}

/** Over its band no further key makes it right; under it the figure may only be half keyed. */
function tooLarge(doubt: Doubt, keyed: Keyed, props: KeyedProps): boolean {
  const value = figureOf(keyed, props);
  return doubt.code !== 'comma' && typeof value === 'object' && doubt.band?.most.lt(value) === true;
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
      props.onTry?.(before.touched ? figureOf(before, props) : (props.now ?? props.nowCount));
      return 'no-length-wanted';
    }
    // calipers have a decimal comma and never a thousand
    const figure = text.replace(',', '.');
    const said = unit && unit !== unitsOf(props.tape) ? `${figure} ${unit}` : figure;
    const next = typed(before, said);
    if (isPositive(read.value.value) && !isOdd(next, props)) {
      take(read.value.value);
      return 'taken';
    }
    type(said);
    return isPositive(read.value.value) ? 'shown' : 'not-above-zero';
  };
}
