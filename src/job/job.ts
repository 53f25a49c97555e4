import type { Length, Ratio } from '../length/length';
import type { Tape } from '../length/tape';
import type { Units } from '../length/units';
import type { Built, Case, Inside } from '../trade/carcass/case';
import type { Marks } from '../trade/carcass/kept';
import type { Said } from '../trade/carcass/matched';
import type { Bank, Column } from '../trade/fronts/bank';
import type { Board } from '../trade/grooves/board';
import type { HandJoint } from '../trade/joints/by-hand';
import type { Chosen } from '../trade/machines/through';
import type { HandWork } from '../trade/setups/operations';
import type { LayNotes } from '../trade/sheets/pieces';
import type { PlannedSheet } from '../trade/sheets/standing';
import type { Grain } from '../trade/sheets/stock';
import * as b from './bank-fields';
import { boardIn } from './board-of';
import { caseOf, newInside } from './case-fields';
import type { Json } from './entry';
import * as f from './fields';
import { jobFields, stockFields } from './fields';
import * as h from './hand-fields';
import { saidUnits } from './in-units';
import { type Install, installOf } from './install';
import { type BadPlace, badPlacesOf, baysOf, readingsOf } from './listed';
import { type Loads, type Lot, loadsOf } from './loads';
import { byOperation, children, type Grown, grow, named, pick, type Tree } from './tree';

/** A sheet or stick as measured by calipers, inches. */
export type Stock = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'sheet' | 'stick';
  readonly readings: readonly Length[];
  /** The id each reading is kept by. */
  readonly readingIds: readonly string[];
  readonly planned?: Length;
  readonly used?: Length;
  /** The greatest reading is in use as readings come. */
  readonly asRead?: boolean;
  readonly long?: Length;
  readonly wide?: Length;
  readonly trim?: Length;
  readonly grain?: Grain;
  readonly have?: number;
  readonly noMore?: boolean;
  readonly price?: Ratio;
  readonly like?: string;
  readonly badPlaces: readonly BadPlace[];
  readonly rough?: Length;
  /** Of what, in what species: as weighed, pounds a square foot; millions of pounds a square inch. */
  readonly stuff?: 'ply' | 'hardwood' | 'softwood' | 'pressed';
  readonly species?: string;
  readonly quartersawn?: boolean;
  readonly perFoot?: Ratio;
  readonly stiff?: Ratio;
};

/** A sheet, stick or offcut of the plan taken up. Inches. */
export type PlanSheet = PlannedSheet & {
  readonly stock: string;
  readonly no: number;
  readonly left?: string;
  /** Laid out anew elsewhere; it stands all the same once something of it is cut. */
  readonly gone?: boolean;
};

/** What the search said of the plan of a stock. */
export type PlanProof = { readonly least?: number; readonly proved?: boolean; readonly rests?: string };

/** A piece left over, big enough to be of use. Inches. */
export type Offcut = {
  readonly id: string;
  readonly stock: string;
  readonly length?: Length;
  readonly width?: Length;
};

/** How a joint was cut, beside where. Inches. */
export type Joint = { readonly width?: Length; readonly depth?: Length };

/** What was found out at a setup. Inches. */
export type Recipe = {
  readonly stack?: readonly Length[];
  readonly scale?: Length;
  readonly height?: Length;
  readonly got?: Length;
  readonly note?: string;
};

type Piece = { readonly recuts: number; readonly asLength?: Length; readonly asWidth?: Length };

/** What is kept of a part beside its tick: how its grooves are cut, and its pieces by copy. */
export type PartNotes = Partial<Board & LayNotes & Chosen & Marks & Omit<Said, 'lies'>> & {
  readonly pieces: Readonly<Record<string, Piece>>;
};

