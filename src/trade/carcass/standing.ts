import { add, type Length, sum, times, zero } from '../../length/length';
import { layOut } from '../grooves/lay-out';
import { looseDeep, looseLong } from '../shelves/loose';
import { woodEdging } from '../shelves/wood-edging';
import { given, minus, plus, type Sum, sumOf, type Term } from '../sums/sum';
import { slackOf } from './boards';
import type { Case, Inside } from './case';
import { frameOf } from './frame';
import { jointAt, reachOf } from './meetings';
import { type Making, partOf } from './panels';
import type { Part } from './part';
import type { PartName } from './part-name';
import { lengthIn, type Sizes } from './sizes';
import { numberOf } from './stands-as';
import { stopHigh, stopLong } from './stops';
import { tonguesOf } from './tongues';
import { usualOf } from './usual';

/**
 * Shelves, trays and middle rails: what stands in the bays. A fixed shelf is part of the dry-fit; the others are cut to
 * length once that has been measured.
 */
export function standing(making: Making, panels: readonly Part[]): readonly Part[] {
  const make: Record<Inside['kind'], (i: Inside) => Part> = {
    fixed: (i) => fixedShelf(making, i),
    loose: (i) => looseShelf(making, i),
    trays: (i) => tray(making, i, panels),
    rail: (i) => middleRail(making, i),
    stop: (i) => stopStrip(making, i),
  };
  const { inside } = making.sizes.case;
  return [...inside.map((i) => make[i.kind](i)), ...inside.flatMap((i) => shelfEdging(making, i))];
}

/** Fitted to its bay or opening in length alone: it is ripped with the rest. */
const toLength = { stage: 'after-dry-fit', fitted: 'length' } as const;

/** What it is; its bay where there are several, and its number where its bay has several of its kind. */
const nameOf = (making: Making, i: Inside): PartName => ({
  role: 'inside',
  kind: i.kind,
  ...placeOf(making, i),
});

function placeOf({ sizes: { case: c } }: Making, i: Inside): { readonly bay?: number; readonly no?: number } {
  const no = numberOf(c, i);
  return { ...(c.partitions === 0 ? {} : { bay: i.bay }), ...(no === undefined ? {} : { no }) };
}

/** How deep a shelf is let into either wall of its bay. */
function seats({ sizes }: Making, bay: number): readonly [Length, Length] {
  return [reachOf(sizes, wallsOf(sizes.case, bay).left), reachOf(sizes, wallsOf(sizes.case, bay).right)];
}

/** A bay as planned: what is cut for the dry-fit knows no other. */
const planned = ({ bays }: Sizes, bay: number): Sum => bays[bay - 1] ?? given('bay', zero);

const asBuilt = ({ real }: Sizes, bay: number): Sum => real(bay);

/** A length across a bay, and what it goes across: where the case is one bay, the whole of it. */
function inBay({ sizes }: Making, bay: number, rest: readonly Term[], of = asBuilt) {
  const long = (by: Sizes): Sum => {
    const wide = of(by, bay);
    return sumOf(plus('bay', wide.value, wide), ...rest);
  };
  return sizes.case.partitions === 0
    ? ({ length: lengthIn(sizes, 'across', long), spans: { length: 'across', width: 'deep' } } as const)
    : ({ length: long(sizes), spans: { length: `bay${bay}`, width: 'deep' } } as const);
}

function fixedShelf(making: Making, i: Inside): Part {
  const [left, right] = seats(making, i.bay);
  const tongued = jointAt(making.sizes.case, 'shelf') === 'tongue';
  const part = partOf(making, {
    role: i.id,
    name: nameOf(making, i),
    stock: 'shelf',
    ...inBay(
      making,
      i.bay,
      [
        plus(tongued ? 'left-tongue' : 'left-dado', left),
        plus(tongued ? 'right-tongue' : 'right-dado', right),
      ],
      planned,
    ),
    width: making.sizes.inner,
    enters: true,
    end: 'left',
    stage: 'carcass',
  });
  return { ...part, tongues: tonguesOf(making.sizes, 'shelf', wallsOf(making.sizes.case, i.bay)) };
}

