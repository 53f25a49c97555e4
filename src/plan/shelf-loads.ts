import type { Job } from '../job/job';
import type { Lot, ShelfNotes } from '../job/loads';
import {
  add,
  half,
  inches,
  type Length,
  less,
  type Ratio,
  ratio,
  shortest,
  subtract,
} from '../length/length';
import type { Result } from '../length/result';
import { toWhole } from '../length/round';
import { grainOf } from '../length/tape';
import { loadOf } from '../trade/boxes/contents';
import type { Inside } from '../trade/carcass/case';
import type { Part } from '../trade/carcass/part';
import type { Worked } from '../trade/carcass/parts';
import { evenShelf, shelfMost } from '../trade/loads/even-shelf';
import { endsCarry } from '../trade/loads/reactions';
import { type Edging, type Sag, type Shelf, type ShelfError, sagOf } from '../trade/loads/sag';
import { sagCures } from '../trade/loads/sag-cures';
import { slabWeight, stiffnessOf } from '../trade/loads/stuff';
import { stuffOf } from './parts-of-job';
import { kindOf, stiffOf, usualTall, weighedAs } from './stuff-of';

/** A shelf, or a run of trays, as it spans its bay. Inches, pounds. */
export type Span = {
  readonly part: Part;
  readonly inside: Inside;
  readonly notes: ShelfNotes;
  readonly shelf: Shelf;
  /** Which way the grain of its face runs to the span. */
  readonly grain: 'along' | 'across';
  /** Whether somebody said how stiff its stock is. */
  readonly stiffSaid: boolean;
  /** What one of them weighs, its strip among it. */
  readonly own: Ratio;
  /** The height left over it for what stands on it: to the next tray, to what stands over a fixed shelf. */
  readonly clear?: Length;
  /** Pieces that something stands on, in order. */
  readonly loaded: readonly LoadedShelf[];
  /** Evenly loaded, by the standard; none for trays. */
  readonly even?: EvenLoad;
};

/** One of them, with what stands on it. */
export type LoadedShelf = {
  readonly piece: number;
  readonly things: readonly Lot[];
  readonly contents: Ratio;
  readonly unweighed: number;
  /** Contents and its own weight. */
  readonly load: Ratio;
  readonly sag: Result<Sag, ShelfError>;
  /** How much more it carries than a shelf may; none where it does not. Pounds. */
  readonly heavy?: Ratio;
  readonly cures: ReturnType<typeof sagCures>;
  readonly ends: ReturnType<typeof endsCarry>;
  readonly unfit: readonly Unfit[];
};

/** What does not go on, and by how much. Inches. */
type Unfit = {
  readonly thing: string;
  readonly code: 'too-long' | 'too-wide' | 'too-tall' | 'too-high' | 'beyond';
  readonly by: Length;
};

export type EvenLoad = {
  readonly by: ReturnType<typeof evenShelf>;
  /** The same pounds as the standard's, against the shop's limit. */
  readonly load: Ratio;
  readonly sag: Result<Sag, ShelfError>;
  /** What helps under that load; the load grows with the span. */
  readonly cures: ReturnType<typeof sagCures>;
};

/** A strip that might be stuck on: hardwood 3/4 × 1 1/2. Common practice, no source. */
export const strip: Edging = {
  thick: inches(3n, 4n),
  tall: usualTall,
  stiff: stiffnessOf('hardwood', 'along')?.least ?? ratio(1n),
};

/**
 * Every shelf and tray of a case with its load: how far each sags, and what would help.
 *
 * @param worked the case worked out: bays as built where they are in use
 */
export const spansOf = (job: Job, worked: Worked): readonly Span[] =>
  worked.sizes.case.inside.flatMap((inside) => {
    const part = worked.parts.find(({ id }) => id === `${worked.sizes.case.id}~${inside.id}`);
    return part && inside.kind !== 'rail' && inside.kind !== 'stop'
      ? spanOf(job, worked, { inside, part })
      : [];
  });

