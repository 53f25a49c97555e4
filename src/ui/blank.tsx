import type { ComponentChildren } from 'preact';
import { Icon } from './icon';

type BlankProps = {
  /** What the blank is for, spoken: "Length of the board". */
  readonly label: string;
  readonly open?: boolean;
  readonly wrong?: boolean;
  /** Opens a list rather than keys. */
  readonly choice?: boolean;
  readonly children?: ComponentChildren;
  readonly onTap: () => void;
};

/** A blank in a sentence: tap it and the keys dock below. Empty ones are dashed. */
export function Blank({ label, open, wrong, choice, children, onTap }: BlankProps) {
  const empty = children === undefined || children === null || children === false;
  const state = `${open ? ' open' : ''}${wrong ? ' wrong' : ''}${empty ? ' empty' : ''}`;
  return (
    <button
      type="button"
      class={`blank${state}`}
      aria-expanded={open ?? false}
      aria-label={empty ? `${label}: not given` : undefined}
      onClick={onTap}
    >
      {!empty && <span class="sr">{label}: </span>}
      {empty ? <span class="dots">····</span> : children}
      {choice && <Icon name="down" />}
    </button>
  );
}
