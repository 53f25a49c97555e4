import type { ComponentChildren as Blank } from 'preact';
import { wordFor } from './counted';
import { measureUnit } from './pounds';

/** Things of one kind: what they are, where they live now, where they go. */

export const thing = 'Thing';
export const addThing = 'A thing';
export const added = 'A thing to keep';
export const takeOut = 'Take it out';

type Named = { readonly name: string };

export const nameOf = ({ name }: Named): string => name || thing;
export const takenOut = (x: Named): string => `${nameOf(x)} taken out`;
export const howTall = (x: Named): string => `${nameOf(x)}: how tall`;
export const howLong = (x: Named): string => `${nameOf(x)}: how long`;
export const howWide = (x: Named): string => `${nameOf(x)}: how wide`;
export const howMany = (x: Named): string => `${nameOf(x)}: how many`;
export const howHeavy = (x: Named): string => `${nameOf(x)}: how heavy, one of them`;
export const howFar = (x: Named): string => `${nameOf(x)}: their middle from the left end`;
export const lives = (x: Named): string => `${nameOf(x)}: where they live now`;
export const goes = (x: Named): string => `${nameOf(x)}: where they go`;
export const which = (x: Named): string => `${nameOf(x)}: which one, from the bottom up`;
export const what = ({ name }: Named): string => `What it is: ${name || 'a thing'}`;
/** As a sentence of what cannot be has them. */
export const rightEnd = 'the right end of the shelf';
export const ofThem = 'of them';
export const nowhere = 'nowhere yet';
export const drawerNo = (bank: string, no: number, column: number | undefined): string =>
  `${bank}: drawer ${no}${column === undefined ? '' : `, column ${column}`}`;
export const ofCase = (name: string, part: string): string => `${name}: ${part}`;

type ThingBlanks = Readonly<Record<'many' | 'name' | 'tall' | 'long' | 'heavy', Blank>>;

const sizes = ({ many, name, tall, long, heavy }: ThingBlanks) => (
  <>
    {many} {name}, {tall} tall, {long} long, {heavy} {measureUnit('weight')}
  </>
);

export const line = (at: ThingBlanks) => <>{sizes(at)}.</>;

/** On a shelf it counts how wide it is as well, and where it stands. */
export const shelfLine = (at: ThingBlanks & Readonly<Record<'wide' | 'from', Blank>>) => (
  <>
    {sizes(at)} each, {at.wide} wide, their middle {at.from} from the left end.
  </>
);

/** Where they live now, and where they go; `piece` where it is one of several. */
export const moves = ({
  lives: now,
  goes: next,
  piece,
}: Readonly<Record<'lives' | 'goes', Blank>> & { readonly piece: Blank | undefined }) => (
  <>
    Now in {now}; they go to {next}
    {piece !== undefined && <> no. {piece}</>}.
  </>
);

export const unweighed = (n: number): string =>
  n === 0 ? '' : ` ${n} ${wordFor(n, 'thing is', 'things are')} not weighed.`;
