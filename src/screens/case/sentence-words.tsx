import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import type { Case } from '../../trade/carcass/case';
import { counted, wordFor } from '../shared/counted';
import { exactly } from '../shared/exact-words';
import { looseTitles } from './loose-words';
import { stopTitles } from './stop-words';

export const sizes = 'Sizes';
export const stock = 'Stock';
export const joints = 'Joints';
export const inBays = (no: number): string => `In the bays, ${no}`;

export const size = (
  c: Case,
  at: {
    readonly name: Blank;
    readonly hold: Blank;
    readonly wide: Blank;
    readonly high: Blank;
    readonly deep: Blank;
    readonly feet: Blank;
    readonly partitions: Blank;
    readonly bays: Blank;
  },
) => (
  <>
    {at.name} with {at.hold}:{' '}
    {c.hold === 'outside' ? (
      <>
        {at.wide} wide, {at.high} high
      </>
    ) : (
      <>
        bays {at.wide} wide, {at.high} clear inside
      </>
    )}{' '}
    and {at.deep} deep, {at.feet} off the floor. It has {at.partitions}{' '}
    {wordFor(c.partitions, 'partition', 'partitions')}
    {at.bays}.
  </>
);

export const bays = (each: Blank) => <>, bays {each}</>;

export const stocks = (
  c: Case,
  of: (stock: 'side' | 'bottom' | 'top' | 'partition' | 'shelf' | 'tray' | 'stop') => Blank,
) => {
  const kinds = new Set(c.inside.map((i) => i.kind));
  return (
    <>
      Sides of {of('side')}, bottom of {of('bottom')}
      {c.hasTop && <>, top of {of('top')}</>}
      {c.partitions > 0 && <>, partitions of {of('partition')}</>}
      {(kinds.has('fixed') || kinds.has('loose')) && <>, shelves of {of('shelf')}</>}
      {kinds.has('trays') && <>, trays of {of('tray')}</>}
      {kinds.has('stop') && <>, stop strips of {of('stop')}</>}.
    </>
  );
};

export const topChip = (has: boolean): string => (has ? 'No top' : 'Add a top');
export const topChanged = 'Top';

// What stands in the bays.

export const add = {
  fixed: 'A fixed shelf',
  loose: 'Loose shelves',
  trays: 'Trays in grooves',
  rail: 'A middle rail',
  stop: 'A stop strip',
} as const;

export const takeOut = 'Remove';
export const takenOut = 'Taken out of the bay';
export const inBay = (bay: Blank) => <> in {bay}</>;

export const insideTitles = {
  shelf: 'Case bottom to the shelf',
  rail: 'How wide the rail is',
  under: 'Clear opening under the rail',
  width: 'How wide the grooves are',
  depth: 'How deep they are',
  first: 'First groove over the bottom',
  pitch: 'Groove to groove',
  room: 'Room at the top',
  slack: 'How much narrower than floor to floor',
  ...looseTitles,
  ...stopTitles,
  count: 'How many loose shelves',
  bay: 'Which bay, from the left as you face it',
} as const;

/** A blank of one thing in the bays: of several, which of them by its place in the list. */
export const insideTitle = (c: Case, id: string, title: keyof typeof insideTitles): string =>
  c.inside.length === 1
    ? insideTitles[title]
    : `${insideTitles[title]}, no. ${c.inside.findIndex((i) => i.id === id) + 1} of the list`;

/** Of several in its bay which, from the bottom up: as its part is called, and as it is drawn. */
export const fixed = (bay: Blank, at: Blank, no?: number) => (
  <>
    {no === undefined ? 'A fixed shelf' : `Fixed shelf ${no}`}
    {bay}, its lower face {at} over the bottom.
  </>
);

export const evenly = 'evenly spaced';

/** What evenly spaced shelves leave, and that it adds up. */
export const openingsSay = (openings: readonly Length[], shelves: number, clear: Length): string =>
  `Openings from the bottom up: ${openings.map(exactly).join(', ')}. With ${counted(shelves, 'shelf', 'shelves')} they make ${exactly(clear)}.`;

export const rail = (bay: Blank, wide: Blank, under: Blank) => (
  <>
    A middle rail{bay}, {wide} wide, over an opening of {under}.
  </>
);

export const trays = (
  bay: Blank,
  at: {
    readonly width: Blank;
    readonly depth: Blank;
    readonly first: Blank;
    readonly pitch: Blank;
    readonly room: Blank;
    readonly slack: Blank;
  },
) => (
  <>
    Tray grooves{bay}, {at.width} wide and {at.depth} deep, the first {at.first} over the bottom, {at.pitch}{' '}
    apart, leaving {at.room} at the top. Trays {at.slack} slack.
  </>
);
