import type { Length } from '../length/length';
import type { Thing } from '../trade/boxes/contents';
import type { Values } from './fields';
import { liftFields, shelfFields, solidFields, yearFields } from './loads-fields';
import { children, named, pick, type Tree } from './tree';

/**
 * Things of one kind, where they live now, and where they go: into a drawer (its bank, of several columns which from
 * the left, and its number from the top), or onto a shelf or a tray (its part, and which piece). Not said where is
 * undefined. Inches.
 */
export type Lot = Thing & {
  readonly wide?: Length;
  readonly bank?: string;
  readonly front?: number;
  readonly column?: number;
  readonly part?: string;
  readonly piece?: number;
  /** Their middle from the left end of the shelf. */
  readonly from?: Length;
  readonly lives?: string;
};

/** How a shelf or a run of trays is loaded and held. Inches. */
export type ShelfNotes = Partial<Values<typeof shelfFields>>;

/** How a case is moved in, and a load of it lifted. Inches, pounds, degrees. */
export type LiftNotes = Partial<Values<typeof liftFields>>;

/** A screw through a slot in solid wood. Inches. */
type SolidNotes = Partial<Values<typeof solidFields>>;

/** What of a job is heavy, lifted, or moves. */
export type Loads = {
  /** Moisture of wood and damp of air through the year, percent; what failed last time. */
  readonly year: Partial<Values<typeof yearFields>>;
  /** By part. */
  readonly shelves: Readonly<Record<string, ShelfNotes>>;
  readonly solid: Readonly<Record<string, SolidNotes>>;
  /** By case. */
  readonly lifts: Readonly<Record<string, LiftNotes>>;
};

export const loadsOf = (tree: Tree): Loads => ({
  year: pick(yearFields, tree),
  shelves: named(children(tree, 'shelves'), (node) => pick(shelfFields, node)),
  lifts: named(children(tree, 'lifts'), (node) => pick(liftFields, node)),
  solid: named(children(tree, 'solid'), (node) => pick(solidFields, node)),
});