/** A job as decided and measured: worked out from its log, never stored. */
export type Job = Loads &
  Install & {
    readonly id: string;
    readonly name: string;
    readonly place: string;
    readonly note: string;
    readonly tape: Tape;
    /** Whose usual figures stand in, where that is not the unit of its marks: something was cut when that changed. */
    readonly usual?: Units;
    readonly boards: readonly Board[];
    readonly stock: readonly Stock[];
    readonly cases: readonly Case[];
    readonly banks: readonly Bank[];
    readonly things: readonly Lot[];
    readonly offcuts: readonly Offcut[];
    /** The plan taken up: how each sheet is cut. */
    readonly sheets: readonly PlanSheet[];
    /** By stock. */
    readonly proofs: Readonly<Record<string, PlanProof>>;
    readonly over?: Length;
    readonly overStick?: Length;
    readonly carry?: Ratio;
    readonly guideOnly?: boolean;
    /** Machines of the shop's own that cut the sheets, along the guide and at the rip fence. */
    readonly guideSaw?: string;
    readonly fenceSaw?: string;
    readonly work: readonly HandWork[];
    readonly joints: readonly HandJoint[];
    readonly parts: Readonly<Record<string, PartNotes>>;
    /** By key of a setup, or of its build. */
    readonly recipes: Readonly<Record<string, Recipe>>;
    /** Reasons by operation. */
    readonly let: Readonly<Record<string, string>>;
    /** How wide and how deep a ticked joint was cut, by operation. */
    readonly widths: Readonly<Record<string, Joint>>;
    readonly standing?: string;
    /** ISO 8601, when the job was deleted; it can come back for 30 days. */
    readonly deleted?: string;
    /** What it was read of: what only later screens ask for is read of it there (`room.ts`). */
    readonly tree: Tree;
    /** Paths whose values could not be read; their defaults stand in. */
    readonly unread: readonly string[];
  };

let last: Grown | undefined;

const known = new WeakMap<Tree, readonly [of: Units | undefined, made: unknown]>();

/** What a branch comes to is read once, as long as the branch is the same and so is what it is made of. */
function kept<T>(node: Tree, units: Units | undefined, read: () => T): T {
  let found = known.get(node);
  if (!found || found[0] !== units) {
    found = [units, read()];
    known.set(node, found);
  }
  return found[1] as T;
}

/** The things of a table, each said to be of these units where any are. */
const all = <T>(tree: Tree, table: string, read: (node: Tree, id: string) => readonly T[], units?: Units) =>
  children(tree, table).flatMap(([id, node]) =>
    kept(node, units, () => read(node, id).map((thing) => (units ? { ...thing, units } : thing))),
  );

/**
 * The typed job a log's values come to. A value missing or not readable falls back to its default. What was not written
 * anew since the last job that was read is the same object as in that one, so that what was worked out from it stands.
 */
export function jobOf(id: string, values: ReadonlyMap<string, Json>): Job {
  last = grow(values, last);
  const { tree, unread } = last;
  const own = pick(jobFields, tree);
  const marked = { tape: own.tape ?? '1/32', ...(own.usual ? { usual: own.usual } : {}) };
  const units = saidUnits(marked);
  return {
    id,
    name: own.name ?? '',
    place: own.place ?? '',
    note: own.note ?? '',
    ...marked,
    boards: all(tree, 'boards', boardIn, units),
    stock: all(tree, 'stock', stock),
    cases: all(tree, 'cases', readCase, units),
    banks: all(tree, 'banks', readBank, units),
    things: all(tree, 'things', thing),
    offcuts: all(tree, 'offcuts', offcut),
    sheets: all(tree, 'sheets', planSheet),
    proofs: named(children(tree, 'layouts'), (node) => pick(f.layoutFields, node)),
    ...(own.over ? { over: own.over } : {}),
    ...(own.overStick ? { overStick: own.overStick } : {}),
    ...(own.carry ? { carry: own.carry } : {}),
    ...(own.guideOnly ? { guideOnly: true } : {}),
    ...(own.guideSaw ? { guideSaw: own.guideSaw } : {}),
    ...(own.fenceSaw ? { fenceSaw: own.fenceSaw } : {}),
    ...loadsOf(tree),
    ...installOf(tree),
    work: all(tree, 'work', handWork),
    joints: all(tree, 'joints', handJoint),
    parts: named(children(tree, 'parts'), (node) => kept(node, undefined, () => partNotes(node))),
    recipes: named(children(tree, 'recipes'), (node) => pick(f.recipeFields, node)),
    let: byOperation(tree, 'let', (leaf) => pick(f.letFields, leaf).why),
    widths: byOperation(tree, 'widths', (leaf) => pick(f.widthFields, leaf)),
    ...(own.standing ? { standing: own.standing } : {}),
    tree,
    unread,
    ...(own.deleted ? { deleted: own.deleted } : {}),
  };
}

