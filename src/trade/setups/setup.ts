import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { type Gauge, gauges } from '../machines/gauges';
import type { MachineId } from '../machines/machines';
import type { OwnMachine } from '../machines/shop';
import { type On, spelled } from './on';

/** One state of one machine, dear to cheap: machine, cutter, height, then the figure. Inches. */
export type Setup = {
  /** The whole of it: a name that stays while its figures do. */
  readonly key: string;
  /** The dear part: what is lost when the cutter or the height is changed. */
  readonly build: string;
  readonly machine: MachineId;
  /** The machine of the shop's own that it is, which works like that. */
  readonly own?: Pick<OwnMachine, 'id' | 'name' | 'like'> | undefined;
  /** Width of stack or bit; none for a single blade. */
  readonly cutter?: Length | undefined;
  /** Height of the cutter: the depth of the cut. */
  readonly height?: Length | undefined;
  /** What the figure is set on. */
  readonly sets?: Gauge | undefined;
  readonly figure?: Rounded | undefined;
  readonly on: On;
};

/** A length as a piece of a key: exact, letters and digits. @example keyed(inches(-21n, 32n)) // 'm21d32' */
const keyed = (x: Length): string => `${x.s < 0n ? 'm' : ''}${x.n}d${x.d}`;

type Made = Omit<Setup, 'key' | 'build'>;

/**
 * A setup with its keys: no two setups have one key, no two builds one name.
 *
 * @example setupOf({ machine: 'rip', sets: 'rip-fence', figure, on: { at: 'true-edge' } }).build // 'rip'
 */
export function setupOf(made: Made): Setup {
  const { machine, own, cutter, height, sets, figure } = made;
  const on = spelled(made.on);
  const build = fitting([
    machine,
    ...(own ? [`y${own.id}`] : []),
    ...(cutter ? [`c${keyed(cutter)}`] : []),
    ...(height ? [`h${keyed(height)}`] : []),
    ...(figure || on === '' ? [] : [`w${plain(on)}`]),
  ]);
  const key = fitting([
    build,
    ...(figure
      ? [`${sets ? gauges[sets] : ''}${keyed(figure.value)}`, ...(on === '' ? [] : [`w${plain(on)}`])]
      : []),
  ]);
  const setup = { key, build, machine, own, cutter, height, sets, figure, on: made.on };
  return setup satisfies Record<keyof Setup, unknown>;
}

/** Letters and digits alone, a blank as 0; a number stands for what is left out, so that two words stay two. */
function plain(words: string): string {
  const kept = words.replaceAll(' ', '0').replace(/[^A-Za-z0-9]/g, '');
  return kept.length === words.length ? kept : `${kept}${folded(words)}`;
}

/** Keys stand in paths of the log: sixty characters at most, what is over folded into a number. */
const mostKey = 60;

function fitting(parts: readonly string[]): string {
  const key = parts.filter(Boolean).join('~');
  return key.length <= mostKey ? key : `${key.slice(0, mostKey - 14)}~${folded(key)}`;
}

/** A number for a text, 53 bits in letters and digits; the same text always gives the same. */
function folded(text: string): string {
  let sum = 0n;
  for (const sign of text)
    sum = (sum * 1_000_003n + BigInt(sign.codePointAt(0) ?? 0)) % 9_007_199_254_740_881n;
  return sum.toString(36);
}