type Standing = Pick<Span, 'inside' | 'part'>;

function spanOf(job: Job, { sizes }: Worked, { inside, part }: Standing): readonly Span[] {
  const { thickness: thick, id } = part;
  if (!thick) return [];
  const notes = job.shelves[id] ?? {};
  const grain = job.parts[id]?.lies === 'across' ? ('across' as const) : ('along' as const);
  const stock = job.stock.find((s) => s.id === part.stuff);
  const edging = edgingOf(job, notes);
  const span = sizes.real(inside.bay).value;
  const shelf: Shelf = {
    span,
    deep: part.width.sum.value,
    thick,
    stiff: stiffOf(stock, grain),
    ...(edging ? { edging } : {}),
    glued: notes.glued ?? false,
    years: notes.years ?? false,
  };
  const own = ownWeight(job, part, shelf);
  const over = clearOver(sizes, inside, thick);
  const base = {
    part,
    inside,
    notes,
    shelf,
    grain,
    stiffSaid: stock?.stiff !== undefined,
    own,
    ...(over ? { clear: over } : {}),
  };
  return [
    { ...base, loaded: loadedOf(job, base), ...(inside.kind === 'trays' ? {} : { even: evenOf(job, base) }) },
  ];
}

/** To the tray above; over a fixed shelf to the next shelf or tray, or to the top of the case. Inches. */
function clearOver(
  { case: c, clearHeight }: Worked['sizes'],
  inside: Inside,
  thick: Length,
): Length | undefined {
  if (inside.kind === 'trays') return inside.pitch && subtract(inside.pitch, thick);
  if (inside.kind !== 'fixed' || !inside.at) return undefined;
  const face = add(inside.at, thick);
  const over = c.inside.flatMap((i) => {
    const at = i.kind === 'trays' ? i.first : i.kind === 'fixed' ? i.at : undefined;
    return i.bay === inside.bay && at && !less(at, face) ? [at] : [];
  });
  return subtract(shortest(clearHeight.value, ...over), face);
}

type Bare = Omit<Span, 'loaded' | 'even'>;

/** The strip on its front edge, of a stock whose thickness is known. */
function edgingOf(job: Job, notes: ShelfNotes): Edging | undefined {
  const stock = notes.strip ? job.stock.find((s) => s.id === notes.strip) : undefined;
  const [stuff] = stock ? stuffOf(stock) : [];
  const stiff = stiffOf(stock, 'along');
  return stuff && stiff ? { thick: stuff.thickness, tall: notes.tall ?? usualTall, stiff } : undefined;
}

function ownWeight(job: Job, part: Part, { deep, thick, edging }: Shelf): Ratio {
  const as = weighedAs(job);
  const long = part.length.sum.value;
  const own = slabWeight({ long, wide: deep, thick, ...(part.stuff ? as(part.stuff) : {}) });
  if (!edging) return own;
  const stuck = slabWeight({ long, wide: edging.tall, thick: edging.thick, stuff: 'hardwood' });
  return own.add(stuck) as Ratio;
}

/** Pieces by number; what says no piece stands on the first. */
function loadedOf(job: Job, base: Bare): readonly LoadedShelf[] {
  const things = job.things.filter(({ part }) => part === base.part.id);
  const pieces = [...new Set(things.map(({ piece = 1 }) => piece))].sort((a, b) => a - b);
  return pieces.map((piece) =>
    loadedShelf(
      job,
      base,
      piece,
      things.filter((t) => (t.piece ?? 1) === piece),
    ),
  );
}

