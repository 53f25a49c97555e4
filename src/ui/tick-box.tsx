import { Icon } from './icon';
import './tick-box.css';

type TickProps = {
  readonly label: string;
  /** A second, smaller line under the name. */
  readonly note?: string;
  readonly ticked: boolean;
  /** Written to the phone's storage, not yet confirmed. */
  readonly saving?: boolean;
  /** It cannot be ticked yet. */
  readonly waits?: boolean;
  readonly onTap: () => void;
};

/** A real square that a glove can hit. */
export const TickBox = ({ label, ticked, saving, waits, onTap }: TickProps) => (
  <button
    type="button"
    class={saving ? 'tick saving' : 'tick'}
    role="checkbox"
    aria-checked={ticked}
    aria-busy={saving}
    aria-disabled={waits}
    aria-label={label}
    onClick={onTap}
  >
    {ticked && <Icon name="tick" />}
  </button>
);

/** A tick with its name beside it, for one copy at the saw. */
export const BigTick = ({ label, note, ticked, saving, onTap }: TickProps) => (
  <button
    type="button"
    class={saving ? 'bigtick saving' : 'bigtick'}
    role="checkbox"
    aria-checked={ticked}
    aria-busy={saving}
    onClick={onTap}
  >
    <span class="sq">{ticked && <Icon name="tick" />}</span>
    <span>
      {label}
      {note && <small>{note}</small>}
    </span>
  </button>
);

type LetterProps = TickProps & {
  /** The copy's letter; none where there is one. */
  readonly letter: string;
  /** Something must come before it: greyed, and still says why when tapped. */
  readonly blocked?: boolean;
};

/** A box for one copy of a piece, with its letter. */
export const LetterTick = ({ label, letter, ticked, blocked, saving, onTap }: LetterProps) => (
  <button
    type="button"
    class={`tick${saving ? ' saving' : ''}${blocked ? ' blocked' : ''}`}
    role="checkbox"
    aria-checked={ticked}
    aria-busy={saving}
    aria-label={blocked ? `${label}, blocked` : label}
    onClick={onTap}
  >
    {ticked ? (
      <>
        <small>{letter}</small>
        <Icon name="tick" />
      </>
    ) : (
      letter
    )}
  </button>
);