/** What the ends of a shelf stand in. */
const wallsOf = ({ partitions }: Case, bay: number) =>
  ({
    left: bay === 1 ? 'shelf' : 'inPartition',
    right: bay === partitions + 1 ? 'shelf' : 'inPartition',
  }) as const;

function looseShelf(making: Making, i: Inside): Part {
  return partOf(making, {
    role: i.id,
    name: nameOf(making, i),
    stock: 'shelf',
    ...inBay(making, i.bay, looseLong(making.sizes.case, i)),
    width: sumOf(...making.sizes.inner.terms, ...looseDeep(i)),
    enters: true,
    copies: i.count ?? 1,
    end: 'left',
    ...toLength,
  });
}

/** Strips as long as the shelves they are stuck on, ripped to the edging; trimmed flush once they are on. */
function shelfEdging(making: Making, i: Inside): readonly Part[] {
  const edging = woodEdging(making.sizes, i);
  if (!edging) return [];
  const { length, spans } = inBay(making, i.bay, looseLong(making.sizes.case, i));
  const part = partOf(making, {
    role: `${i.id}~edge`,
    name: { role: 'shelfedge', ...placeOf(making, i) },
    stock: 'shelfedge',
    length,
    spans: { length: spans.length },
    width: given('front-edging', edging.thick),
    enters: true,
    copies: i.count ?? 1,
    end: 'left',
    ...toLength,
  });
  return [{ ...part, strip: true }];
}

function tray(making: Making, i: Inside, panels: readonly Part[]): Part {
  return partOf(making, {
    role: i.id,
    name: nameOf(making, i),
    stock: 'tray',
    ...inBay(making, i.bay, [
      plus('two-groove-depths', times(i.depth ?? zero, 2n)),
      minus('slack', slackOf(making.sizes.case, i)),
    ]),
    width: making.sizes.inner,
    enters: true,
    copies: Math.max(1, grooves(making, i, panels)),
    end: 'left',
    ...toLength,
  });
}

/** A strip between the walls of a bay that what closes the bay comes to rest on: clear of both. */
function stopStrip(making: Making, i: Inside): Part {
  const { case: c } = making.sizes;
  const { length, spans } = inBay(making, i.bay, stopLong(c, i));
  return partOf(making, {
    role: i.id,
    name: nameOf(making, i),
    stock: 'stop',
    length,
    spans: { length: spans.length },
    width: stopHigh(c, i),
    enters: true,
    end: 'left',
    ...toLength,
  });
}

/** As many trays as there are grooves in the wall left of the bay. */
function grooves({ sizes }: Making, i: Inside, panels: readonly Part[]): number {
  const wall = i.bay === 1 ? 'left' : `partition${i.bay - 1}`;
  const board = panels.find((p) => p.id === `${sizes.case.id}~${wall}`)?.board;
  const run = i.bay === 1 ? i.id : `${i.id}b`;
  return board ? layOut(board).grooves.filter((g) => g.run === run).length : 0;
}

function middleRail(making: Making, i: Inside): Part {
  const frame = frameOf(making.sizes);
  const opening = frame.openings[i.bay - 1]?.wide ?? sumOf(plus('opening', zero));
  const part = partOf(making, {
    role: i.id,
    name: nameOf(making, i),
    stock: 'frame',
    length: sumOf(plus('frame-opening', opening.value, opening)),
    width: sumOf(plus('rail', i.wide ?? usualOf(making.sizes.case).rail)),
    spans: { length: making.sizes.case.partitions === 0 ? 'frame' : `bay${i.bay}` },
    end: 'left',
    ...toLength,
  });
  return { ...part, strip: true };
}

/**
 * Height of the frame opening over the highest middle rail of a bay. Inches.
 * @example openingOver(sizes, 2) // 25 7/16
 */
export function openingOver(sizes: Making['sizes'], bay: number): Length {
  const frame = frameOf(sizes);
  const rails = sizes.case.inside.filter((i) => i.kind === 'rail' && i.bay === bay);
  const taken = rails.map((i) => add(i.at ?? zero, i.wide ?? usualOf(sizes.case).rail));
  return sum([frame.middles.value, times(sum(taken), -1n)]);
}
