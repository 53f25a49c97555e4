import type { ComponentChildren as Blank } from 'preact';

export const theWay = 'On the way in';
export const start =
  'Say in order what the case meets from the shop to its place. Each is tried for itself: between two of them there must be room to lay the case another way.';
export const add = { doorway: 'A doorway', turn: 'A turn', stair: 'A stair' } as const;
export const added = (kind: keyof typeof add): string => `${add[kind]} on the way in`;
export const takeAway = 'Take it away';
export const takenAway = (name: string): string => `${name} taken away`;
export const noCase = 'No case works out yet: how large it is is not known.';
export const handTitle = 'Room for one hand';
export const handTold = (hand: Blank) => <>Room for one hand beside and over the case: {hand}.</>;

/** What a blank of a thing on the way is called; things are numbered from 1. */
export const titles = {
  name: (no: number): string => `On the way ${no}: what it is called`,
  width: (no: number): string => `On the way ${no}: clear width, stop to stop`,
  height: (no: number): string => `On the way ${no}: clear height`,
  leaf: (no: number): string => `On the way ${no}: how wide the door itself is`,
  beyond: (no: number): string => `On the way ${no}: how far the room beyond goes straight on`,
  from: (no: number): string => `On the way ${no}: how wide it is before the turn`,
  into: (no: number): string => `On the way ${no}: how wide it is after the turn`,
  headroom: (no: number): string => `On the way ${no}: headroom, plumb over the nosings`,
  going: (no: number): string => `On the way ${no}: going of one step`,
  rise: (no: number): string => `On the way ${no}: rise of one step`,
  between: (no: number): string => `On the way ${no}: rail to wall`,
  steps: (no: number): string => `On the way ${no}: how its steps go`,
} as const;

export const straight = 'all straight';
export const winders = 'some turn';

export type Blanks = Readonly<Record<keyof typeof titles, Blank>>;

const doorway = (b: Blanks) => (
  <>
    {b.name}: {b.width} wide stop to stop, {b.height} high, the door off its hinges. The door itself is{' '}
    {b.leaf} wide, the room beyond goes on {b.beyond}.
  </>
);
const turn = (b: Blanks) => (
  <>
    {b.name}: from {b.from} wide into {b.into} wide, {b.height} high, wall to wall or rail to rail
  </>
);
const stair = (b: Blanks) => (
  <>
    {b.name}: steps {b.steps}, headroom {b.headroom} plumb over the nosings, {b.going} going, {b.rise} rise,{' '}
    {b.between} from rail to wall
  </>
);

/** The sentence of one thing, by its kind. */
export const lines = { doorway, turn, stair } as const;
