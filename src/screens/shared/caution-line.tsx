import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { writeRoute } from '../routes';
import './caution-line.css';

/** One short line for any screen, and what more is said where there is room. */
export type CautionWords = readonly [short: string, more: string];

/**
 * All its words at any height, where the work is heavy; but where reasons to go ahead stand over it, only on a screen
 * high enough for both.
 */
export type Whole = 'always' | 'where-high';

type LineProps = {
  readonly bench: Bench;
  readonly code: string;
  readonly words: CautionWords;
  readonly whole?: Whole | undefined;
};

const classes: Record<Whole, string> = { always: 'whole', 'where-high': 'whole-high' };

/**
 * A line of caution. It shortens where room is short and is never hidden; tapped, it opens *Before you cut* at its
 * part.
 */
export const CautionLine = ({ bench, code, words: [short, more], whole }: LineProps) => (
  <button
    type="button"
    class={whole ? `caution ${classes[whole]}` : 'caution'}
    onClick={() => bench.go({ at: 'before', caution: code, from: writeRoute(bench.route.value).slice(2) })}
  >
    <span class="grow">
      {short} <span class="more">{more}</span>
    </span>
    <Icon name="next" />
  </button>
);
