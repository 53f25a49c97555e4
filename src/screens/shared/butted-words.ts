import type { JoinBy } from '../../job/install';
import type { Butted } from '../../trade/carcass/butted';
import type { TakesPart } from '../../trade/carcass/part-name';

export const title = 'Butted joints';

export const lines =
  'Straight screws go in along these lines, drawn on the face away from what they hold: over the middle of it. Their holes are drilled through both with the case clamped up dry, so they are no cut of a part alone.';

/** What screws hold along a line. */
export const holds = ({ part, no }: TakesPart): string => (no === undefined ? part : `${part} ${no}`);

/** The lines of one part, from its own end. */
export const linesOn = (on: string, end: string, at: readonly string[]): string =>
  `${on}, from its ${end} end: ${at.join('; ')}.`;

/** Common practice, no source. */
export const carries =
  'What stands on a butted shelf or bottom hangs on its screws or dowels alone. For a heavy load let it into dadoes, or put a cleat under each end.';

export const whatHolds = 'What holds the butted joints';

const by: Readonly<Record<JoinBy | 'screws', string>> = {
  dowel: 'dowels',
  biscuit: 'biscuits',
  slant: 'slant screws',
  screws: 'screws',
};

/** What is set out to hold them, each by its name; or that nothing is. */
export const heldBy = (
  all: readonly {
    readonly by: JoinBy | 'screws';
    readonly name?: string | undefined;
    readonly at?: Butted | undefined;
  }[],
) =>
  all.length === 0
    ? 'not yet said'
    : all.map(({ name, at, by: held }) => name || (at ? `${at} by ${by[held]}` : by[held])).join(', ');
