import { whole } from '../../length/round';
import type { BiscuitNo } from '../fasteners/biscuits';
import type { DowelSize } from '../fasteners/dowels';
import { type BuyingLine, idOf } from './line';

/** What holds joints from inside, at one place. Counts whole, > 0. */
export type JoinSchedule = {
  readonly place: string;
  readonly count: number;
  readonly is: DowelSize | BiscuitNo;
};

/**
 * A line for each size of dowel and each number of biscuit, every place in it.
 *
 * @param schedules sizes in inches
 * @example joinLines([{ place: 'Bottom', count: 8, is: '20' }])[0].id // 'biscuits/20'
 */
export function joinLines(schedules: readonly JoinSchedule[]): readonly BuyingLine[] {
  const byKind = new Map<string, JoinSchedule[]>();
  for (const one of schedules) byKind.set(keyOf(one.is), [...(byKind.get(keyOf(one.is)) ?? []), one]);
  return [...byKind].flatMap(([id, own]) => lineOf(id, own));
}

const keyOf = (is: JoinSchedule['is']): string =>
  typeof is === 'string' ? `biscuits/${is}` : `dowels/${idOf(is.thick)}x${idOf(is.long)}`;

function lineOf(id: string, own: readonly JoinSchedule[]): readonly BuyingLine[] {
  const [first] = own;
  if (!first) return [];
  const uses = own.map(({ place, count }) => ({ place, count }));
  const amount = whole(own.reduce((n, { count }) => n + count, 0));
  const line = { id, name: own.map(({ place }) => place).join(', '), amount };
  return typeof first.is === 'string'
    ? [{ ...line, group: 'biscuits', unit: 'biscuit', why: { code: 'biscuits', no: first.is, uses } }]
    : [{ ...line, group: 'dowels', unit: 'dowel', why: { code: 'dowels', size: first.is, uses } }];
}
