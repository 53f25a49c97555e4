import type { ComponentChildren as Blank } from 'preact';
import type { Case } from '../../trade/carcass/case';
import { asksDepth, jointAt, type jointsAt } from '../../trade/carcass/meetings';

/** What is joined to what; each is a choice. */
export const joinTitles = {
  bottom: 'How the bottom meets the sides',
  top: 'How the top meets the sides',
  partition: 'How partitions meet bottom and top',
  shelf: 'How fixed shelves meet their walls',
} as const;

type Joins = {
  readonly [M in keyof typeof jointsAt]: {
    readonly [J in (typeof jointsAt)[M][number]]: { readonly label: string; readonly hint: string };
  };
};

const uncut = 'nothing is cut: screws or dowels hold it';

/** A word for each joint a meeting may have. */
export const joins: Joins = {
  bottom: {
    dado: { label: 'in dadoes', hint: 'cut across the sides' },
    rabbet: { label: 'in rabbets', hint: 'at the lower ends of the sides' },
    butt: { label: 'butted between the sides', hint: uncut },
    over: { label: 'under the sides', hint: `they stand on it; ${uncut}` },
  },
  top: {
    rabbet: { label: 'in rabbets', hint: 'at the upper ends of the sides' },
    butt: { label: 'butted between the sides', hint: uncut },
    over: { label: 'over the sides', hint: `it lies on their ends; ${uncut}` },
  },
  partition: {
    dado: { label: 'in dadoes', hint: 'cut across bottom and top' },
    butt: { label: 'butted', hint: uncut },
  },
  shelf: {
    dado: { label: 'in dadoes', hint: 'cut across their walls' },
    butt: { label: 'butted', hint: uncut },
  },
};

const past = (at: Blank) => <>, {at} past each</>;

/** How the parts of the case are joined. */
export const meets = (
  c: Case,
  at: Readonly<Record<keyof typeof joinTitles | 'bottomPast' | 'topPast', Blank>>,
) => (
  <>
    The bottom {at.bottom}
    {jointAt(c, 'bottom') === 'over' && past(at.bottomPast)}
    {c.hasTop && <>, the top {at.top}</>}
    {c.hasTop && jointAt(c, 'top') === 'over' && past(at.topPast)}
    {c.partitions > 0 && <>, partitions {at.partition}</>}
    {c.inside.some(({ kind }) => kind === 'fixed') && <>, fixed shelves {at.shelf}</>}.{' '}
  </>
);

/** How deep what is cut for a joint is. */
export const deep = (
  c: Case,
  at: Readonly<Record<'dado' | 'partition' | 'fit' | 'bottom' | 'top', Blank>>,
) => {
  const [inSides, inFlats] = [asksDepth(c, 'dado'), asksDepth(c, 'partitionDado')];
  return (
    <>
      {inSides && <>Dadoes {at.dado} deep in the sides</>}
      {inFlats &&
        (inSides ? <>, {at.partition} for partitions</> : <>Dadoes {at.partition} deep for partitions</>)}
      {(inSides || inFlats) && <>, each {at.fit} wider than its sheet. </>}
      {asksDepth(c, 'bottomRabbet') && <>The rabbet for the bottom {at.bottom} deep. </>}
      {asksDepth(c, 'topRabbet') && <>The rabbet for the top {at.top} deep.</>}
    </>
  );
};

const lowest = 'or put the bottom in dadoes, or butt it between the sides.';

/** A bottom that lies at the lower ends of the sides has nothing of them under it. */
export const bottomLow = {
  rabbet: (by: string): string =>
    `A bottom in rabbets lies at the lower ends of the sides, so the case cannot stand ${by} off the floor. Make that 0, ${lowest}`,
  over: (by: string): string =>
    `The sides stand on the bottom, so the case cannot stand ${by} off the floor. Make that 0, ${lowest}`,
} as const;