function stock(node: Tree, id: string): readonly Stock[] {
  const { gone, readings = [], bad = [], ...own } = pick(stockFields, node);
  if (gone) return [];
  const badPlaces = badPlacesOf(bad, children(node, 'badplace'));
  return [
    { id, name: '', kind: 'sheet', ...own, ...readingsOf(readings, children(node, 'reading')), badPlaces },
  ];
}

function readCase(node: Tree, id: string): readonly Case[] {
  const { gone, ...own } = pick(f.caseFields, node);
  if (gone) return [];
  const inside = children(node, 'inside').flatMap(([key, i]) => readInside(key, i));
  const built: Record<string, Built> = named(children(node, 'built'), (b) => pick(f.builtFields, b));
  const bays = baysOf(own.bays ?? [], children(node, 'bay'));
  return [caseOf(id, { ...own, bays }, { inside, built })];
}

function readInside(id: string, node: Tree): readonly Inside[] {
  const { gone, ...own } = pick(f.insideFields, node);
  return gone ? [] : [{ ...newInside(id), ...own }];
}

function readBank(node: Tree, id: string): readonly Bank[] {
  const { gone, ...own } = pick(b.bankFields, node);
  if (gone) return [];
  const fronts = b.byNumber(named(children(node, 'fronts'), (f) => pick(b.frontFields, f)));
  const columns = b.byNumber(named(children(node, 'columns'), column));
  return [b.bankOf(id, own, { fronts, columns })];
}

const column = (node: Tree): Column =>
  b.columnOf(
    pick(b.columnFields, node),
    named(children(node, 'fitted'), (f) => pick(b.fittedFields, f)),
  );

function thing(node: Tree, id: string): readonly Lot[] {
  const { gone, ...own } = pick(b.thingFields, node);
  return gone ? [] : [{ id, name: '', count: 1, ...own }];
}

function offcut(node: Tree, id: string): readonly Offcut[] {
  const { gone, ...own } = pick(f.offcutFields, node);
  return gone ? [] : [{ id, stock: '', ...own }];
}

function planSheet(node: Tree, id: string): readonly PlanSheet[] {
  const { gone, long, wide, kerf, tree, stock: of, no = 1, ...own } = pick(f.sheetFields, node);
  if (!long || !wide || !kerf || !tree || of === undefined) return [];
  return [{ id, stock: of, no, size: { long, wide }, kerf, tree, ...own, ...(gone ? { gone } : {}) }];
}

function handWork(node: Tree, id: string): readonly HandWork[] {
  const { gone, ...own } = pick(h.workFields, node);
  return gone ? [] : [{ id, part: '', name: '', machine: 'hand', ...own }];
}

function handJoint(node: Tree, id: string): readonly HandJoint[] {
  const { gone, ...own } = pick(h.jointFields, node);
  return gone ? [] : [{ id, part: '', kind: 'rabbet', at: 'back', takes: '', ...own }];
}

/** Which making of a copy was spoiled, 1 the first; 0 when that was taken back. */
const spoilOf = ([id, spoil]: readonly [string, Tree]): number =>
  pick(f.spoilFields, spoil).spoiled ? Number(id.slice(1)) : 0;

function partNotes(node: Tree): PartNotes {
  return {
    ...pick(f.partFields, node),
    pieces: named(children(node, 'pieces'), (piece) => ({
      ...pick(f.pieceFields, piece),
      recuts: Math.max(0, ...children(piece, 'spoils').map(spoilOf)),
    })),
  };
}
