import type { ComponentChildren } from 'preact';
import { readLength } from '../length/read';
import { draftPlace, drafts } from './drafts';
import { Unit } from './given';
import { Icon } from './icon';
import './blank.css';
import './mixed.css';

type BlankProps = {
  /** What the blank is for, spoken: "Length of the board". */
  readonly label: string;
  readonly open?: boolean;
  readonly wrong?: boolean;
  /** Opens a list rather than keys. */
  readonly choice?: boolean;
  /** It takes a length: empty, it says in what unit. */
  readonly length?: boolean;
  readonly children?: ComponentChildren;
  readonly onTap: () => void;
};

/** A blank in a sentence: tap it and the keys dock below. Empty ones are dashed. */
export function Blank({ label, open, wrong, choice, length, children, onTap }: BlankProps) {
  const empty = children === undefined || children === null || children === false;
  const half = open ? undefined : drafts.value[draftPlace(label)]?.text;
  const state = [open && 'open', (wrong || half) && 'wrong', empty && 'empty', choice && 'choice']
    .filter(Boolean)
    .map((word) => ` ${word}`)
    .join('');
  return (
    <button
      type="button"
      class={`blank${state}`}
      data-name={label}
      aria-expanded={open ?? false}
      aria-label={empty && !half ? `${label}: not given` : undefined}
      onClick={onTap}
    >
      {(!empty || half) && <span class="sr">{label}: </span>}
      {half ? <Half text={half} /> : empty ? <Dots length={length ?? false} /> : children}
      {choice && <Icon name="down" />}
    </button>
  );
}

/** What stands where nothing is given yet; of a length, with its unit. */
export const Dots = ({ length = true }: Pick<BlankProps, 'length'>) => (
  <>
    <span class="dots">····</span>
    {length && <Unit />}
  </>
);

/** What was left half done stays in its blank, and says why it does not count. */
const Half = ({ text }: { readonly text: string }) => (
  <>
    {text} <small class="rem">{readLength(text).ok ? 'not taken yet' : 'not a length yet'}</small>
  </>
);