function loadedShelf(job: Job, base: Bare, piece: number, things: readonly Lot[]): LoadedShelf {
  const { contents, unweighed } = loadOf(things);
  const load = contents.add(base.own) as Ratio;
  const loaded = { ...base.shelf, load, grain: grainOf(job.tape) };
  const middle = half(base.shelf.span);
  const placed = things.flatMap((t) => {
    const pounds = loadOf([t]).contents;
    return pounds.n > 0n ? [{ pounds, at: t.from ?? middle }] : [];
  });
  return {
    piece,
    things,
    contents,
    unweighed,
    load,
    sag: sagOf(loaded),
    ...(shelfMost.lt(load) ? { heavy: load.sub(shelfMost) as Ratio } : {}),
    cures: sagCures(loaded, strip, shelfMost),
    ends: endsCarry(base.shelf.span, [...placed, { pounds: base.own, at: middle }]),
    unfit: things.flatMap((t) => unfitOf(base, t)),
  };
}

function unfitOf(
  { shelf: { span, deep }, clear, inside }: Bare,
  { id, long, wide, tall, from }: Lot,
): readonly Unfit[] {
  const past = (code: Unfit['code'], size: Length | undefined, most: Length | undefined) =>
    size && most && less(most, size) ? [{ thing: id, code, by: subtract(size, most) }] : [];
  return [
    ...past('too-long', long, span),
    ...past('too-wide', wide, deep),
    ...past(inside.kind === 'trays' ? 'too-tall' : 'too-high', tall, clear),
    ...past('beyond', from, span),
  ];
}

/** By the standard, where nobody said what the place is: 40 pounds a square foot. */
function evenOf(job: Job, { shelf, notes }: Bare): EvenLoad {
  const by = evenShelf(shelf, notes.use ?? 'other');
  const load = by.ok ? by.value.load : ratio(0n);
  const loaded = { ...shelf, load, grain: grainOf(job.tape) };
  const sag = sagOf(loaded);
  const cures = sagCures(loaded, strip, shelfMost).map((cure) =>
    cure.code === 'shorter' && sag.ok ? { ...cure, span: sag.value.spanByFoot } : cure,
  );
  return { by, load, sag, cures };
}

/** The one of a run that sags most for what is allowed; none where nothing stands on any. */
export const worstOf = ({ loaded }: Pick<Span, 'loaded'>): LoadedShelf | undefined =>
  loaded.reduce<LoadedShelf | undefined>(
    (worst, one) => (worst && !worst.load.lt(one.load) ? worst : one),
    undefined,
  );

/** What the pitch of trays would have to be for the tallest thing on them. Inches. */
export function pitchFor({ inside, loaded, shelf }: Span): Length | undefined {
  const tall = loaded.flatMap(({ things }) => things.flatMap((t) => (t.tall ? [t.tall] : [])));
  const [first, ...rest] = tall;
  if (!first || inside.kind !== 'trays') return undefined;
  return add(
    rest.reduce((a, b) => (less(a, b) ? b : a), first),
    shelf.thick,
  );
}

/**
 * How many trays the things on a run of them fill, laid in rows, each kind on trays of its own; only those whose length
 * and width are said. Common practice, no source.
 *
 * @returns none where no such thing stands there, or one goes on no tray
 */
export function traysFor({ inside, loaded, shelf: { span, deep } }: Span): number | undefined {
  const lots = loaded.flatMap(({ things }) => things.filter(({ long, wide }) => long && wide));
  if (inside.kind !== 'trays' || lots.length === 0) return undefined;
  const times = (room: Length, own: Length): number => Number(toWhole(room.div(own) as Ratio, 'floor'));
  const onOne = ({ long = span, wide = deep }: Lot): number =>
    Math.max(times(span, long) * times(deep, wide), times(span, wide) * times(deep, long));
  if (lots.some((lot) => onOne(lot) === 0)) return undefined;
  return lots.reduce((sum, lot) => sum + Math.ceil(lot.count / onOne(lot)), 0);
}

/** What it is of. */
export const kindIn = (job: Job, { part }: Span) => {
  const stock = job.stock.find((s) => s.id === part.stuff);
  return stock ? kindOf(stock) : 'ply';
};
