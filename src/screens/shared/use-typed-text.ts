import { useEffect, useRef, useState } from 'preact/hooks';
import { cutTo } from '../../ui/cut-text';
import { draftPlace, drafts, noteDraft } from '../../ui/drafts';

type TypedProps = {
  /** What the blank is called on its page: what is left half typed is found again by it. */
  readonly place: string;
  /** What is half typed, as it is told of elsewhere. */
  readonly title: string;
  readonly now: string;
  /** Most characters. */
  readonly most: number;
  /** Given the trimmed text, once, where it differs from what stood. */
  readonly onDone: (text: string) => void;
};

type Typed = {
  readonly text: string;
  readonly onInput: (event: { readonly currentTarget: HTMLInputElement | HTMLTextAreaElement }) => void;
  /** Takes a text; leaving does so by itself. */
  readonly keep: (text: string) => void;
};

/** A text being typed: however its field is left, what was typed is kept; ended by force, it is there again. */
export function useTypedText({ place: name, title, now, most, onDone }: TypedProps): Typed {
  const place = useRef(draftPlace(name)).current;
  const [text, setText] = useState(drafts.peek()[place]?.text ?? now);
  const kept = useRef(false);
  const keep = (typed: string) => {
    if (kept.current) return;
    kept.current = true;
    noteDraft(place, title, '');
    if (typed.trim() !== now) onDone(cutTo(typed.trim(), most));
  };
  const leaving = useRef(() => keep(text));
  leaving.current = () => keep(text);
  useEffect(() => () => leaving.current(), []);
  const onInput: Typed['onInput'] = ({ currentTarget: field }) => {
    const typed = cutTo(field.value, most);
    if (typed !== field.value) field.value = typed;
    setText(typed);
    noteDraft(place, title, typed);
  };
  return { text, onInput, keep };
}
